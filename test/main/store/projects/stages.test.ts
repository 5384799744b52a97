import { describe, expect, test } from 'vitest';
import type { UnsettledFact } from '#core/domain/project-facts';
import { tripWith } from '#core/domain/trip';
import { lengthFromInches } from '#core/units/length';
import {
  addProject,
  NO_SUCH_ID,
  openWorkshop,
  planNamed,
  projectDetails,
  TODAY,
} from '#test/helpers/workshop';

function skirt() {
  const workshop = openWorkshop();
  const { projectId, stages } = addProject(workshop);
  const open = () => workshop.get('project:open', { projectId });
  const stage = (kind: string) => open().stages.find((one) => one.kind === kind)!;
  const isListedShut = (kind: string) =>
    workshop.get('project:list', { archived: false }).items[0]?.stages.find((listed) => listed.kind === kind)
      ?.isGateShut;
  return { workshop, projectId, stages, open, stage, isListedShut };
}

describe('moving a stage', () => {
  test('records when it started and finished, and adds to the project’s log, newest first', () => {
    const { workshop, open, stage } = skirt();
    const stageId = stage('piecing').id;
    workshop.get('stage:move', { stageId, to: 'in-hand' });
    workshop.get('stage:move', { stageId, to: 'done' });
    expect(stage('piecing')).toMatchObject({ state: 'done' });
    expect(stage('piecing').finishedAt).toBeGreaterThan(stage('piecing').startedAt!);
    expect(open().history.map(({ from, to, stageName }) => [from, to, stageName])).toEqual([
      ['in-hand', 'done', 'Piece the top'],
      ['planned', 'in-hand', 'Piece the top'],
    ]);
    workshop.get('stage:move', { stageId, to: 'planned' });
    expect(stage('piecing')).toMatchObject({ startedAt: null, finishedAt: null });
  });

  test('to the state it is in changes nothing and leaves nothing to undo', () => {
    const { workshop, stage } = skirt();
    workshop.get('stage:move', { stageId: stage('piecing').id, to: 'planned' });
    expect(workshop.get('change:state', {}).undo).toBe('Started “Autumn ring”');
  });
});

describe('the gate of the center cut', () => {
  test('stays shut while a line is open, and names that line', () => {
    const { workshop, stage } = skirt();
    const refused = workshop.fail('stage:move', { stageId: stage('center-cut').id, to: 'in-hand' });
    expect(refused).toMatchObject({ code: 'gate-closed' });
    expect(refused.code === 'gate-closed' && refused.open).toEqual([
      'Outside is bound',
      'Center measured twice, on two days or in two ways',
      'Diameter tried on a practice piece',
      'Stay-stitched within the seam allowance, just beside the seam line',
    ]);
    expect(stage('center-cut').state).toBe('planned');
  });

  test('opens when the outer edge is bound and the other lines are ticked; moving back is always allowed', () => {
    const { workshop, stage, isListedShut } = skirt();
    const { id: stageId, checklist } = stage('center-cut');
    expect(isListedShut('center-cut')).toBe(true);
    expect(isListedShut('piecing')).toBe(false);
    // The outer binding's own stage says whether it is bound; a tick does not.
    for (const { id } of checklist) workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
    expect(workshop.fail('stage:move', { stageId, to: 'done' })).toEqual({
      code: 'gate-closed',
      open: ['Outside is bound'],
    });
    expect(isListedShut('center-cut')).toBe(true);
    workshop.get('stage:move', {
      stageId: stage('outer-binding').id,
      to: 'done',
      passGateWhy: 'Bound long ago',
    });
    expect(isListedShut('center-cut')).toBe(false);
    workshop.get('stage:move', { stageId, to: 'in-hand' });
    expect(stage('center-cut')).toMatchObject({ state: 'in-hand', gatePassedWhy: '' });
    workshop.get('stage:move', { stageId, to: 'skipped' });
  });

  test('can be passed with a reason, which is saved with the stage and in the log', () => {
    const { workshop, stage, open } = skirt();
    const stageId = stage('center-cut').id;
    expect(workshop.fail('stage:move', { stageId, to: 'in-hand', passGateWhy: '   ' })).toMatchObject({
      code: 'gate-closed',
    });
    workshop.get('stage:move', { stageId, to: 'in-hand', passGateWhy: 'A practice piece' });
    expect(stage('center-cut').gatePassedWhy).toBe('A practice piece');
    expect(open().history[0]).toMatchObject({ why: 'A practice piece', to: 'in-hand' });
  });
});

