import { describe, expect, test } from 'vitest';
import type { ChannelInput } from '#core/contract/channels';
import {
  addStock,
  addProject,
  inches,
  NO_SUCH_ID,
  openWorkshop,
  TODAY,
  type TestWorkshop,
} from '#test/helpers/workshop';

const ASIDE = { on: TODAY, note: '' };
type Cut = ChannelInput<'ledger:cut'>;

const known = (minor: number) => ({ minor, unpricedArea: 0 });

function bench(bought: { yards?: number; costMinor?: number } = {}) {
  const workshop = openWorkshop();
  const fabric = addStock(workshop, bought);
  const { projectId, stages } = addProject(workshop);
  const cut = (length: number, rest: Partial<Cut> = {}) =>
    workshop.ask('ledger:cut', {
      pieceId: fabric.pieceId,
      projectId,
      stageId: null,
      length: inches(length),
      leftovers: [],
      knowingly: false,
      ...ASIDE,
      ...rest,
    });
  const aside = (length: number, who = projectId) =>
    workshop.ask('ledger:set-aside', {
      pieceId: fabric.pieceId,
      projectId: who,
      length: inches(length),
      ...ASIDE,
    });
  return { workshop, ...fabric, projectId, stages, cut, aside };
}

const pieces = (workshop: TestWorkshop, fabricId: ChannelInput<'fabric:open'>['fabricId']) =>
  workshop
    .get('fabric:open', { fabricId })
    .pieces.map(({ there, held, valueMinor }) => [there, held, valueMinor]);

describe('buying', () => {
  test('adds a piece with its cost, and the page of the fabric shows it', () => {
    const { workshop, fabricId, pieceId } = bench();
    const page = workshop.get('fabric:open', { fabricId });
    expect(page.pieces).toEqual([
      {
        id: pieceId,
        fabricId,
        kind: 'yardage',
        kindId: null,
        unitLength: null,
        printRuns: 'along',
        place: '',
        width: inches(42),
        there: inches(72),
        held: 0,
        valueMinor: 2000,
      },
    ]);
    expect(page).toMatchObject({
      areaThere: 42 * 72 * 8128 ** 2,
      areaFree: 42 * 72 * 8128 ** 2,
      value: known(2000),
    });
    expect(page.ledger).toEqual([
      expect.objectContaining({
        fabricName: 'Rust leaves',
        cost: known(2000),
        usedArea: 0,
        projectId: null,
        isUndone: false,
      }),
    ]);
  });
});

describe('setting aside and releasing', () => {
  test('sets aside at most what is free, and releases at most what is set aside', () => {
    const { workshop, fabricId, pieceId, projectId, aside } = bench();
    const other = addProject(workshop, { name: 'Another' }).projectId;
    expect(aside(50)).toMatchObject({ ok: true });
    expect(aside(30, other)).toEqual({
      ok: false,
      error: { code: 'short-of-fabric', free: inches(22), there: inches(72), asked: inches(30) },
    });
    expect(workshop.get('ledger:of-project', { projectId }).held).toEqual([
      expect.objectContaining({ held: inches(50) }),
    ]);
    const release = (length: number) => ({ pieceId, projectId, length: inches(length), ...ASIDE });
    expect(workshop.fail('ledger:release', release(51))).toEqual({
      code: 'more-than-set-aside',
      held: inches(50),
    });
    workshop.get('ledger:release', release(20));
    expect(pieces(workshop, fabricId)).toEqual([[inches(72), inches(30), 2000]]);
  });
});

