import { describe, expect, test } from 'vitest';
import { tripWith } from '#core/domain/trip';
import { addProject, openWorkshop, planNamed, TODAY } from '#test/helpers/workshop';

function skirt() {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const stages = () => workshop.get('project:open', { projectId }).stages;
  const stage = (kind: string) => stages().find((one) => one.kind === kind)!;
  return { workshop, projectId, stages, stage };
}

describe('switching a started project to another plan', () => {
  test('keeps everything recorded, adds the missing stages, and leaves no gap in the positions', () => {
    const { workshop, projectId, stages, stage } = skirt();
    const { id: stageId } = stage('piecing');
    workshop.get('work:add', { stageId, details: { on: TODAY, minutes: 90, done: null, note: '' } });
    workshop.get('stage:move', { stageId, to: 'in-hand' });
    const longarm = stage('longarm').id;
    workshop.get('trip:add', {
      stageId: longarm,
      details: { ...tripWith('Pell'), sentOn: TODAY, backOn: TODAY },
    });
    const before = stages().map(({ name }) => name);
    workshop.get('project:follow-plan', { projectId, stagePlanId: planNamed('Runner').id });
    expect(stages().map(({ name, state }) => [name, state])).toEqual([
      ['Piece the top', 'in-hand'],
      ['Quilting, sent out', 'skipped'],
      ['Quilt at home', 'planned'],
      ['Bind the outside', 'planned'],
      ['Finish by hand', 'planned'],
    ]);
    expect(stages().map(({ position }) => position)).toEqual([0, 1, 2, 3, 4]);
    expect(workshop.get('work:of-stage', { stageId })).toHaveLength(1);
    expect(workshop.get('project:open', { projectId }).trips).toHaveLength(1);
    workshop.get('change:undo', {});
    expect(stages().map(({ name }) => name)).toEqual(before);
  });

  test('brings in new checklist lines, stages side by side and calculators of its own plan', () => {
    const { workshop } = skirt();
    const [first, second] = planNamed('Small mat').stages as [never, never];
    const plan = (later: object) => ({
      stagePlanId: null,
      name: 'Mine',
      says: '',
      stages: [first, { ...(second as object), ...later }] as never,
    });
    const { stagePlanId } = workshop.get('stage-plan:save', plan({}));
    const { projectId } = workshop.get('project:create', {
      details: { ...workshop.get('project:list', { archived: false }).items[0]!.project, name: 'Mat' },
      stagePlanId,
    });
    const mat = () => workshop.get('project:open', { projectId }).stages[1]!;
    const ticked = mat().checklist[0]!;
    workshop.get('checklist:tick', { checklistItemId: ticked.id, ticked: true });
    const line = { text: 'Corners squared', isGate: false, closedBy: null };
    workshop.get('stage-plan:save', {
      ...plan({ isBeside: true, calculators: ['washing'], checklist: [...mat().checklist, line] }),
      stagePlanId,
    });
    workshop.get('project:follow-plan', { projectId, stagePlanId });
    expect(mat()).toMatchObject({ isBeside: true, calculators: ['washing'] });
    expect(mat().checklist.at(-1)).toMatchObject(line);
    expect(mat().checklist[0]).toMatchObject({ id: ticked.id, isTicked: true });
  });
});
