import { describe, expect, test } from 'vitest';
import type { WorkMeasure } from '#core/domain/clock';
import { lengthFromInches } from '#core/units/length';
import { addProject, NO_SUCH_ID, openWorkshop, TODAY } from '#test/helpers/workshop';

function ring() {
  const workshop = openWorkshop();
  const { projectId, stages } = addProject(workshop);
  const stage = (kind: string) =>
    workshop.get('project:open', { projectId }).stages.find((one) => one.kind === kind)!;
  const work = (kind: string) => workshop.get('work:of-stage', { stageId: stage(kind).id });
  const count = (what: WorkMeasure, minutes: number, amount: number) =>
    workshop.get('work:add', {
      stageId: stages[0]!.id,
      details: { on: TODAY, minutes, done: { what, amount }, note: '' },
    });
  return { workshop, projectId, stage, work, count };
}

const STOP = { done: null, note: '' };

describe('the clock', () => {
  test('runs on one stage, starts that stage, and is still running when the file is opened again', () => {
    const { workshop, stage } = ring();
    workshop.get('clock:start', { stageId: stage('piecing').id });
    expect(stage('piecing').state).toBe('in-hand');
    const again = openWorkshop(workshop.file);
    expect(again.get('clock:state', {})).toMatchObject({
      stageName: 'Piece the top',
      projectName: 'Autumn ring',
      startedOn: TODAY,
    });
  });

  test('saves the time it ran, rounded as set, or the time the maker enters, with the work done', () => {
    const { workshop, stage, work } = ring();
    workshop.get('clock:start', { stageId: stage('piecing').id });
    workshop.get('clock:stop', STOP);
    expect(work('piecing')).toEqual([expect.objectContaining({ minutes: 5, done: null, on: TODAY })]);
    workshop.get('clock:start', { stageId: stage('piecing').id });
    workshop.get('clock:stop', { minutes: 50, done: { what: 'blocks', amount: 4 }, note: 'Slow ones' });
    expect(work('piecing')[1]).toMatchObject({
      minutes: 50,
      done: { what: 'blocks', amount: 4 },
      note: 'Slow ones',
    });
    expect(workshop.get('change:state', {}).undo).toBe('Logged 50 min on “Piece the top”');
    expect(workshop.get('clock:state', {})).toBeNull();
    expect(workshop.fail('clock:stop', STOP)).toEqual({ code: 'not-found', kind: 'running-clock' });
  });

  test('stops and saves the running one when started on another stage; undo restores the first', () => {
    const { workshop, stage, work } = ring();
    workshop.get('clock:start', { stageId: stage('piecing').id });
    workshop.get('clock:start', { stageId: stage('hand-finish').id });
    expect(work('piecing')).toHaveLength(1);
    expect(workshop.get('clock:state', {})).toMatchObject({ stageId: stage('hand-finish').id });
    workshop.get('change:undo', {});
    expect(workshop.get('clock:state', {})).toMatchObject({ stageId: stage('piecing').id });
    expect(stage('hand-finish').state).toBe('planned');
    workshop.get('change:redo', {});
    expect(workshop.get('clock:state', {})).toMatchObject({ stageId: stage('hand-finish').id });
  });

  test('does not start on a stage whose gate is shut', () => {
    const { workshop, stage } = ring();
    expect(workshop.fail('clock:start', { stageId: stage('center-cut').id })).toMatchObject({
      code: 'gate-closed',
    });
    expect(workshop.get('clock:state', {})).toBeNull();
  });

  test('of a deleted project is not shown as running, and does not block another', () => {
    const { workshop, projectId, stage } = ring();
    workshop.get('clock:start', { stageId: stage('piecing').id });
    workshop.get('project:delete', { projectId });
    expect(workshop.get('clock:state', {})).toBeNull();
    const other = addProject(workshop, { name: 'Another' });
    workshop.get('clock:start', { stageId: other.stages[0]!.id });
    expect(workshop.get('clock:state', {})).toMatchObject({ projectName: 'Another' });
  });

  test('can be deleted while it runs', () => {
    const { workshop, stage, work } = ring();
    const { workId } = workshop.get('clock:start', { stageId: stage('piecing').id });
    workshop.get('work:delete', { workId });
    expect([workshop.get('clock:state', {}), work('piecing')]).toEqual([null, []]);
  });
});

