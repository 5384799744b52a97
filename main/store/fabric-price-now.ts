import type { FabricPrice } from '#core/contract/stash';
import { allRows, type ReadableStore } from './handles';
import { numberOf } from './rows';

/** The newest purchase that was paid for and still stands: beside max() SQLite gives the other columns of that very row. */
const PAID_LAST = `SELECT cloth_piece.fabric_seq, max(coalesce(booking.books_again, booking.seq)),
    entry.length_change * cloth_piece.width AS area,
    entry.value_change AS minor
  FROM cloth_piece INDEXED BY piece_of_fabric
  CROSS JOIN ledger_entry AS entry INDEXED BY entry_bought ON entry.piece_seq = cloth_piece.seq AND entry.kind = 'bought'
  JOIN booking ON booking.seq = entry.booking_seq
  WHERE cloth_piece.fabric_seq IN (SELECT value FROM json_each(?)) AND entry.value_change > 0
    AND NOT EXISTS (SELECT 1 FROM ledger_entry AS later WHERE later.reverses = entry.seq)
  GROUP BY cloth_piece.fabric_seq`;

const WRITTEN_DOWN = `SELECT fabric.seq AS fabric_seq, for_length * fabric.width AS area, price_minor AS minor
  FROM json_each(?) AS those CROSS JOIN fabric ON fabric.seq = those.value
  JOIN fabric_price ON fabric_price.fabric_id = fabric.id`;

/** The price of each of these fabrics: the maker's own where she wrote one down, else what was paid last; none where neither is known. */
export function pricesOf(
  store: ReadableStore,
  fabricSeqs: readonly number[],
): ReadonlyMap<number, FabricPrice> {
  const seqs = JSON.stringify(fabricSeqs);
  const read = (sql: string, isOwn: boolean) =>
    allRows(store, sql, seqs).map((row): [number, FabricPrice] => [
      numberOf(row, 'fabric_seq'),
      { minor: numberOf(row, 'minor'), area: numberOf(row, 'area'), isOwn },
    ]);
  return new Map([...read(PAID_LAST, false), ...read(WRITTEN_DOWN, true)]);
}
