import type { EntryKind } from '#core/domain/stash';
import type { BookingId } from '#core/domain/ids';
import type { CalendarDate } from '#core/units/calendar-date';
import { addBookingToChange } from './current-change';
import { keepFirstIn } from './fabric-cost';
import {
  allRows,
  insertRow,
  oneRow,
  type ReadableStore,
  type Row,
  type Value,
  type WritableStore,
} from './handles';
import { numberOf, numberOrNullOf, textOf } from './rows';

/** One entry to be booked; changes as in the domain's LedgerEntry. */
export interface NewEntry {
  readonly pieceSeq: number;
  readonly kind: EntryKind;
  readonly lengthChange: number;
  readonly heldChange: number;
  readonly valueChange: number;
  readonly reverses?: number;
}

/** Speaks for a length of a piece; the booking says for which project. */
export function setAsideEntry(pieceSeq: number, length: number): NewEntry {
  return { pieceSeq, kind: 'set-aside', lengthChange: 0, heldChange: length, valueChange: 0 };
}

export interface NewBooking {
  readonly fabricSeq: number;
  readonly projectSeq: number | null;
  readonly stage: { readonly id: string; readonly name: string } | null;
  readonly note: string;
  readonly on: CalendarDate;
  /** The maker knows that more is spoken for than there is; without it the file refuses that. */
  readonly isKnowing?: boolean;
}

/** Adds a booking with its entries to the ledger and to the change at hand. */
export function appendBooking(
  store: WritableStore,
  booking: NewBooking,
  entries: readonly NewEntry[],
): BookingId {
  return append(store, {
    columns: {
      fabric_seq: booking.fabricSeq,
      project_seq: booking.projectSeq,
      stage_id: booking.stage?.id ?? null,
      stage_name: booking.stage?.name ?? null,
      note: booking.note,
      is_knowing: booking.isKnowing === true ? 1 : 0,
      on_date: booking.on,
    },
    entries,
  });
}

/** Books the opposite of every entry of a booking, which must stand. */
export function appendTakeBack(store: WritableStore, bookingSeq: number, on: CalendarDate): BookingId {
  return append(store, {
    columns: { ...sharedColumns(bookingRow(store, bookingSeq)), takes_back: bookingSeq, on_date: on },
    entries: entryRows(store, bookingSeq).map((row) => ({
      ...entryOf(row),
      kind: 'taken-back',
      lengthChange: -numberOf(row, 'length_change'),
      heldChange: -numberOf(row, 'held_change'),
      valueChange: -numberOf(row, 'value_change'),
      reverses: numberOf(row, 'seq'),
    })),
  });
}

/** Books once more what was booked and taken back; the new booking names the first of its line. */
export function appendAgain(store: WritableStore, bookingSeq: number): BookingId {
  const row = bookingRow(store, bookingSeq);
  return append(store, {
    columns: { ...sharedColumns(row), books_again: lineOf(row), on_date: textOf(row, 'on_date') },
    entries: entryRows(store, bookingSeq).map(entryOf),
  });
}

/** Of a booking and those that book it again, the one that stands; null when all were taken back. */
export function standingBooking(store: ReadableStore, bookingSeq: number): number | null {
  const line = lineOf(bookingRow(store, bookingSeq));
  const sql = `SELECT seq FROM booking WHERE (seq = ? OR books_again = ?)
    AND NOT EXISTS (SELECT 1 FROM booking AS later WHERE later.takes_back = booking.seq) ORDER BY seq DESC LIMIT 1`;
  const row = oneRow(store, sql, line, line);
  return row === undefined ? null : numberOf(row, 'seq');
}

export function bookingRow(store: ReadableStore, bookingSeq: number): Row {
  const row = oneRow(store, 'SELECT * FROM booking WHERE seq = ?', bookingSeq);
  if (row === undefined) throw new Error(`No booking ${bookingSeq}`);
  return row;
}

export function entryRows(store: ReadableStore, bookingSeq: number): readonly Row[] {
  return allRows(store, 'SELECT * FROM ledger_entry WHERE booking_seq = ? ORDER BY seq', bookingSeq);
}

interface BookingToAppend {
  readonly columns: Readonly<Record<string, Value>>;
  readonly entries: readonly NewEntry[];
}

function append(store: WritableStore, { columns, entries }: BookingToAppend): BookingId {
  const { newId, now } = store.surroundings;
  const id = newId() as BookingId;
  const bookingSeq = insertRow(store, 'booking', { ...columns, id, recorded_at: now() });
  for (const entry of entries) {
    insertRow(store, 'ledger_entry', {
      id: newId(),
      booking_seq: bookingSeq,
      piece_seq: entry.pieceSeq,
      kind: entry.kind,
      // Taking back nothing is 0, never -0, which SQLite would store as a real number.
      length_change: entry.lengthChange + 0,
      held_change: entry.heldChange + 0,
      value_change: entry.valueChange + 0,
      reverses: entry.reverses ?? null,
    });
  }
  addBookingToChange(store, bookingSeq);
  keepFirstIn(store, Number(columns['fabric_seq']));
  return id;
}

function lineOf(row: Row): number {
  return numberOrNullOf(row, 'books_again') ?? numberOf(row, 'seq');
}

function sharedColumns(row: Row): Readonly<Record<string, Value>> {
  const names = ['fabric_seq', 'project_seq', 'stage_id', 'stage_name', 'note', 'is_knowing'] as const;
  return Object.fromEntries(names.map((name) => [name, row[name] as Value]));
}

function entryOf(row: Row): NewEntry {
  return {
    pieceSeq: numberOf(row, 'piece_seq'),
    kind: textOf(row, 'kind') as EntryKind,
    lengthChange: numberOf(row, 'length_change'),
    heldChange: numberOf(row, 'held_change'),
    valueChange: numberOf(row, 'value_change'),
  };
}