describe('setting aside more than is free', () => {
  test('needs the maker to know, leaves nothing free, and can be undone and redone', () => {
    const { workshop, fabricId, pieceId, projectId, aside } = bench();
    aside(60, addProject(workshop, { name: 'Another' }).projectId);
    expect(aside(20)).toMatchObject({ ok: false, error: { code: 'short-of-fabric', free: inches(12) } });
    const more = { pieceId, projectId, length: inches(20), knowingly: true, ...ASIDE };
    workshop.get('ledger:set-aside', more);
    expect(pieces(workshop, fabricId)).toEqual([[inches(72), inches(80), 2000]]);
    expect(workshop.get('fabric:open', { fabricId }).areaFree).toBe(0);
    workshop.get('change:undo', {});
    expect(pieces(workshop, fabricId)).toEqual([[inches(72), inches(60), 2000]]);
    workshop.get('change:redo', {});
    expect(pieces(workshop, fabricId)).toEqual([[inches(72), inches(80), 2000]]);
  });

  test('lets a project cut what is set aside for it without asking again', () => {
    const { workshop, aside, cut, fabricId } = bench();
    aside(60);
    expect(cut(60)).toMatchObject({ ok: true });
    expect(pieces(workshop, fabricId)).toEqual([[inches(12), 0, 333]]);
  });
});

describe('cutting', () => {
  test('takes what is set aside for the project first, then free fabric', () => {
    const { workshop, fabricId, cut, aside } = bench();
    aside(10);
    expect(cut(15)).toMatchObject({ ok: true });
    expect(pieces(workshop, fabricId)).toEqual([[inches(57), 0, 2000 - 417]]);
  });

  test('is refused for what is set aside for others unless the maker knows, and always for more than is there', () => {
    const { workshop, fabricId, cut, aside } = bench();
    aside(60, addProject(workshop, { name: 'Another' }).projectId);
    const short = { code: 'short-of-fabric', free: inches(12), there: inches(72), asked: inches(20) };
    expect(cut(20)).toEqual({ ok: false, error: short });
    expect(cut(80, { knowingly: true })).toMatchObject({ ok: false, error: { code: 'short-of-fabric' } });
    expect(cut(20, { knowingly: true })).toMatchObject({ ok: true });
    const page = workshop.get('fabric:open', { fabricId });
    expect(page.pieces[0]).toMatchObject({ there: inches(52), held: inches(60) });
    expect(page.areaFree).toBe(0);
  });

  test('keeps leftovers as new pieces and shares the cost by area, to the last cent', () => {
    const { workshop, fabricId, projectId, stages, cut } = bench({ costMinor: 1000 });
    // Derived: a third of 10.00 leaves with the cut, 333; each leftover has 1/14 of the area cut.
    const leftover = { width: inches(12), length: inches(6) };
    expect(cut(24, { stageId: stages[0]!.id, leftovers: [leftover, leftover] })).toMatchObject({ ok: true });
    expect(pieces(workshop, fabricId)).toEqual([
      [inches(48), 0, 667],
      [inches(6), 0, 24],
      [inches(6), 0, 24],
    ]);
    const fabric = workshop.get('ledger:of-project', { projectId });
    expect(fabric).toMatchObject({ usedArea: (42 * 24 - 2 * 72) * 8128 ** 2, paid: known(285) });
    expect(fabric.bookings).toEqual([
      expect.objectContaining({ stageName: 'Piece the top', cost: known(285), usedArea: fabric.usedArea }),
    ]);
    expect(fabric.bookings[0]!.entries.map(({ kind, pieceWidth }) => [kind, pieceWidth])).toEqual([
      ['cut', inches(42)],
      ['leftover', inches(12)],
      ['leftover', inches(12)],
    ]);
  });

  test('takes all that is left of the value with the last of a piece', () => {
    const { workshop, fabricId, projectId, cut } = bench({ costMinor: 1001 });
    for (const length of [24, 24, 24]) cut(length);
    expect(pieces(workshop, fabricId)).toEqual([]);
    expect(workshop.get('ledger:of-project', { projectId }).paid).toEqual({ minor: 1001, unpricedArea: 0 });
  });

  test.each([
    [
      'larger than the cut in both directions',
      [{ width: inches(43), length: inches(43) }],
      { code: 'leftover-too-large', width: inches(43), length: inches(43) },
    ],
    [
      'longer than the cut',
      [
        { width: inches(10), length: inches(10) },
        { width: inches(50), length: inches(1) },
      ],
      { code: 'leftover-too-large', width: inches(50), length: inches(1) },
    ],
    [
      'together with others larger than the cut',
      Array.from({ length: 3 }, () => ({ width: inches(42), length: inches(10) })),
      { code: 'leftovers-too-large' },
    ],
  ])('refuses a leftover that is %s', (_what, leftovers, problem) => {
    const { cut } = bench();
    const cutSize = { cutWidth: inches(42), cutLength: inches(24) };
    expect(cut(24, { leftovers })).toEqual({ ok: false, error: { ...problem, ...cutSize } });
  });

  test('takes a leftover that only fits turned', () => {
    const { cut } = bench();
    expect(cut(10, { leftovers: [{ width: inches(9), length: inches(40) }] })).toMatchObject({ ok: true });
  });

  test('is refused for a missing piece, a missing project, or a stage of another project', () => {
    const { workshop, cut } = bench();
    const other = addProject(workshop, { name: 'Another' });
    expect(cut(1, { stageId: other.stages[0]!.id })).toMatchObject({
      error: { code: 'not-found', kind: 'stage' },
    });
    expect(cut(1, { projectId: NO_SUCH_ID as never })).toMatchObject({
      error: { code: 'not-found', kind: 'project' },
    });
    expect(cut(1, { pieceId: NO_SUCH_ID as never })).toMatchObject({
      error: { code: 'not-found', kind: 'piece' },
    });
  });
});

