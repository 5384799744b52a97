import { describe, expect, test } from 'vitest';
import type { ChannelInput } from '#core/contract/channels';
import { freeOf } from '#core/domain/stash';
import { dumpOf } from '#test/helpers/dump';
import { planOnTwoYards } from '#test/helpers/kept-plans';
import { addStock, addProject, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

type Tick = ChannelInput<'cutting:tick'>;

function table() {
  const workshop = openWorkshop();
  const fabric = addStock(workshop, { yards: 2, costMinor: 7200 });
  const ring = addProject(workshop);
  const runner = addProject(workshop, { name: 'Sill runner' });
  const stageId = ring.stages.find(({ kind }) => kind === 'piecing')!.id;
  const { projectId } = ring;
  const plan = planOnTwoYards({ projects: [projectId, runner.projectId], stageId, ...fabric });
  workshop.get('cutting:save', { projectId, plan });
  const at = (place: number) => ({ projectId, pieceId: fabric.pieceId, place, on: TODAY });
  const tick = (place: number, rest: Partial<Tick> = {}) =>
    workshop.ask('cutting:tick', { ...at(place), knowingly: false, ...rest });
  const untick = (place: number) => workshop.ask('cutting:untick', at(place));
  const pieces = () =>
    workshop
      .get('fabric:open', { fabricId: fabric.fabricId })
      .pieces.map(({ kind, width, there }) => [kind, width / inches(1), there / inches(1)]);
  const used = (id = projectId) => workshop.get('ledger:of-project', { projectId: id });
  const ticked = () => workshop.get('cutting:open', { projectId })?.ticked ?? [];
  return {
    workshop,
    plan,
    projectId,
    other: runner.projectId,
    stageId,
    ...fabric,
    tick,
    untick,
    pieces,
    used,
    ticked,
  };
}

describe('a cutting plan', () => {
  test('is saved with its project, in place of an earlier one, and read back unchanged', () => {
    const { workshop, plan, projectId } = table();
    expect(workshop.get('cutting:open', { projectId })).toMatchObject({ plan, ticked: [] });
    workshop.get('cutting:save', { projectId, plan: { ...plan, rule: 'guillotine' } });
    expect(workshop.get('cutting:open', { projectId })?.plan.rule).toBe('guillotine');
    workshop.get('change:undo', {});
    expect(workshop.get('cutting:open', { projectId })?.plan.rule).toBe('2-stage');
  });

  test('is deleted, and its cuts stay in the ledger', () => {
    const { workshop, projectId, tick, pieces } = table();
    tick(0);
    workshop.get('cutting:delete', { projectId });
    expect(workshop.get('cutting:open', { projectId })).toBeNull();
    expect(pieces()).toEqual([['yardage', 42, 68]]);
    workshop.get('change:undo', {});
    expect(workshop.get('cutting:open', { projectId })?.ticked).toHaveLength(1);
  });

  test('must start with the cuts of the plan it replaces', () => {
    const { workshop, plan, projectId, tick } = table();
    tick(0);
    const [piece] = plan.pieces;
    expect(workshop.ask('cutting:save', { projectId, plan })).toMatchObject({ ok: true });
    expect(workshop.fail('cutting:save', { projectId, plan: { ...plan, pieces: [] } })).toEqual({
      code: 'plan-changed',
    });
    if (piece?.tree.kind !== 'split') throw new Error('No strips');
    const turned = { ...piece, tree: { ...piece.tree, parts: piece.tree.parts.toReversed() } };
    expect(workshop.fail('cutting:save', { projectId, plan: { ...plan, pieces: [turned] } }).code).toBe(
      'plan-changed',
    );
  });
});

describe('what a cutting plan sets aside', () => {
  const NOTHING = { held: 0, free: 72 };

  function held() {
    const at = table();
    const { workshop, fabricId, pieceId, projectId, other, used } = at;
    const onStash = () => {
      const piece = workshop.get('fabric:open', { fabricId }).pieces.find(({ id }) => id === pieceId)!;
      return { held: piece.held / inches(1), free: freeOf(piece) / inches(1) };
    };
    const ofProjects = () =>
      [projectId, other].flatMap((id) => used(id).held).reduce((sum, one) => sum + one.held, 0) / inches(1);
    const aside = (length: number) =>
      workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(length), on: TODAY, note: '' });
    return { ...at, onStash, ofProjects, aside };
  }

  test('is what it cuts, the same in the stash and with its projects, and less with each cut', () => {
    const { onStash, ofProjects, tick } = held();
    // Half an inch to straighten and two strips of 3 1/2 in.
    expect([onStash(), ofProjects()]).toEqual([{ held: 7.5, free: 64.5 }, 7.5]);
    tick(0);
    expect([onStash(), ofProjects()]).toEqual([{ held: 3.5, free: 64.5 }, 3.5]);
    tick(1);
    expect([onStash(), ofProjects()]).toEqual([{ held: 0, free: 64.5 }, 0]);
  });

  test('is free again when the plan is deleted, and set aside again when that is undone', () => {
    const { workshop, projectId, onStash, tick } = held();
    tick(0);
    workshop.get('cutting:delete', { projectId });
    expect(onStash()).toEqual({ held: 0, free: 68 });
    workshop.get('change:undo', {});
    expect(onStash()).toEqual({ held: 3.5, free: 64.5 });
  });

  test('is replaced with the plan', () => {
    const { workshop, plan, projectId, onStash, tick } = held();
    tick(0);
    workshop.get('cutting:save', { projectId, plan });
    expect(onStash()).toEqual({ held: 3.5, free: 64.5 });
    workshop.get('cutting:delete', { projectId });
    expect(onStash()).toEqual({ held: 0, free: 68 });
  });

  test('counts what the maker set aside for the project, and leaves that to her', () => {
    const { workshop, plan, projectId, onStash, aside } = held();
    workshop.get('cutting:delete', { projectId });
    expect(onStash()).toEqual(NOTHING);
    aside(20);
    workshop.get('cutting:save', { projectId, plan });
    // The other project's share of the second strip is all that is still to be set aside.
    expect(onStash().held).toBeGreaterThan(20);
    expect(onStash().held).toBeLessThan(23.5);
    workshop.get('cutting:delete', { projectId });
    expect(onStash()).toEqual({ held: 20, free: 52 });
  });
});

