import { describe, expect, test } from 'vitest';
import type { ChannelInput } from '#core/contract/channels';
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
  workshop.get('cutting:keep', { projectId, plan });
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

describe('a plan to cut by', () => {
  test('is kept with its project and comes back as it was, in place of the one before', () => {
    const { workshop, plan, projectId } = table();
    expect(workshop.get('cutting:open', { projectId })).toMatchObject({ plan, ticked: [] });
    workshop.get('cutting:keep', { projectId, plan: { ...plan, rule: 'guillotine' } });
    expect(workshop.get('cutting:open', { projectId })?.plan.rule).toBe('guillotine');
    workshop.get('change:undo', {});
    expect(workshop.get('cutting:open', { projectId })?.plan.rule).toBe('2-stage');
  });

  test('is put away, and what was cut by it stays cut', () => {
    const { workshop, projectId, tick, pieces } = table();
    tick(0);
    workshop.get('cutting:remove', { projectId });
    expect(workshop.get('cutting:open', { projectId })).toBeNull();
    expect(pieces()).toEqual([['yardage', 42, 68]]);
    workshop.get('change:undo', {});
    expect(workshop.get('cutting:open', { projectId })?.ticked).toHaveLength(1);
  });

  test('made anew begins with what is cut already, or is refused', () => {
    const { workshop, plan, projectId, tick } = table();
    tick(0);
    const [piece] = plan.pieces;
    expect(workshop.ask('cutting:keep', { projectId, plan })).toMatchObject({ ok: true });
    expect(workshop.fail('cutting:keep', { projectId, plan: { ...plan, pieces: [] } })).toEqual({
      code: 'changed-since',
      what: 'cutting plan',
    });
    if (piece?.tree.kind !== 'split') throw new Error('No strips');
    const turned = { ...piece, tree: { ...piece.tree, parts: piece.tree.parts.toReversed() } };
    expect(workshop.fail('cutting:keep', { projectId, plan: { ...plan, pieces: [turned] } }).code).toBe(
      'changed-since',
    );
  });
});

describe('a cut that is ticked', () => {
  test('takes its length off the piece for the project and the stage the patches were asked by', () => {
    const { tick, pieces, used, stageId, ticked } = table();
    expect(tick(0)).toMatchObject({ ok: true });
    expect(pieces()).toEqual([['yardage', 42, 68]]);
    const [booking] = used().bookings;
    expect(booking).toMatchObject({ stageId, usedArea: inches(42) * inches(4), costMinor: 400 });
    expect(ticked()).toMatchObject([{ place: 0, parts: 2, isBooked: true, leftovers: [] }]);
  });

  test('is shared among projects by what each gets of it, and its leftover enters the stash at its size', () => {
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
    // 4 of 3½ in against 4 of 5 in; lengths are whole units, so the shares are true to a unit across the fabric.
    expect(Math.abs(others - (20 / 34) * (own + others))).toBeLessThan(inches(42));
    expect(used().costMinor + used(other).costMinor).toBe(400 + 350 - 67);
  });

  test('comes in its turn only', () => {
    const { tick, untick, plan, projectId, workshop } = table();
    expect(tick(1)).toMatchObject({ ok: false, error: { code: 'changed-since' } });
    tick(0);
    expect(tick(0)).toMatchObject({ ok: false, error: { code: 'changed-since' } });
    tick(1);
    expect(untick(0)).toMatchObject({ ok: false, error: { code: 'changed-since' } });
    expect(tick(2)).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(workshop.get('cutting:open', { projectId })?.plan).toEqual(plan);
  });

  test('is taken back with its leftovers and every booking, and can be ticked again', () => {
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

  test('is undone and done again like any change', () => {
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

  test('is no longer ticked when its booking was taken back elsewhere, and is ticked anew', () => {
    const { workshop, tick, used, ticked, pieces, plan, projectId } = table();
    tick(0);
    const [booking] = used().bookings;
    workshop.get('ledger:take-back', { bookingId: booking!.id, on: TODAY });
    expect(ticked()).toMatchObject([{ place: 0, isBooked: false }]);
    expect(tick(0)).toMatchObject({ ok: true });
    expect(ticked()).toMatchObject([{ place: 0, isBooked: true }]);
    expect(pieces()).toEqual([['yardage', 42, 68]]);
    workshop.get('ledger:take-back', { bookingId: used().bookings[0]!.id, on: TODAY });
    workshop.get('cutting:keep', { projectId, plan });
    expect(ticked()).toEqual([]);
  });

  test('is refused where the fabric is set aside for somebody else, unless that is known', () => {
    const { workshop, tick, other, pieceId, projectId } = table();
    const third = addProject(workshop, { name: 'A third' }).projectId;
    const aside = { pieceId, on: TODAY, note: '' };
    workshop.get('ledger:set-aside', { ...aside, projectId: third, length: inches(70) });
    expect(tick(0)).toMatchObject({ ok: false, error: { code: 'short-of-fabric', free: inches(2) } });
    expect(tick(0, { knowingly: true })).toMatchObject({ ok: true });
    expect([projectId, other]).not.toContain(third);
  });

  test('uses up what its projects hold of the piece', () => {
    const { workshop, tick, pieceId, projectId, used } = table();
    workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(72), on: TODAY, note: '' });
    tick(0);
    tick(1);
    expect(used().held.map(({ held, piece }) => held <= piece.there)).toEqual([true]);
  });

  test('stays when its leftover was used since', () => {
    const { workshop, tick, untick, ticked, projectId } = table();
    tick(0);
    tick(1);
    const [leftover] = ticked()[1]!.leftovers;
    workshop.get('ledger:discard', { pieceId: leftover!, length: inches(1), on: TODAY, note: '' });
    expect(untick(1)).toMatchObject({ ok: false, error: { code: 'in-use' } });
    expect(workshop.get('cutting:open', { projectId })?.ticked).toHaveLength(2);
  });
});
