import type { FabricCost, FabricPrice } from '#core/contract/stash';
import { firstInFirstOut, type StockCost, type StockStep } from '#core/stash/first-in-first-out';
import { addCosts, type KnownCost, NO_COST } from '#core/units/known-cost';
import { costAgain } from '#core/stash/replacement';
import { pricesOf } from './current-price';
import { allRows, type ReadableStore, type Row, type WritableStore, write } from '../base/handles';
import { BOOKING_IS_ACTIVE } from './ledger-sql';
import { groupRows, numberOf, numberOrNullOf } from '../base/rows';

/** The price of one fabric, and the cost of what is there: first in, first out, and at today's price. */
export function worthOfFabric(
  store: ReadableStore,
  fabricSeq: number,
  areaThere: number,
): { readonly price: FabricPrice | null; readonly worth: FabricCost } {
  const price = pricesOf(store, [fabricSeq]).get(fabricSeq) ?? null;
  const left = stockOf(store, [fabricSeq]).get(fabricSeq)?.left ?? [];
  return {
    price,
    worth: {
      firstIn: addCosts(left.map(({ cost }) => cost)),
      replacementMinor: price === null ? null : costAgain(areaThere, price),
    },
  };
}

/** The cost of what a project used: first in, first out, and at today's price. */
export function costOfProject(store: ReadableStore, projectSeq: number): FabricCost {
  const sql =
    'SELECT fabric_seq, area, first_in_minor, first_in_unpriced FROM project_use WHERE project_seq = ?';
  const uses = allRows(store, sql, projectSeq);
  const seqsOf = (rows: readonly Row[]) => rows.map((row) => numberOf(row, 'fabric_seq'));
  const stocks = stockOf(store, seqsOf(uses.filter((use) => use['first_in_minor'] === null)));
  const prices = pricesOf(store, seqsOf(uses));
  let [firstIn, replacementMinor] = [NO_COST, 0 as number | null];
  for (const use of uses) {
    const seq = numberOf(use, 'fabric_seq');
    firstIn = addCosts([firstIn, storedFirstIn(use) ?? usedBy(stocks.get(seq)).get(projectSeq) ?? NO_COST]);
    const area = numberOf(use, 'area');
    const price = prices.get(seq);
    if (area === 0) continue;
    replacementMinor =
      replacementMinor === null || price === undefined ? null : replacementMinor + costAgain(area, price);
  }
  return { firstIn, replacementMinor };
}

/** Null until it is worked out. */
function storedFirstIn(use: Row): KnownCost | null {
  const minor = numberOrNullOf(use, 'first_in_minor');
  return minor === null ? null : { minor, unpricedArea: numberOf(use, 'first_in_unpriced') };
}

/** Stores the first-in, first-out cost of every project that used these fabrics. The next booking on a fabric clears its own. */
export function storeFifoCost(store: WritableStore, fabricSeqs: readonly number[]): void {
  const users =
    'SELECT fabric_seq, project_seq FROM project_use WHERE fabric_seq IN (SELECT value FROM json_each(?))';
  const uses = allRows(store, users, JSON.stringify(fabricSeqs)).map((row) => ({
    fabricSeq: numberOf(row, 'fabric_seq'),
    projectSeq: numberOf(row, 'project_seq'),
  }));
  const stocks = stockOf(store, [...new Set(uses.map(({ fabricSeq }) => fabricSeq))]);
  const used = new Map([...stocks].map(([fabricSeq, stock]) => [fabricSeq, usedBy(stock)]));
  for (const { fabricSeq, projectSeq } of uses) {
    const { minor, unpricedArea } = used.get(fabricSeq)?.get(projectSeq) ?? NO_COST;
    const sql =
      'UPDATE project_use SET first_in_minor = ?, first_in_unpriced = ? WHERE project_seq = ? AND fabric_seq = ?';
    write(store, sql, minor, unpricedArea, projectSeq, fabricSeq);
  }
}

type ProjectSeq = number | null;

/** By the project's `seq`; fabric that no project used is left out. */
function usedBy(stock: StockCost<ProjectSeq> | undefined): ReadonlyMap<number, KnownCost> {
  const costs = new Map<number, KnownCost>();
  for (const { use, cost } of stock?.used ?? []) {
    if (use !== null) costs.set(use, addCosts([costs.get(use) ?? NO_COST, cost]));
  }
  return costs;
}

/**
 * Undone bookings are left out; one that was redone counts from its first time. A cut counts less its leftovers. The index named and the
 * plus sign keep SQLite from scanning every booking that undoes nothing.
 */
const STEPS = `SELECT booking.fabric_seq, booking.project_seq, entry.kind,
    sum(entry.length_change * fabric_piece.width) AS area, sum(entry.value_change) AS value
  FROM booking INDEXED BY booking_of_fabric CROSS JOIN ledger_entry AS entry ON entry.booking_seq = booking.seq
  JOIN fabric_piece ON fabric_piece.seq = entry.piece_seq
  WHERE booking.fabric_seq IN (SELECT value FROM json_each(?)) AND +booking.takes_back IS NULL
    AND entry.length_change <> 0
    AND ${BOOKING_IS_ACTIVE}
  GROUP BY booking.seq ORDER BY coalesce(booking.books_again, booking.seq)`;

/** The stock of each fabric, worked out from its whole ledger. */
function stockOf(
  store: ReadableStore,
  fabricSeqs: readonly number[],
): ReadonlyMap<number, StockCost<ProjectSeq>> {
  if (fabricSeqs.length === 0) return new Map();
  const steps = groupRows(allRows(store, STEPS, JSON.stringify(fabricSeqs)), 'fabric_seq');
  return new Map(fabricSeqs.map((seq) => [seq, firstInFirstOut((steps.get(seq) ?? []).map(stepOf))]));
}

function stepOf(row: Row): StockStep<ProjectSeq> {
  const area = numberOf(row, 'area');
  if (area <= 0) return { kind: 'out', area: 0 - area, use: numberOrNullOf(row, 'project_seq') };
  // Fabric found by a count was paid for with the rest, so it costs nothing more.
  return { kind: 'in', area, costMinor: row['kind'] === 'bought' ? numberOrNullOf(row, 'value') : 0 };
}