describe('time entered by hand', () => {
  test('is saved, corrected and deleted', () => {
    const { workshop, stage, work } = ring();
    const details = { on: TODAY, minutes: 90, done: null, note: 'Evening' };
    const { workId } = workshop.get('work:add', { stageId: stage('piecing').id, details });
    workshop.get('work:change', { workId, details: { ...details, minutes: 75 } });
    expect(work('piecing')).toEqual([
      { id: workId, stageId: stage('piecing').id, startedAt: null, ...details, minutes: 75 },
    ]);
    workshop.get('work:delete', { workId });
    expect(work('piecing')).toEqual([]);
    const nobody = NO_SUCH_ID as typeof workId;
    expect(workshop.fail('work:change', { workId: nobody, details })).toMatchObject({ code: 'not-found' });
  });
});

describe('the maker’s own hand-sewing rate', () => {
  const inHour = (inches: number) => lengthFromInches(inches);

  test('is used from three cases on, for answers and new projects alike, and the setting itself stays as set', () => {
    const { workshop, stage, count } = ring();
    const stageId = stage('hand-finish').id;
    const perHour = () => {
      workshop.get('calculation:save', { stageId, calculator: 'hand-finish', ownInput: {} });
      return workshop.get('calculation:list', { stageId })[0]!.input;
    };
    count('hand', 60, inHour(30));
    count('hand', 60, inHour(30));
    expect(workshop.get('workshop:opening', {}).settingsInUse.handStitchPerHour).toBe(inHour(50));
    expect(perHour()).toMatchObject({ perHour: inHour(50) });
    count('hand', 60, inHour(30));
    const { settingsInUse, workshop: told } = workshop.get('workshop:opening', {});
    expect([settingsInUse.handStitchPerHour, told.settings.handStitchPerHour]).toEqual([
      inHour(30),
      inHour(50),
    ]);
    expect(perHour()).toMatchObject({ perHour: inHour(30) });
    const next = addProject(workshop, { name: 'The next one' });
    const finish = next.stages.find(({ kind }) => kind === 'hand-finish')!;
    const estimate = workshop.get('stage:estimates', { projectId: next.projectId })[finish.id];
    expect(estimate).toMatchObject({ from: 'rates', storedMinutes: finish.estimateMinutes });
    expect(estimate!.minutes).toBe(estimate!.ratesMinutes);
    expect(estimate!.minutes).not.toBe(finish.estimateMinutes);
  });
});

describe('the maker’s own rate per block', () => {
  test('gives the estimate of a stage whose saved answer counts its blocks, and moves all dates', () => {
    const { workshop, stage, count, projectId } = ring();
    const piecing = stage('piecing').id;
    const estimate = () => workshop.get('stage:estimates', { projectId })[piecing]!;
    const finish = () =>
      workshop.get('dates:plan', { on: TODAY, moves: { dues: [], promises: [] } }).plan.projects[0]!
        .finishOn!;
    workshop.get('calculation:save', { stageId: piecing, calculator: 'top', ownInput: {} });
    const [before, storedMinutes] = [finish(), stage('piecing').estimateMinutes];
    expect(estimate()).toMatchObject({ from: 'plan', minutes: storedMinutes });
    for (let times = 0; times < 3; times += 1) count('blocks', 300, 1);
    const { parts, minutes, from } = estimate();
    const blocks = parts.find(({ what }) => what === 'blocks')!;
    expect([from, blocks.learned?.count, minutes]).toEqual(['rates', 3, blocks.amount * 300]);
    expect(estimate().storedMinutes).toBe(storedMinutes);
    expect(finish() > before).toBe(true);

    const { id: stageId, name, heldUpBy, notes } = stage('piecing');
    workshop.get('stage:change', { stageId, name, heldUpBy, notes, estimateMinutes: 45 });
    expect(estimate()).toMatchObject({ from: 'own', minutes: 45 });
    workshop.get('stage:set-estimate-source', { stageId, by: 'rates' });
    expect(estimate()).toMatchObject({ from: 'rates', storedMinutes: 45 });
    expect(workshop.get('change:state', {}).undo).toBe(
      'Set the estimate of “Piece the top” to your own rates',
    );
    workshop.get('stage:set-estimate-source', { stageId, by: 'own' });
    expect(estimate()).toMatchObject({ from: 'own', minutes: 45 });
  });
});
