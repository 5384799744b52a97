import { toStashFile } from '#core/stash/table/stash-file';
import { type StashItem, stashLines } from '#core/stash/table/write-rows';
import { textOfLines } from '#main/files/table-lines';
import { FABRICS, fabricOf, pieceOf, PIECES_OF_FABRIC } from '../stash/fabric-rows';
import { allRows, type ReadableStore } from '../base/handles';
import { groupRows, numberOf, partialDateOrNullOf, textOrNullOf } from '../base/rows';
import { readWorkshop } from '../workshop/workshop';

/** The whole stash as text: comma-separated values for a spreadsheet, or JSON. */
export function stashAsText(store: ReadableStore, as: 'csv' | 'json'): string {
  const { currency, settings } = readWorkshop(store);
  const items = stashItems(store);
  return as === 'csv'
    ? textOfLines(stashLines(items, { currency, units: settings.unitSystem }))
    : `${JSON.stringify(toStashFile(items, currency), null, 2)}\n`;
}

/** Every fabric with its pieces that are not used up, each with the day it was first booked. */
function stashItems(store: ReadableStore): readonly StashItem[] {
  const pieces = groupRows(
    allRows(
      store,
      `SELECT piece.*, stash_kind.name AS kind_name,
        (SELECT on_date FROM ledger_entry JOIN booking ON booking.seq = booking_seq
          WHERE piece_seq = piece.seq ORDER BY ledger_entry.seq LIMIT 1) AS on_date
      FROM (${PIECES_OF_FABRIC} WHERE there > 0) AS piece LEFT JOIN stash_kind ON stash_kind.id = piece.kind_id
      ORDER BY piece.seq`,
    ),
    'fabric_seq',
  );
  return allRows(store, `${FABRICS} WHERE deleted_at IS NULL ORDER BY seq`).map((row) => {
    const { id: _id, photoId: _photo, createdAt: _created, ...details } = fabricOf(row);
    return {
      details,
      pieces: (pieces.get(numberOf(row, 'seq')) ?? []).map((piece) => {
        const { kind, width, there: length, unitLength, place, printRuns, valueMinor } = pieceOf(piece);
        const kindName = textOrNullOf(piece, 'kind_name') ?? '';
        const on = partialDateOrNullOf(piece, 'on_date');
        return { kind, kindName, width, length, unitLength, place, printRuns, costMinor: valueMinor, on };
      }),
    };
  });
}
