import type { ClothCost, FabricPrice } from '#core/contract/stash';
import { firstInFirstOut, type StockStep } from '#core/stash/first-in-first-out';
import { costAgain } from '#core/stash/replacement';
import { allRows, type ReadableStore, type Row } from './handles';
import { groupRows, numberOf, numberOrNullOf } from './rows';

/** A fabric's cost counted from its whole ledger: what is left of it, what each project took, and its price now. */
interface FabricCost {
  readonly leftMinor: number;
  /** By the project's number; what no project took is not in it. */
  readonly takenMinor: ReadonlyMap<number, number>;
  readonly price: FabricPrice | null;
  /** What an area of it would cost now; null while no price is known. */
  readonly again: (area: number) => number | null;
}

/** What is there of one fabric, in the other ways than by the piece. */
export function worthOfFabric(
  store: ReadableStore,
  fabricSeq: number,
  areaThere: number,
): { readonly price: FabricPrice | null; readonly worth: ClothCost } {
  const cost = costOfFabrics(store, [fabricSeq]).get(fabricSeq);
  if (cost === undefined) return { price: null, worth: { firstInMinor: 0, againMinor: null } };
  return { price: cost.price, worth: { firstInMinor: cost.leftMinor, againMinor: cost.again(areaThere) } };
}

/** What a project used, in the other ways than by the piece. */
export function costOfProject(store: ReadableStore, projectSeq: number): ClothCost {
  const uses = allRows(store, 'SELECT fabric_seq, area FROM project_use WHERE project_seq = ?', projectSeq);
  const costs = costOfFabrics(
    store,
    uses.map((row) => numberOf(row, 'fabric_seq')),
  );
  let [firstInMinor, againMinor] = [0, 0 as number | null];
  for (const use of uses) {
    const cost = costs.get(numberOf(use, 'fabric_seq'));
    firstInMinor += cost?.takenMinor.get(projectSeq) ?? 0;
    const area = numberOf(use, 'area');
    const again = area === 0 ? 0 : (cost?.again(area) ?? null);
    againMinor = againMinor === null || again === null ? null : againMinor + again;
  }
  return { firstInMinor, againMinor };
}

/** What was taken back counts as if it had never been; a cut counts less the leftovers kept of it. */
const STEPS = `SELECT booking.fabric_seq, booking.project_seq, entry.kind,
    sum(entry.length_change * cloth_piece.width) AS area, sum(entry.value_change) AS value
  FROM booking JOIN ledger_entry AS entry ON entry.booking_seq = booking.seq
  JOIN cloth_piece ON cloth_piece.seq = entry.piece_seq
  WHERE booking.fabric_seq IN (SELECT value FROM json_each(?)) AND booking.takes_back IS NULL
    AND entry.length_change <> 0
    AND NOT EXISTS (SELECT 1 FROM booking AS later WHERE later.takes_back = booking.seq)
  GROUP BY booking.seq ORDER BY booking.seq`;

const PRICES = `SELECT fabric.seq AS fabric_seq, fabric.width, price_minor, for_length FROM fabric
  LEFT JOIN fabric_price ON fabric_price.fabric_id = fabric.id
  WHERE fabric.seq IN (SELECT value FROM json_each(?))`;

function costOfFabrics(store: ReadableStore, fabricSeqs: readonly number[]): ReadonlyMap<number, FabricCost> {
  const seqs = JSON.stringify(fabricSeqs);
  const steps = groupRows(allRows(store, STEPS, seqs), 'fabric_seq');
  return new Map(
    allRows(store, PRICES, seqs).map((row) => {
      const seq = numberOf(row, 'fabric_seq');
      return [seq, costOf(row, steps.get(seq) ?? [])];
    }),
  );
}

function costOf(fabric: Row, rows: readonly Row[]): FabricCost {
  const { taken, left } = firstInFirstOut(rows.map(stepOf));
  const takenMinor = new Map<number, number>();
  for (const { taker, costMinor } of taken) {
    if (taker !== null) takenMinor.set(taker, (takenMinor.get(taker) ?? 0) + costMinor);
  }
  const price = ownPrice(fabric) ?? lastPaid(rows);
  return {
    leftMinor: left.reduce((sum, { costMinor }) => sum + costMinor, 0),
    takenMinor,
    price,
    again: (area) => (price === null ? null : costAgain(area, price)),
  };
}

function stepOf(row: Row): StockStep<number | null> {
  const area = numberOf(row, 'area');
  if (area <= 0) return { kind: 'out', area: 0 - area, taker: numberOrNullOf(row, 'project_seq') };
  // Cloth that a count found was paid for with the rest: it costs nothing more.
  return { kind: 'in', area, costMinor: row['kind'] === 'bought' ? numberOf(row, 'value') : 0 };
}

function ownPrice(fabric: Row): FabricPrice | null {
  if (fabric['price_minor'] === null) return null;
  const area = numberOf(fabric, 'for_length') * numberOf(fabric, 'width');
  return { minor: numberOf(fabric, 'price_minor'), area, isOwn: true };
}

function lastPaid(rows: readonly Row[]): FabricPrice | null {
  const last = rows.findLast((row) => row['kind'] === 'bought' && numberOf(row, 'value') > 0);
  return last === undefined
    ? null
    : { minor: numberOf(last, 'value'), area: numberOf(last, 'area'), isOwn: false };
}
