import { clothKind } from '#core/domain/stash';
import { toStashFile } from '#core/stash/table/stash-file';
import { type StashItem, stashLines } from '#core/stash/table/write-rows';
import { textOfLines } from '../files/table-lines';
import { fabricOf } from './fabric-rows';
import { allRows, type ReadableStore } from './handles';
import { choiceOf, dateOf, groupRows, lengthOf, numberOf } from './rows';
import { readWorkshop } from './workshop';

/** The whole stash as text: separated values for a spreadsheet, or data. */
export function stashAsText(store: ReadableStore, as: 'csv' | 'json'): string {
  const { currency } = readWorkshop(store);
  const items = stashItems(store);
  return as === 'csv'
    ? textOfLines(stashLines(items, currency))
    : `${JSON.stringify(toStashFile(items, currency), null, 2)}\n`;
}

/** Every fabric with the pieces that are there, as they were first booked. */
function stashItems(store: ReadableStore): readonly StashItem[] {
  const pieces = groupRows(
    allRows(
      store,
      `SELECT cloth_piece.fabric_seq, cloth_piece.kind, cloth_piece.width, there, value_minor,
        (SELECT on_date FROM ledger_entry JOIN booking ON booking.seq = booking_seq
          WHERE piece_seq = cloth_piece.seq ORDER BY ledger_entry.seq LIMIT 1) AS on_date
      FROM cloth_piece JOIN piece_sum ON piece_sum.piece_seq = cloth_piece.seq
      WHERE there > 0 ORDER BY cloth_piece.seq`,
    ),
    'fabric_seq',
  );
  return allRows(store, 'SELECT * FROM fabric WHERE deleted_at IS NULL ORDER BY seq').map((row) => {
    const { id: _id, photoId: _photo, createdAt: _created, ...details } = fabricOf(row);
    return {
      details,
      pieces: (pieces.get(numberOf(row, 'seq')) ?? []).map((piece) => ({
        kind: choiceOf(piece, 'kind', clothKind.options),
        width: lengthOf(piece, 'width'),
        length: lengthOf(piece, 'there'),
        costMinor: numberOf(piece, 'value_minor'),
        on: dateOf(piece, 'on_date'),
      })),
    };
  });
}
