import { answerCalculator } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { StageGlance, ProjectGlance } from '#core/contract/projects';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { freeOf } from '#core/domain/stash';
import { readWorkshop } from '#main/store/workshop/workshop';
import { TODAY, type TestWorkshop } from './workshop';

/** Facts on which two pages of the notebook disagree, read by the calls that those pages make. */
export function disagreements(workshop: TestWorkshop): readonly string[] {
  const glances = [false, true].flatMap((archived) => workshop.get('project:list', { archived }).items);
  return [
    ...glances.flatMap((glance) => [
      ...onProject(workshop, glance),
      ...onFabricOf(workshop, glance.project.id),
      ...onTrips(glance),
    ]),
    ...onSchedule(workshop),
    ...onStash(workshop),
    ...onShopping(workshop),
  ];
}

const differs = (what: string, one: unknown, other: unknown): readonly string[] =>
  JSON.stringify(one) === JSON.stringify(other)
    ? []
    : [`${what}: ${JSON.stringify(one)} and ${JSON.stringify(other)}`];

const seenOf = ({ id, kind, name, state, position, isGateShut, heldUpBy }: StageGlance) => ({
  id,
  kind,
  name,
  state,
  position,
  isGateShut,
  heldUpBy,
});

/** Bench, list and line-up against the project's own page; the hole of the template, the gate and what is unsettled. */
function onProject(workshop: TestWorkshop, glance: ProjectGlance): readonly string[] {
  const { project } = glance;
  const opened = workshop.get('project:open', { projectId: project.id });
  const measured = measurementsOfProject(opened.project, readWorkshop(workshop.context.store).settings);
  const unsettled = workshop.get('project:unsettled', { projectId: project.id });
  const holes = opened.stages.flatMap((stage) =>
    workshop.get('calculation:list', { stageId: stage.id }).flatMap((saved) => {
      const calculator = calculatorByName(saved.calculator);
      if (calculator === undefined) return [];
      const answered = answerCalculator(calculator, measured, saved.ownInput);
      const decided = answered.ok ? calculator.decides?.(answered.value.calculation.details) : undefined;
      return decided?.hole === undefined ? [] : [{ id: saved.id, hole: decided.hole }];
    }),
  );
  const disagreeing = holes
    .filter(({ hole }) => JSON.stringify(hole) !== JSON.stringify(opened.project.hole))
    .map(({ id }) => id);
  const said = unsettled.filter(({ fact }) => fact === 'hole').map(({ calculationId }) => calculationId);
  return [
    ...differs(`project of ${project.name}`, project, opened.project),
    ...differs(`stages of ${project.name}`, glance.stages.map(seenOf), opened.stages.map(seenOf)),
    ...differs(`trips of ${project.name}`, glance.trips, opened.trips),
    ...differs(`holes not settled of ${project.name}`, disagreeing.toSorted(), said.toSorted()),
    ...differs(`hole of the template of ${project.name}`, measured.hole, project.hole),
  ];
}

/** A stage that is not over is at the quilter while one of its trips is under way, and never with two of them open. */
function onTrips({ project, stages, trips }: ProjectGlance): readonly string[] {
  return stages.flatMap((stage) => {
    const own = trips.filter(({ stageId }) => stageId === stage.id);
    const open = own.filter(({ backOn }) => backOn === null);
    const away = open.filter(({ sentOn }) => sentOn !== null);
    return [
      ...(open.length > 1 ? [`${project.name}, ${stage.name}: ${String(open.length)} open trips`] : []),
      ...(stage.state === 'out' && own.length > 0 && away.length === 0
        ? [`${project.name}, ${stage.name}: at the quilter without a trip under way`]
        : []),
      ...((stage.state === 'planned' || stage.state === 'in-hand') && away.length > 0
        ? [`${project.name}, ${stage.name}: ${stage.state} with a trip under way`]
        : []),
    ];
  });
}

