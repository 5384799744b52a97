import type { FabricPrice } from '#core/contract/stash';
import { allRows, type ReadableStore } from '../base/handles';
import { numberOf } from '../base/rows';

const LAST_PAID = `SELECT paid.fabric_seq, length_change * width AS area, value_change AS minor
  FROM json_each(?) AS those CROSS JOIN fabric_paid_last AS paid ON paid.fabric_seq = those.value
  JOIN ledger_entry AS entry ON entry.seq = paid.entry_seq
  JOIN fabric_piece ON fabric_piece.seq = entry.piece_seq`;

const OWN_PRICE = `SELECT fabric.seq AS fabric_seq, for_length * fabric.width AS area, price_minor AS minor
  FROM json_each(?) AS those CROSS JOIN fabric ON fabric.seq = those.value
  JOIN fabric_price ON fabric_price.fabric_id = fabric.id`;

/** The price of each of these fabrics: the maker's own if they set one, else the last price paid. A fabric with neither is left out. */
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
  return new Map([...read(LAST_PAID, false), ...read(OWN_PRICE, true)]);
}