describe('checking off a cut', () => {
  test('takes its length off the piece, for the project and stage that asked for the patches', () => {
    const { tick, pieces, used, stageId, ticked } = table();
    expect(tick(0)).toMatchObject({ ok: true });
    expect(pieces()).toEqual([['yardage', 42, 68]]);
    const [booking] = used().bookings;
    expect(booking).toMatchObject({
      stageId,
      usedArea: inches(42) * inches(4),
      cost: { minor: 400, unpricedArea: 0 },
    });
    expect(ticked()).toMatchObject([{ place: 0, parts: 2, isBooked: true, leftovers: [] }]);
  });

  test('shares the cut among projects by their patches, and adds its leftover to the stash', () => {
    const { tick, pieces, used, other, ticked } = table();
    tick(0);
    const before = used().usedArea;
    expect(tick(1)).toMatchObject({ ok: true });
    expect(pieces()).toEqual([
      ['yardage', 42, 64.5],
      ['leftover', 8, 3.5],
    ]);
    expect(ticked()[1]?.leftovers).toHaveLength(1);
    const [own, others] = [used().usedArea - before, used(other).usedArea];
    expect(own + others).toBe(inches(34) * inches(3.5));
    // Derived: 4 patches of 3½ in and 4 of 5 in. Lengths are whole units, so a share is exact to a unit across the fabric.
    expect(Math.abs(others - (20 / 34) * (own + others))).toBeLessThan(inches(42));
    expect(used().paid.minor + used(other).paid.minor).toBe(400 + 350 - 67);
  });

  test('works in the order of the steps only', () => {
    const { tick, untick, plan, projectId, workshop } = table();
    expect(tick(1)).toMatchObject({ ok: false, error: { code: 'plan-changed' } });
    tick(0);
    expect(tick(0)).toMatchObject({ ok: false, error: { code: 'plan-changed' } });
    tick(1);
    expect(untick(0)).toMatchObject({ ok: false, error: { code: 'plan-changed' } });
    expect(tick(2)).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(workshop.get('cutting:open', { projectId })?.plan).toEqual(plan);
  });

  test('can be undone with its leftovers and every booking, and done again', () => {
    const { workshop, tick, untick, pieces, used, other, ticked } = table();
    const before = dumpOf(workshop);
    tick(0);
    tick(1);
    expect(untick(1)).toMatchObject({ ok: true });
    expect(untick(0)).toMatchObject({ ok: true });
    expect(dumpOf(workshop)).toBe(before);
    expect([pieces(), used().usedArea, used(other).usedArea, ticked()]).toEqual([
      [['yardage', 42, 72]],
      0,
      0,
      [],
    ]);
    expect(tick(0)).toMatchObject({ ok: true });
  });

  test('is undone and redone like any change', () => {
    const { workshop, tick } = table();
    const states = [dumpOf(workshop)];
    for (const place of [0, 1]) {
      tick(place);
      states.push(dumpOf(workshop));
    }
    for (const state of [states[1], states[0]]) {
      workshop.get('change:undo', {});
      expect(dumpOf(workshop)).toBe(state);
    }
    for (const state of [states[1], states[2]]) {
      workshop.get('change:redo', {});
      expect(dumpOf(workshop)).toBe(state);
    }
  });

  test('no longer counts once its booking is undone in the ledger, and can be done again', () => {
    const { workshop, tick, used, ticked, pieces, plan, projectId } = table();
    tick(0);
    const [booking] = used().bookings;
    workshop.get('ledger:undo', { bookingId: booking!.id, on: TODAY });
    expect(ticked()).toMatchObject([{ place: 0, isBooked: false }]);
    expect(tick(0)).toMatchObject({ ok: true });
    expect(ticked()).toMatchObject([{ place: 0, isBooked: true }]);
    expect(pieces()).toEqual([['yardage', 42, 68]]);
    workshop.get('ledger:undo', { bookingId: used().bookings[0]!.id, on: TODAY });
    workshop.get('cutting:save', { projectId, plan });
    expect(ticked()).toEqual([]);
  });

  test('is refused for fabric that is set aside for another project, unless the maker knows', () => {
    const { workshop, tick, other, pieceId, projectId } = table();
    const third = addProject(workshop, { name: 'A third' }).projectId;
    const aside = { pieceId, on: TODAY, note: '' };
    workshop.get('ledger:set-aside', { ...aside, projectId: third, length: inches(71), knowingly: true });
    expect(tick(0)).toMatchObject({ ok: false, error: { code: 'short-of-fabric', there: inches(72) } });
    expect(tick(0, { knowingly: true })).toMatchObject({ ok: true });
    expect([projectId, other]).not.toContain(third);
  });

  test('uses up what is set aside of the piece for its projects', () => {
    const { workshop, tick, pieceId, projectId, used } = table();
    workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(64), on: TODAY, note: '' });
    tick(0);
    tick(1);
    expect(used().held.map(({ held, piece }) => held <= piece.there)).toEqual([true]);
  });

  test('cannot be undone once its leftover has been used', () => {
    const { workshop, tick, untick, ticked, projectId } = table();
    tick(0);
    tick(1);
    const [leftover] = ticked()[1]!.leftovers;
    workshop.get('ledger:discard', { pieceId: leftover!, length: inches(1), on: TODAY, note: '' });
    expect(untick(1)).toMatchObject({ ok: false, error: { code: 'leftover-used' } });
    expect(workshop.get('cutting:open', { projectId })?.ticked).toHaveLength(2);
  });
});