/** Days plans the stages that the bench shows as not finished, and no others. */
function onSchedule(workshop: TestWorkshop): readonly string[] {
  const open = workshop.get('project:list', { archived: false }).items;
  const { plan } = workshop.get('dates:plan', { on: TODAY, moves: { dues: [], promises: [] } });
  const planned = new Set(plan.projects.flatMap(({ steps }) => steps.map(({ id }) => id)));
  const unfinished = open
    .flatMap(({ stages }) => stages)
    .filter(({ state }) => state !== 'done' && state !== 'skipped')
    .map(({ id }) => id);
  return differs('stages on Days', [...planned].toSorted(), unfinished.toSorted());
}

/** What is there, set aside and free of every piece: on the stash, on its fabric's page and in the ledger. */
function onStash(workshop: TestWorkshop): readonly string[] {
  const { items } = workshop.get('fabric:list', { search: '', limit: 200 });
  return items.flatMap(({ fabric, ...glance }) => {
    const page = workshop.get('fabric:open', { fabricId: fabric.id });
    const area = (lengthOf: (piece: (typeof page.pieces)[number]) => number) =>
      page.pieces.reduce((sum, piece) => sum + piece.width * lengthOf(piece), 0);
    const entries = page.ledger.flatMap((booking) => booking.entries);
    const sums = page.pieces.map(({ id }) => {
      const own = entries.filter(({ pieceId }) => pieceId === id);
      return {
        id,
        there: own.reduce((sum, { lengthChange }) => sum + lengthChange, 0),
        held: own.reduce((sum, { heldChange }) => sum + heldChange, 0),
      };
    });
    return [
      ...differs(
        `there of ${fabric.name}`,
        glance.areaThere,
        area(({ there }) => there),
      ),
      ...differs(`free of ${fabric.name}`, glance.areaFree, area(freeOf)),
      ...differs(`value of ${fabric.name}`, glance.value, page.value),
      ...differs(
        `ledger of ${fabric.name}`,
        sums,
        page.pieces.map(({ id, there, held }) => ({ id, there, held })),
      ),
    ];
  });
}

/** What is set aside for a project, on its page and in the ledger of each fabric. */
function onFabricOf(workshop: TestWorkshop, projectId: ProjectId): readonly string[] {
  const own = workshop.get('ledger:of-project', { projectId });
  return own.held.flatMap(({ piece, fabric, held }) => {
    const page = workshop.get('fabric:open', { fabricId: fabric.id });
    const booked = page.ledger
      .filter((booking) => booking.projectId === projectId)
      .flatMap(({ entries }) => entries)
      .filter(({ pieceId }) => pieceId === piece.id)
      .reduce((sum, { heldChange }) => sum + heldChange, 0);
    return differs(`set aside of ${fabric.name}`, held, booked);
  });
}

/** The shopping list counts on no more of a piece than is free or set aside for the project itself. */
function onShopping(workshop: TestWorkshop): readonly string[] {
  return workshop.get('shopping:list', {}).lines.flatMap(({ shares }) =>
    shares.flatMap(({ need }) => {
      const { projectId, source, name } = need;
      const answer = workshop.ask('shopping:fits', { projectId, source, name, search: '' });
      if (!answer.ok) return [`${name}: on the shopping list, but not a need`];
      const held = workshop.get('ledger:of-project', { projectId }).held;
      return answer.value.fits.flatMap(({ pieces, takes }) =>
        takes.flatMap(({ pieceId, length }) => {
          const piece = pieces.find(({ id }) => id === pieceId);
          if (piece === undefined) return [`${name}: takes from a piece that may not serve`];
          const own = held.find((one) => one.piece.id === pieceId)?.held ?? 0;
          const most = freeOf(piece, own);
          return length <= most ? [] : [`${name}: takes ${String(length)} of ${String(most)}`];
        }),
      );
    }),
  );
}
