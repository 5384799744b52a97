import type { BenchTime } from '#core/domain/bench-time';
import type { ProjectId, StageId } from '#core/domain/ids';
import { isOver, type Stage } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import type { TripDetails } from '#core/domain/trip';
import { type SettingChanges, type Settings, settingsOfProject } from '#core/domain/workshop';
import { addDays, type CalendarDate, daysBetween } from '#core/units/calendar-date';
import type { LoadStep, ProjectLoad, WorkshopLoad } from './workshop-load';

/** What the planner reads from an open project. */
export interface OpenProject {
  readonly project: {
    readonly id: ProjectId;
    readonly dueOn: CalendarDate | null;
    readonly settingChanges: SettingChanges;
  };
  readonly stages: readonly (Pick<Stage, 'id' | 'kind' | 'state' | 'estimateMinutes'> & {
    /** True if it may be worked on side by side with the stage before it. */
    readonly isBeside?: boolean;
    /** Days it is away once it is sent; if undefined, the usual days of the project or the workshop. */
    readonly daysAway?: number;
  })[];
  readonly trips: readonly (Pick<TripDetails, 'sentOn' | 'promisedOn' | 'backOn'> & {
    readonly stageId: StageId;
  })[];
}

type PlannedStage = OpenProject['stages'][number];
type PlannedTrip = OpenProject['trips'][number];

/**
 * The work left on the open projects, with projects in progress first. Projects with nothing left are dropped. A stage takes
 * its estimated minutes until it is done; a stage that is sent out then waits for its days away. A project that is away comes
 * back on its promised day, or after its days away if no day was promised; if it is overdue, it is expected today. A stage
 * that is held up is planned as if it could go on.
 */
export function loadOfProjects(
  projects: readonly OpenProject[],
  workshop: { readonly settings: Settings; readonly benchTime: BenchTime },
  today: CalendarDate,
): WorkshopLoad {
  const open = projects.filter(({ stages }) => stages.some((stage) => !isOver(stage)));
  const isInHand = ({ stages }: OpenProject) => stages.some(({ state }) => state === 'in-hand');
  return {
    today,
    hands: workshop.benchTime,
    projects: [...open.filter(isInHand), ...open.filter((one) => !isInHand(one))].map((one) =>
      projectLoad(one, workshop.settings, today),
    ),
  };
}

function projectLoad(
  { project, stages, trips }: OpenProject,
  settings: Settings,
  today: CalendarDate,
): ProjectLoad {
  const { turnaroundDays } = settingsOfProject(settings, project.settingChanges);
  const openTrip = (stage: PlannedStage) =>
    trips.findLast((trip) => trip.stageId === stage.id && trip.backOn === null);
  const stepsOf = (stage: PlannedStage): readonly LoadStep[] => {
    if (stage.state === 'out') {
      const backOn = expectedBack(openTrip(stage), stage.daysAway ?? turnaroundDays, today);
      return [{ kind: 'wait', id: stage.id, days: Math.max(0, daysBetween(today, backOn)) }];
    }
    const work: LoadStep = { kind: 'work', id: stage.id, minutes: stage.estimateMinutes };
    if (!stageKindRecord(stage.kind).isSentOut) return [work];
    return [work, { kind: 'wait', id: stage.id, days: stage.daysAway ?? turnaroundDays }];
  };
  const groups = groupsSideBySide(stages);
  const isAway = (group: readonly PlannedStage[]) => group.some(({ state }) => state === 'out');
  // While a project is away, only the stages side by side with that trip can be worked on, whatever comes first in its plan.
  const inOrder = [...groups.filter(isAway), ...groups.filter((group) => !isAway(group))];
  const steps = inOrder.flatMap((group) =>
    group.flatMap((stage, member) => {
      const [first, ...rest] = stepsOf(stage);
      return first === undefined ? [] : [member > 0 ? { ...first, isBeside: true } : first, ...rest];
    }),
  );
  return { id: project.id, dueOn: project.dueOn, readyOn: null, steps };
}

/** The stages that are left, in groups that may run side by side. A stage beside one that is over is a group of its own. */
function groupsSideBySide(stages: readonly PlannedStage[]): readonly (readonly PlannedStage[])[] {
  const groups: PlannedStage[][] = [];
  stages.forEach((stage, place) => {
    if (isOver(stage)) return;
    const before = stages[place - 1];
    if (stage.isBeside === true && before !== undefined && !isOver(before)) groups.at(-1)?.push(stage);
    else groups.push([stage]);
  });
  return groups;
}

function expectedBack(trip: PlannedTrip | undefined, days: number, today: CalendarDate): CalendarDate {
  return trip?.promisedOn ?? addDays(trip?.sentOn ?? today, days);
}
