import type { ChannelInput } from '#core/contract/channels';
import type { WorkDetails } from '#core/domain/clock';
import type { StageId } from '#core/domain/ids';
import type { Outline } from '#core/domain/outline';
import type { Stage, StageState } from '#core/domain/stage';
import type { StageKind } from '#core/domain/stage-kinds';
import { tripWith } from '#core/domain/trip';
import { addDays } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';
import { DEMO_PHOTOS } from './demo-photos';
import type { DemoProject, DemoShape, DemoStage, DemoTrip, DemoWork } from './demo-project';
import { paintProject } from './drawings/project';
import { type DemoShelf, type DemoStore, madeBefore, type Moment } from './demo-store';

/** Days a finished stage took, when the demo does not say. */
const USUAL_DAYS_IN_HAND = 4;

/** The answers saved with a kind of stage; kinds that are not listed have none. */
const SAVED_ANSWERS: Readonly<Partial<Record<StageKind, readonly string[]>>> = {
  piecing: ['patch-size'],
  longarm: ['backing', 'longarm-price'],
  'home-quilting': ['backing'],
  'outer-binding': ['outer-binding'],
  'center-cut': ['center-clearance'],
  'inner-binding': ['inner-binding'],
  'hand-finish': ['hand-finish'],
};

/** Everything that happened to one project, apart from its fabric. */
export function projectMoments(store: DemoStore, shelf: DemoShelf, project: DemoProject): readonly Moment[] {
  const create: Moment = {
    daysAgo: project.startedDaysAgo,
    happen: () => {
      const plan = store
        .call('stage-plan:list', {})
        .find(({ name }) => name.toLowerCase().includes(project.plan));
      if (plan === undefined) throw new Error(`The demo needs a stage plan for a ${project.plan}`);
      const { projectId } = store.call('project:create', {
        details: detailsOf(store, project),
        stagePlanId: plan.id,
      });
      shelf.projects.set(project.name, projectId);
    },
  };
  const changeStrip: Moment = {
    daysAgo: 0,
    happen: () => {
      const settingChanges = { bindingStripWidth: lengthFromInches(project.latestStrip ?? 0) };
      const details = { ...detailsOf(store, project), settingChanges };
      store.call('project:change', { projectId: madeBefore(shelf.projects, project.name), details });
    },
  };
  const archive: Moment = {
    daysAgo: 300,
    happen: () => {
      store.call('project:archive', { projectId: madeBefore(shelf.projects, project.name), archived: true });
    },
  };
  const stages = project.stages.flatMap((stage) => stageMoments(store, shelf, project, stage));
  return [
    create,
    ...stages,
    ...(project.latestStrip === undefined ? [] : [changeStrip]),
    ...(project.isArchived === true ? [archive] : []),
  ];
}

function stageMoments(
  store: DemoStore,
  shelf: DemoShelf,
  project: DemoProject,
  demoStage: DemoStage,
): readonly Moment[] {
  const stage = (): Stage => stageOf(store, shelf, project, demoStage.kind);
  const move = (daysAgo: number, to: StageState): Moment => ({
    daysAgo,
    happen: () => {
      store.call('stage:move', { stageId: stage().id, to });
    },
  });
  const prepare: Moment = {
    daysAgo: startedDaysAgo(demoStage),
    happen: () => {
      prepareStage(store, stage(), demoStage);
    },
  };
  const started = move(startedDaysAgo(demoStage), demoStage.trip === undefined ? 'in-hand' : 'out');
  const ended = demoStage.state === 'done' ? [move(demoStage.daysAgo, 'done')] : [];
  return [prepare, started, ...ended];
}

function startedDaysAgo(demoStage: DemoStage): number {
  if (demoStage.trip !== undefined) return demoStage.trip.sentDaysAgo;
  return demoStage.state === 'done' ? demoStage.daysAgo + USUAL_DAYS_IN_HAND : demoStage.daysAgo;
}

