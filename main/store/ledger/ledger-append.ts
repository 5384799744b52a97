import type { EntryKind } from '#core/domain/stash';
import type { BookingId } from '#core/domain/ids';
import type { CalendarDate } from '#core/units/calendar-date';
import { addBookingsToChange } from '../base/current-change';
import { keepFirstIn } from './cost-basis';
import {
  allRows,
  insertRows,
  nextSeq,
  oneRow,
  type ReadableStore,
  type Row,
  type WritableStore,
} from '../base/handles';
import { numberOf, numberOrNullOf, textOf, textOrNullOf } from '../base/rows';

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
  return appendOne(store, { columns: columnsOf(booking), entries });
}

/** Adds many bookings, in their order. */
export function appendBookings(
  store: WritableStore,
  bookings: readonly { readonly booking: NewBooking; readonly entries: readonly NewEntry[] }[],
): void {
  append(
    store,
    bookings.map(({ booking, entries }) => ({ columns: columnsOf(booking), entries })),
  );
}

function columnsOf(booking: NewBooking): BookingToAppend['columns'] {
  return {
    fabric_seq: booking.fabricSeq,
    project_seq: booking.projectSeq,
    stage_id: booking.stage?.id ?? null,
    stage_name: booking.stage?.name ?? null,
    note: booking.note,
    is_knowing: booking.isKnowing === true ? 1 : 0,
    on_date: booking.on,
  };
}

/** Books the opposite of every entry of a booking, which must stand. */
export function appendTakeBack(store: WritableStore, bookingSeq: number, on: CalendarDate): BookingId {
  return appendOne(store, {
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
  return appendOne(store, {
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
  readonly columns: Readonly<Partial<Record<(typeof BOOKING_COLUMNS)[number], string | number | null>>>;
  readonly entries: readonly NewEntry[];
}

const BOOKING_COLUMNS = [
  ...([
    'seq',
    'id',
    'fabric_seq',
    'project_seq',
    'stage_id',
    'stage_name',
    'takes_back',
    'books_again',
  ] as const),
  ...(['note', 'is_knowing', 'on_date', 'recorded_at'] as const),
];

const ENTRY_COLUMNS = [
  ...(['id', 'booking_seq', 'piece_seq', 'kind', 'length_change', 'held_change'] as const),
  ...(['value_change', 'reverses'] as const),
];

function appendOne(store: WritableStore, booking: BookingToAppend): BookingId {
  const [id] = append(store, [booking]);
  if (id === undefined) throw new Error('A booking was not made');
  return id;
}

function append(store: WritableStore, bookings: readonly BookingToAppend[]): readonly BookingId[] {
  const { newId, now } = store.surroundings;
  const first = nextSeq(store, 'booking');
  const heads = bookings.map(({ columns }, index) => ({
    ...columns,
    seq: first + index,
    id: newId() as BookingId,
    recorded_at: now(),
  }));
  insertRows(
    store,
    'booking',
    BOOKING_COLUMNS,
    heads.map((head) => BOOKING_COLUMNS.map((name) => head[name] ?? null)),
  );
  const entries = bookings.flatMap((booking, index) =>
    booking.entries.map((entry) => [newId(), first + index, ...valuesOf(entry)]),
  );
  insertRows(store, 'ledger_entry', ENTRY_COLUMNS, entries);
  addBookingsToChange(
    store,
    heads.map(({ seq }) => seq),
  );
  keepFirstIn(store, [...new Set(heads.map(({ fabric_seq }) => Number(fabric_seq)))]);
  return heads.map(({ id }) => id);
}

function valuesOf(entry: NewEntry): readonly (string | number | null)[] {
  // Taking back nothing is 0, never -0, which SQLite would store as a real number.
  const changes = [entry.lengthChange + 0, entry.heldChange + 0, entry.valueChange + 0];
  return [entry.pieceSeq, entry.kind, ...changes, entry.reverses ?? null];
}

function lineOf(row: Row): number {
  return numberOrNullOf(row, 'books_again') ?? numberOf(row, 'seq');
}

function sharedColumns(row: Row): BookingToAppend['columns'] {
  return {
    fabric_seq: numberOf(row, 'fabric_seq'),
    project_seq: numberOrNullOf(row, 'project_seq'),
    stage_id: textOrNullOf(row, 'stage_id'),
    stage_name: textOrNullOf(row, 'stage_name'),
    note: textOf(row, 'note'),
    is_knowing: numberOf(row, 'is_knowing'),
  };
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