describe('throwing out and measuring again', () => {
  test('throwing out takes its share of the value, and nothing that is set aside', () => {
    const { workshop, fabricId, pieceId, aside } = bench();
    aside(60);
    const discard = (length: number) => ({ pieceId, length: inches(length), ...ASIDE });
    expect(workshop.fail('ledger:discard', discard(13))).toMatchObject({
      code: 'short-of-fabric',
      free: inches(12),
    });
    workshop.get('ledger:discard', discard(12));
    expect(pieces(workshop, fabricId)).toEqual([[inches(60), inches(60), 1667]]);
    expect(workshop.get('fabric:open', { fabricId }).ledger[0]).toMatchObject({ cost: known(333) });
  });

  test('measuring leaves the value with what is there, and writes it off when nothing is', () => {
    const { workshop, fabricId, pieceId } = bench();
    workshop.get('ledger:count', { pieceId, there: inches(70), ...ASIDE });
    expect(pieces(workshop, fabricId)).toEqual([[inches(70), 0, 2000]]);
    workshop.get('ledger:count', { pieceId, there: 0, ...ASIDE });
    expect(pieces(workshop, fabricId)).toEqual([]);
    workshop.get('ledger:count', { pieceId, there: inches(4), ...ASIDE });
    expect(pieces(workshop, fabricId)).toEqual([[inches(4), 0, 0]]);
  });
});

