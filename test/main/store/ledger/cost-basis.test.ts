import { describe, expect, test } from 'vitest';
import { addProject, addStock, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

const known = (minor: number) => ({ minor, unpricedArea: 0 });

/** Two yards for 20.00, then two yards of the same for 40.00; a cut of one yard off the newer piece. */
function bench() {
  const workshop = openWorkshop();
  const { fabricId, pieceId: older } = addStock(workshop);
  const size = { width: inches(42), length: inches(72) };
  const bought = { fabricId, kind: 'yardage', size, costMinor: 4_000, on: TODAY, note: '' } as const;
  const { pieceId: newer } = workshop.get('ledger:buy', bought);
  const { projectId } = addProject(workshop);
  const cut = (
    pieceId: typeof newer,
    length: number,
    leftovers: readonly { width: number; length: number }[] = [],
  ) =>
    workshop.get('ledger:cut', {
      pieceId,
      projectId,
      stageId: null,
      length: inches(length),
      knowingly: false,
      on: TODAY,
      note: '',
      leftovers: leftovers.map((one) => ({ width: inches(one.width), length: inches(one.length) })),
    });
  const page = () => workshop.get('fabric:open', { fabricId });
  const project = () => workshop.get('ledger:of-project', { projectId });
  return { workshop, fabricId, older, newer, projectId, cut, page, project };
}

describe('the cost of a project’s fabric', () => {
  test('is worked out by piece, first in first out, and at today’s price', () => {
    const { cut, page, project, newer } = bench();
    cut(newer, 36);
    // Derived: the piece cost 20.00 a yard, the fabric that came in first 10.00, and 20.00 was the last price paid.
    expect(project()).toMatchObject({
      paid: known(2_000),
      cost: { firstIn: known(1_000), replacementMinor: 2_000 },
    });
    expect(page()).toMatchObject({
      value: known(4_000),
      worth: { firstIn: known(5_000), replacementMinor: 6_000 },
    });
  });

  test('counts a cut less its leftovers', () => {
    const { cut, project, newer } = bench();
    cut(newer, 36, [{ width: 21, length: 36 }]);
    expect(project()).toMatchObject({
      paid: known(1_000),
      cost: { firstIn: known(500), replacementMinor: 1_000 },
    });
  });

  test('leaves out a booking that was undone', () => {
    const { workshop, cut, page, project, newer } = bench();
    const { bookingId } = cut(newer, 36);
    workshop.get('ledger:undo', { bookingId, on: TODAY });
    expect(project().cost).toEqual({ firstIn: known(0), replacementMinor: 0 });
    expect(page().worth).toEqual({ firstIn: known(6_000), replacementMinor: 8_000 });
  });

  test('is stored from one booking to the next, and equals the sum over the whole ledger', () => {
    const { workshop, cut, project, newer, older } = bench();
    const stored = () =>
      workshop.context.store.database.prepare('SELECT first_in_minor FROM project_use').pluck().all();
    const summed = () => {
      workshop.context.store.database.exec('UPDATE project_use SET first_in_minor = NULL');
      return project().cost;
    };
    cut(newer, 36, [{ width: 21, length: 36 }]);
    const { bookingId } = cut(older, 10);
    for (const step of [
      () => workshop.get('ledger:count', { pieceId: older, there: inches(20), on: TODAY, note: '' }),
      () => workshop.get('ledger:undo', { bookingId, on: TODAY }),
      () => workshop.get('change:undo', {}),
    ]) {
      step();
      expect(stored()).toEqual([project().cost.firstIn.minor]);
      expect(summed()).toEqual(project().cost);
    }
  });

  test('gives found fabric no cost, and missing fabric the cost of what came first', () => {
    const { workshop, older, newer, page } = bench();
    workshop.get('ledger:count', { pieceId: older, there: inches(36), on: TODAY, note: '' });
    expect(page().worth.firstIn).toEqual(known(5_000));
    workshop.get('ledger:count', { pieceId: newer, there: inches(108), on: TODAY, note: '' });
    expect(page().worth.firstIn).toEqual(known(5_000));
  });
});

describe('today’s price', () => {
  test('is the last price paid unless the maker sets one; setting and deleting it can be undone', () => {
    const { workshop, fabricId, page } = bench();
    expect(page().price).toEqual({ minor: 4_000, area: inches(42) * inches(72), isOwn: false });
    workshop.get('fabric:set-price', { fabricId, price: { minor: 1_350, length: inches(36) } });
    expect(page().price).toEqual({ minor: 1_350, area: inches(42) * inches(36), isOwn: true });
    expect(page().worth.replacementMinor).toBe(4 * 1_350);
    workshop.get('fabric:set-price', { fabricId, price: { minor: 1_400, length: inches(36) } });
    workshop.get('change:undo', {});
    expect(page().price).toMatchObject({ minor: 1_350 });
    workshop.get('fabric:set-price', { fabricId, price: null });
    expect(page().price).toMatchObject({ minor: 4_000, isOwn: false });
    expect(workshop.get('change:undo', {}).says).toBe('Deleted the price of “Rust leaves”');
    expect(page().price).toMatchObject({ minor: 1_350, isOwn: true });
  });

  test('does not exist for fabric that was never paid for, and neither does a replacement cost', () => {
    const workshop = openWorkshop();
    const { fabricId } = addStock(workshop, { costMinor: 0 });
    expect(workshop.get('fabric:open', { fabricId })).toMatchObject({
      price: null,
      worth: { firstIn: known(0), replacementMinor: null },
    });
  });
});