function prepareStage(store: DemoStore, stage: Stage, demoStage: DemoStage): void {
  const ticked = demoStage.ticked ?? (demoStage.state === 'in-hand' ? 0 : stage.checklist.length);
  for (const item of stage.checklist.slice(0, ticked)) {
    store.call('checklist:tick', { checklistItemId: item.id, ticked: true });
  }
  if (demoStage.notes !== undefined || demoStage.heldUpBy !== undefined) {
    const { id: stageId, name, estimateMinutes } = stage;
    store.call('stage:change', {
      stageId,
      name,
      estimateMinutes,
      heldUpBy: demoStage.heldUpBy ?? '',
      notes: demoStage.notes ?? '',
    });
  }
  for (const calculator of SAVED_ANSWERS[demoStage.kind] ?? []) {
    store.call('calculation:save', { stageId: stage.id, calculator, ownInput: {} });
  }
  if (demoStage.trip !== undefined) addTrip(store, stage.id, demoStage.trip);
  for (const work of demoStage.work ?? [])
    store.call('work:add', { stageId: stage.id, details: workOf(store, work) });
  if (demoStage.photo !== undefined) addPhoto(store, stage.id, demoStage.photo);
}

function addTrip(store: DemoStore, stageId: StageId, trip: DemoTrip): void {
  const { tripId } = store.call('trip:add', { stageId, details: tripOf(store, trip) });
  for (const { kind, daysAgo, note = '' } of trip.events ?? []) {
    store.call('trip:add-event', {
      tripId,
      kind,
      on: addDays(store.today, -daysAgo),
      note,
      ofWholePackage: false,
    });
  }
}

function workOf(store: DemoStore, work: DemoWork): WorkDetails {
  const { daysAgo, minutes, blocks, inchesByHand } = work;
  const byHand = inchesByHand === undefined ? null : lengthFromInches(inchesByHand);
  return {
    on: addDays(store.today, -daysAgo),
    minutes,
    done:
      byHand !== null
        ? { what: 'hand', amount: byHand }
        : blocks === undefined
          ? null
          : { what: 'blocks', amount: blocks },
    note: '',
  };
}

function addPhoto(store: DemoStore, stageId: StageId, name: string): void {
  const photo = DEMO_PHOTOS[name];
  if (photo === undefined) throw new Error(`The demo has no photo named ${name}`);
  store.call('photo:add', { stageId, bytes: paintProject(photo.look), caption: photo.caption });
}

function tripOf(store: DemoStore, trip: DemoTrip): ChannelInput<'trip:add'>['details'] {
  return {
    ...tripWith(trip.withWhom),
    sentOn: addDays(store.today, -trip.sentDaysAgo),
    promisedOn: addDays(store.today, trip.promisedInDays),
    backOn: trip.backDaysAgo === undefined ? null : addDays(store.today, -trip.backDaysAgo),
    trackingNumber: trip.trackingNumber ?? '',
    backing: trip.backing ?? '',
    batting: trip.batting ?? '',
    thread: trip.thread ?? '',
    patternName: trip.patternName ?? '',
    askedFor: trip.askedFor,
    priceAskedMinor: trip.priceMinor,
    priceMinor: trip.backDaysAgo === undefined ? null : trip.priceMinor,
  };
}

function stageOf(store: DemoStore, shelf: DemoShelf, project: DemoProject, kind: StageKind): Stage {
  const { stages } = store.call('project:open', { projectId: madeBefore(shelf.projects, project.name) });
  const stage = stages.find((one) => one.kind === kind);
  if (stage === undefined) throw new Error(`${project.name} has no stage of kind ${kind}`);
  return stage;
}

function detailsOf(store: DemoStore, project: DemoProject): ChannelInput<'project:create'>['details'] {
  return {
    name: project.name,
    purpose: project.purpose,
    forWhom: project.forWhom,
    dueOn: project.dueInDays === null ? null : addDays(store.today, project.dueInDays),
    outline: outlineOf(project.shape),
    hole: project.hole === null ? null : { diameter: lengthFromInches(project.hole) },
    hasSlit: project.hasSlit,
    settingChanges:
      project.innerStrip === undefined ? {} : { innerStripWidth: lengthFromInches(project.innerStrip) },
    notes: project.notes,
  };
}

function outlineOf(shape: DemoShape): Outline {
  switch (shape.shape) {
    case 'square':
      return { shape: 'square', side: lengthFromInches(shape.side) };
    case 'rectangle':
      return {
        shape: 'rectangle',
        width: lengthFromInches(shape.width),
        length: lengthFromInches(shape.length),
      };
    case 'circle':
      return { shape: 'circle', diameter: lengthFromInches(shape.diameter) };
    case 'hexagon':
    case 'octagon':
      return { shape: shape.shape, acrossFlats: lengthFromInches(shape.acrossFlats) };
  }
}