describe('undoing a booking', () => {
  test('restores the cut, its leftovers, what was set aside and the money in one step, once', () => {
    const { workshop, fabricId, projectId, cut, aside } = bench();
    aside(10);
    const before = pieces(workshop, fabricId);
    const done = cut(24, { leftovers: [{ width: inches(5), length: inches(5) }] });
    const bookingId = done.ok ? done.value.bookingId : (NO_SUCH_ID as never);
    workshop.get('ledger:undo', { bookingId, on: TODAY });
    expect(pieces(workshop, fabricId)).toEqual(before);
    expect(workshop.get('ledger:of-project', { projectId })).toMatchObject({ usedArea: 0, paid: known(0) });
    const [undoing, cutBooking] = workshop.get('fabric:open', { fabricId }).ledger;
    expect(cutBooking).toMatchObject({ id: bookingId, isUndone: true });
    expect(undoing!.entries.map(({ reverses }) => reverses)).toEqual(cutBooking!.entries.map(({ id }) => id));
    expect(undoing!.usedArea).toBe(-cutBooking!.usedArea);
    expect(workshop.fail('ledger:undo', { bookingId, on: TODAY })).toEqual({
      code: 'already-undone',
    });
    expect(workshop.fail('ledger:undo', { bookingId: undoing!.id, on: TODAY })).toEqual({
      code: 'already-undone',
    });
  });

  test('is refused while a leftover is cut or set aside, and works once that is undone', () => {
    const { workshop, fabricId, projectId, cut } = bench();
    const done = cut(24, { leftovers: [{ width: inches(20), length: inches(20) }] });
    const bookingId = done.ok ? done.value.bookingId : (NO_SUCH_ID as never);
    const leftover = workshop.get('fabric:open', { fabricId }).pieces[1]!;
    const { changeId } = workshop.get('ledger:set-aside', {
      pieceId: leftover.id,
      projectId,
      length: inches(1),
      ...ASIDE,
    });
    expect(workshop.fail('ledger:undo', { bookingId, on: TODAY })).toEqual({ code: 'leftover-used' });
    workshop.get('change:undo', { changeId });
    const second = cut(1, { pieceId: leftover.id });
    expect(workshop.fail('ledger:undo', { bookingId, on: TODAY })).toEqual({ code: 'leftover-used' });
    workshop.get('ledger:undo', {
      bookingId: second.ok ? second.value.bookingId : (NO_SUCH_ID as never),
      on: TODAY,
    });
    workshop.get('ledger:undo', { bookingId, on: TODAY });
  });

  test.each([
    ['was cut since', 'fabric-used-since', (one: ReturnType<typeof bench>) => one.cut(1)],
    ['is set aside', 'fabric-set-aside', (one: ReturnType<typeof bench>) => one.aside(1)],
  ])('is refused for bought fabric that %s', (_what, code, use) => {
    const one = bench();
    use(one);
    const bought = one.workshop.get('fabric:open', { fabricId: one.fabricId }).ledger.at(-1)!;
    expect(one.workshop.fail('ledger:undo', { bookingId: bought.id, on: TODAY })).toEqual({ code });
  });

  test('is refused for fabric that was released because its project was deleted', () => {
    const { workshop, fabricId, projectId, aside } = bench();
    aside(10);
    workshop.get('project:delete', { projectId });
    const released = workshop.get('fabric:open', { fabricId }).ledger[0]!;
    expect(workshop.fail('ledger:undo', { bookingId: released.id, on: TODAY })).toEqual({
      code: 'project-deleted',
    });
  });

  test('is refused for fabric set aside that was released since', () => {
    const { workshop, fabricId, pieceId, projectId, aside } = bench();
    aside(10);
    workshop.get('ledger:release', { pieceId, projectId, length: inches(10), ...ASIDE });
    const [, setAside] = workshop.get('fabric:open', { fabricId }).ledger;
    expect(workshop.fail('ledger:undo', { bookingId: setAside!.id, on: TODAY })).toEqual({
      code: 'hold-gone',
    });
  });

  test('is refused when the value has moved to other fabric', () => {
    const { workshop, fabricId, pieceId } = bench();
    workshop.get('ledger:count', { pieceId, there: inches(80), ...ASIDE });
    workshop.get('ledger:discard', { pieceId, length: inches(4), ...ASIDE });
    const bought = workshop.get('fabric:open', { fabricId }).ledger.at(-1)!;
    expect(workshop.fail('ledger:undo', { bookingId: bought.id, on: TODAY })).toEqual({
      code: 'value-moved',
    });
  });

  test('is refused for a booking that does not exist', () => {
    const { workshop } = bench();
    const nobody = { bookingId: NO_SUCH_ID as never, on: TODAY };
    expect(workshop.fail('ledger:undo', nobody)).toEqual({ code: 'not-found', kind: 'booking' });
  });
});

test('undo books the opposite and redo books again, so the ledger only grows', () => {
  const { workshop, fabricId, cut } = bench();
  cut(24);
  const length = () => workshop.get('fabric:open', { fabricId }).ledger.length;
  expect(length()).toBe(2);
  workshop.get('change:undo', {});
  expect(pieces(workshop, fabricId)).toEqual([[inches(72), 0, 2000]]);
  workshop.get('change:redo', {});
  expect(pieces(workshop, fabricId)).toEqual([[inches(48), 0, 1333]]);
  const kinds = workshop.get('fabric:open', { fabricId }).ledger.map(({ entries }) => entries[0]!.kind);
  expect(kinds).toEqual(['cut', 'taken-back', 'cut', 'bought']);
});