describe('the center cut', () => {
  test('does not start while a saved answer has another hole than the project, whatever the reason', () => {
    const { workshop, projectId, stage } = skirt();
    const stageId = stage('center-cut').id;
    const ownInput = { from: 'wish', measure: lengthFromInches(14) };
    workshop.get('calculation:save', { stageId, calculator: 'hole-size', ownInput });
    const start = { stageId, to: 'in-hand', passGateWhy: 'A practice piece' } as const;
    expect(workshop.fail('stage:move', start)).toEqual({ code: 'cut-unsettled' });
    const [{ answer: decided }] = workshop.get('project:unsettled', { projectId }) as [UnsettledFact];
    workshop.get('project:decide', { projectId, decided });
    workshop.get('stage:move', start);
    expect(stage('center-cut').state).toBe('in-hand');
  });
});

describe('the stages of a project', () => {
  test('can be added anywhere, repeated, moved and deleted, and their positions have no gaps', () => {
    const { workshop, projectId, open, stage } = skirt();
    workshop.get('stage:add', { projectId, position: 1, kind: 'other', name: 'Wash' });
    workshop.get('stage:add', { projectId, position: 99, kind: 'other', name: 'Wrap' });
    workshop.get('stage:move', { stageId: stage('piecing').id, to: 'done' });
    workshop.get('stage:repeat', { stageId: stage('piecing').id });
    const names = () => open().stages.map(({ name }) => name);
    expect(names().slice(0, 3)).toEqual(['Piece the top', 'Piece the top', 'Wash']);
    expect(names().at(-1)).toBe('Wrap');
    expect(open().stages[1]).toMatchObject({ state: 'planned', startedAt: null });
    expect(open().stages[1]!.checklist.map(({ text }) => text)).toEqual(
      stage('piecing').checklist.map(({ text }) => text),
    );
    workshop.get('stage:reorder', { stageId: open().stages.at(-1)!.id, position: 0 });
    expect(names()[0]).toBe('Wrap');
    workshop.get('stage:delete', { stageId: open().stages[1]!.id });
    expect(open().stages.map(({ position }) => position)).toEqual(
      open().stages.map((_stage, index) => index),
    );
    expect(open().history[0]).toMatchObject({ stageName: 'Piece the top', to: 'done' });
  });

  test('keep their details and checklists', () => {
    const { workshop, stage } = skirt();
    const stageId = stage('piecing').id;
    const said = { name: 'Piece it', estimateMinutes: 45, heldUpBy: 'No thread', notes: 'Press open' };
    workshop.get('stage:change', { stageId, ...said });
    workshop.get('checklist:add', { stageId, text: 'Blocks laid out', isGate: true });
    expect(stage('piecing')).toMatchObject(said);
    const added = stage('piecing').checklist.at(-1)!;
    expect(added).toMatchObject({ text: 'Blocks laid out', isGate: true, isTicked: false });
    workshop.get('checklist:tick', { checklistItemId: added.id, ticked: true });
    expect(stage('piecing').checklist.at(-1)).toMatchObject({ isTicked: true });
    workshop.get('checklist:delete', { checklistItemId: added.id });
    expect(stage('piecing').checklist.some(({ id }) => id === added.id)).toBe(false);
    expect(workshop.fail('checklist:delete', { checklistItemId: added.id })).toMatchObject({
      code: 'not-found',
    });
  });
});

describe('a trip', () => {
  const details = {
    ...tripWith('An invented longarm quilter'),
    sentOn: TODAY,
    trackingNumber: 'X 1',
    sentAlong: 'Backing, batting',
    askedFor: 'Loops, medium',
    priceMinor: 9_500,
  };

  test('is added, changed and deleted', () => {
    const { workshop, open, stage } = skirt();
    for (const { id, isGate } of stage('longarm').checklist) {
      if (isGate) workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
    }
    const { tripId } = workshop.get('trip:add', { stageId: stage('longarm').id, details });
    expect(open().trips).toEqual([
      expect.objectContaining({ ...details, id: tripId, stageId: stage('longarm').id }),
    ]);
    workshop.get('trip:change', { tripId, details: { ...details, backOn: TODAY } });
    expect(open().trips[0]).toMatchObject({ backOn: TODAY });
    workshop.get('trip:delete', { tripId });
    expect(open().trips).toEqual([]);
    expect(workshop.fail('trip:change', { tripId, details })).toEqual({ code: 'not-found', kind: 'trip' });
  });
});

