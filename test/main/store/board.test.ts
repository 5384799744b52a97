import { describe, expect, test } from 'vitest';
import { tripWith } from '#core/domain/trip';
import { dumpOf } from '#test/helpers/dump';
import { addProject, NO_SUCH_ID, openWorkshop, planNamed, TODAY } from '#test/helpers/workshop';

function skirt() {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const stages = () => workshop.get('project:open', { projectId }).stages;
  const stage = (kind: string) => stages().find((one) => one.kind === kind)!;
  const states = () => stages().map(({ state }) => state);
  const closeGates = () => {
    for (const { id } of stages().flatMap(({ checklist }) => checklist.filter(({ isGate }) => isGate))) {
      workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
    }
  };
  return { workshop, projectId, stages, stage, states, closeGates };
}

describe('moving a project to a stage', () => {
  test('forward past several stages is one change that finishes those before and leaves the new one planned', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    closeGates();
    workshop.get('project:move-to-stage', { projectId, stageId: stage('outer-binding').id });
    expect(states()).toEqual(['done', 'done', 'planned', 'planned', 'planned', 'planned']);
    expect(workshop.get('change:state', {}).undo).toBe('Moved “Autumn ring” to “Bind the outside”');
    workshop.get('project:move-to-stage', { projectId, stageId: null });
    expect(new Set(states())).toEqual(new Set(['done']));
    workshop.get('change:undo', {});
    workshop.get('change:undo', {});
    expect(new Set(states())).toEqual(new Set(['planned']));
  });

  test('back to a finished stage puts it in progress again and sets later ones to planned', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    closeGates();
    workshop.get('project:move-to-stage', { projectId, stageId: stage('center-cut').id });
    workshop.get('project:move-to-stage', { projectId, stageId: stage('piecing').id });
    expect(states()).toEqual(['in-hand', 'planned', 'planned', 'planned', 'planned', 'planned']);
  });

  test('changes nothing while a gate on the way is shut, while the project is at the quilter, or for a stage of another project', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    const before = dumpOf(workshop);
    expect(
      workshop.fail('project:move-to-stage', { projectId, stageId: stage('inner-binding').id }),
    ).toMatchObject({ code: 'gate-closed' });
    expect(workshop.fail('project:move-to-stage', { projectId, stageId: NO_SUCH_ID as never })).toMatchObject(
      {
        code: 'not-found',
      },
    );
    expect(dumpOf(workshop)).toBe(before);
    closeGates();
    const { id: stageId, name } = stage('longarm');
    workshop.get('trip:send', { stageId, details: { ...tripWith('Pell'), sentOn: TODAY } });
    expect(workshop.fail('project:move-to-stage', { projectId, stageId: stage('outer-binding').id })).toEqual(
      {
        code: 'still-away',
        stage: name,
      },
    );
    expect(states()[1]).toBe('out');
  });

  test('leaves skipped stages skipped', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    closeGates();
    workshop.get('stage:move', { stageId: stage('longarm').id, to: 'skipped' });
    workshop.get('project:move-to-stage', { projectId, stageId: stage('outer-binding').id });
    expect(states().slice(0, 3)).toEqual(['done', 'skipped', 'planned']);
  });
});

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
    const { workshop, stages: _stages } = skirt();
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

describe('the history', () => {
  test('keeps at least 200 changes, goes back to any of them and forward again, and survives a restart', () => {
    const { workshop, stage } = skirt();
    const stageId = stage('piecing').id;
    const change = (notes: string) =>
      workshop.get('stage:change', {
        stageId,
        name: 'Piece the top',
        estimateMinutes: 5,
        heldUpBy: '',
        notes,
      });
    for (let turn = 0; turn < 220; turn += 1) change(`Turn ${turn}`);
    const again = openWorkshop(workshop.file);
    const { done, undone } = again.get('change:list', {});
    expect([done.length, undone.length]).toEqual([221, 0]);
    expect(done.every(({ says }) => says !== '')).toBe(true);
    expect(again.get('change:go-to', { changeId: done[200]!.id })).toEqual({ steps: 201 });
    const { projectId } = stage('piecing');
    const notes = () =>
      again.get('project:open', { projectId }).stages.find(({ id }) => id === stageId)!.notes;
    expect(notes()).toBe('Turn 18');
    const taken = again.get('change:list', {}).undone;
    expect(taken).toHaveLength(201);
    expect(again.get('change:go-to', { changeId: taken[100]!.id })).toEqual({ steps: 101 });
    expect(notes()).toBe('Turn 119');
    expect(again.fail('change:go-to', { changeId: NO_SUCH_ID as never })).toEqual({
      code: 'nothing-to-undo',
    });
  });
});