describe('a project that is sent out and comes back', () => {
  const details = { ...tripWith('An invented longarm quilter'), sentOn: TODAY };

  function readyToSend() {
    const piece = skirt();
    for (const { id, isGate } of piece.stage('longarm').checklist) {
      if (isGate) piece.workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
    }
    return { ...piece, stageId: piece.stage('longarm').id };
  }

  test('moves together with its trip in one change each way, and each is undone as one', () => {
    const { workshop, open, stage, stageId } = readyToSend();
    const { tripId } = workshop.get('trip:send', { stageId, details });
    expect([stage('longarm').state, open().trips.length]).toEqual(['out', 1]);
    workshop.get('change:undo', {});
    expect([stage('longarm').state, open().trips.length]).toEqual(['planned', 0]);
    workshop.get('change:redo', {});
    workshop.get('trip:receive', { stageId, tripId, details: { ...details, backOn: TODAY } });
    expect([stage('longarm').state, open().trips[0]?.backOn]).toEqual(['done', TODAY]);
    workshop.get('change:undo', {});
    expect([stage('longarm').state, open().trips[0]?.backOn]).toEqual(['out', null]);
  });

  test('is not sent while its gate is shut, and then no trip is added', () => {
    const { workshop, open, stage } = skirt();
    expect(workshop.fail('trip:send', { stageId: stage('longarm').id, details })).toMatchObject({
      code: 'gate-closed',
    });
    expect(open().trips).toEqual([]);
  });

  test('comes back on its own trip, or on one added as it comes back', () => {
    const { workshop, open, stageId } = readyToSend();
    expect(workshop.fail('trip:receive', { stageId, tripId: NO_SUCH_ID as never, details })).toEqual({
      code: 'not-found',
      kind: 'trip',
    });
    workshop.get('trip:receive', { stageId, tripId: null, details: { ...details, backOn: TODAY } });
    expect(open().trips).toEqual([expect.objectContaining({ backOn: TODAY })]);
  });
});

describe('stage plans', () => {
  test('that are built in are all listed and cannot be changed or deleted', () => {
    const { workshop } = skirt();
    const plans = workshop.get('stage-plan:list', {});
    expect(plans.map(({ name, isOwn }) => [name, isOwn])).toEqual([
      ['Tree skirt', false],
      ['Tree skirt, bound before the cut', false],
      ['Tree skirt, closed ring', false],
      ['Table topper with a hole', false],
      ['Runner', false],
      ['Throw', false],
      ['Small mat', false],
    ]);
    const [{ id, name, says, stages }] = [plans[0]!];
    expect(workshop.fail('stage-plan:delete', { stagePlanId: id })).toEqual({ code: 'built-in', name });
    expect(workshop.fail('stage-plan:save', { stagePlanId: id, name, says, stages })).toMatchObject({
      code: 'built-in',
    });
  });

  test('of the maker’s own are saved, changed, used and deleted', () => {
    const { workshop } = skirt();
    const { stages } = planNamed('Runner');
    const { stagePlanId } = workshop.get('stage-plan:save', {
      stagePlanId: null,
      name: 'Mine',
      says: '',
      stages,
    });
    workshop.get('stage-plan:save', {
      stagePlanId,
      name: 'Mine, shorter',
      says: 'Quick',
      stages: stages.slice(0, 1),
    });
    const kept = workshop.get('stage-plan:list', {}).at(-1);
    expect(kept).toEqual({
      id: stagePlanId,
      name: 'Mine, shorter',
      says: 'Quick',
      isOwn: true,
      piece: null,
      size: null,
      stages: stages.slice(0, 1),
    });
    const { projectId } = workshop.get('project:create', { details: projectDetails(), stagePlanId });
    expect(workshop.get('project:open', { projectId }).stages).toHaveLength(1);
    workshop.get('stage-plan:delete', { stagePlanId });
    expect(workshop.fail('project:create', { details: projectDetails(), stagePlanId })).toEqual({
      code: 'not-found',
      kind: 'stage-plan',
    });
    const nobody = NO_SUCH_ID as typeof stagePlanId;
    expect(workshop.fail('stage-plan:delete', { stagePlanId: nobody })).toMatchObject({ code: 'not-found' });
  });
});
