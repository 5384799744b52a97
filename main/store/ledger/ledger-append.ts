import { type EntryKind, entryKindSchema } from '#core/domain/stash';
import type { BookingId } from '#core/domain/ids';
import type { CalendarDate } from '#core/units/calendar-date';
import type { PartialDate } from '#core/units/partial-date';
import { addBookingsToChange } from '../base/current-change';
import { storeFifoCost } from './cost-basis';
import {
  allRows,
  insertRows,
  nextSeq,
  oneRow,
  type ReadableStore,
  type Row,
  type WritableStore,
} from '../base/handles';
import { choiceOf, numberOf, numberOrNullOf, textOf, textOrNullOf } from '../base/rows';
import { BOOKING_IS_ACTIVE } from './ledger-sql';

/** An entry to be booked; its changes are those of the domain's LedgerEntry. */
export interface NewEntry {
  readonly pieceSeq: number;
  readonly kind: EntryKind;
  readonly lengthChange: number;
  readonly heldChange: number;
  readonly valueChange: number | null;
  readonly reverses?: number;
}

/** Sets a length of a piece aside; the booking names the project. */
export function setAsideEntry(pieceSeq: number, length: number): NewEntry {
  return { pieceSeq, kind: 'set-aside', lengthChange: 0, heldChange: length, valueChange: 0 };
}

interface NewBooking {
  readonly fabricSeq: number;
  readonly projectSeq: number | null;
  readonly stage: { readonly id: string; readonly name: string } | null;
  readonly note: string;
  /** Null if it is not known. Only a purchase may be without a whole date. */
  readonly on: PartialDate | null;
  /** The maker knows that more is set aside than there is. Without this the file refuses it. */
  readonly isKnowing?: boolean;
}

/** Adds a booking with its entries to the ledger and to the current change. */
export function appendBooking(
  store: WritableStore,
  booking: NewBooking,
  entries: readonly NewEntry[],
): BookingId {
  return appendOne(store, { columns: columnsOf(booking), entries });
}

/** Adds bookings in their order. */
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

/** Undoes an active booking: books the opposite of each of its entries. */
export function appendUndo(store: WritableStore, bookingSeq: number, on: CalendarDate): BookingId {
  return appendOne(store, {
    columns: { ...sharedColumns(bookingRow(store, bookingSeq)), takes_back: bookingSeq, on_date: on },
    entries: entryRows(store, bookingSeq).map((row) => ({
      ...entryOf(row),
      kind: 'taken-back',
      lengthChange: -numberOf(row, 'length_change'),
      heldChange: -numberOf(row, 'held_change'),
      valueChange: oppositeOf(numberOrNullOf(row, 'value_change')),
      reverses: numberOf(row, 'seq'),
    })),
  });
}

/** The opposite change of value; null if none is known. */
function oppositeOf(change: number | null): number | null {
  return change === null ? null : -change;
}

/** Repeats an undone booking and links it to the first one. */
export function appendRedo(store: WritableStore, bookingSeq: number): BookingId {
  const row = bookingRow(store, bookingSeq);
  return appendOne(store, {
    columns: {
      ...sharedColumns(row),
      books_again: firstOfRepeats(row),
      on_date: textOrNullOf(row, 'on_date'),
    },
    entries: entryRows(store, bookingSeq).map(entryOf),
  });
}

/** Of a booking and those that repeat it, the active one; null if all are undone. */
export function activeBooking(store: ReadableStore, bookingSeq: number): number | null {
  const first = firstOfRepeats(bookingRow(store, bookingSeq));
  const sql = `SELECT seq FROM booking WHERE (seq = ? OR books_again = ?)
    AND ${BOOKING_IS_ACTIVE} ORDER BY seq DESC LIMIT 1`;
  const row = oneRow(store, sql, first, first);
  return row === undefined ? null : numberOf(row, 'seq');
}

export function bookingRow(store: ReadableStore, bookingSeq: number): Row {
  const row = oneRow(store, 'SELECT * FROM booking WHERE seq = ?', bookingSeq);
  if (row === undefined) throw new Error(`No booking ${bookingSeq}`);
  return row;
}

function entryRows(store: ReadableStore, bookingSeq: number): readonly Row[] {
  return allRows(store, 'SELECT * FROM ledger_entry WHERE booking_seq = ? ORDER BY seq', bookingSeq);
}

interface BookingToAppend {
  readonly columns: Readonly<Partial<Record<(typeof BOOKING_COLUMNS)[number], string | number | null>>>;
  readonly entries: readonly NewEntry[];
}

const BOOKING_COLUMNS = [
  'seq',
  'id',
  'fabric_seq',
  'project_seq',
  'stage_id',
  'stage_name',
  'takes_back',
  'books_again',
  'note',
  'is_knowing',
  'on_date',
  'recorded_at',
] as const;

const ENTRY_COLUMNS = [
  'id',
  'booking_seq',
  'piece_seq',
  'kind',
  'length_change',
  'held_change',
  'value_change',
  'reverses',
] as const;

function appendOne(store: WritableStore, booking: BookingToAppend): BookingId {
  const [id] = append(store, [booking]);
  if (id === undefined) throw new Error('A booking was not made');
  return id;
}

function append(store: WritableStore, bookings: readonly BookingToAppend[]): readonly BookingId[] {
  const { newId, now } = store.clockAndIds;
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
  storeFifoCost(store, [...new Set(heads.map(({ fabric_seq }) => Number(fabric_seq)))]);
  return heads.map(({ id }) => id);
}

function valuesOf(entry: NewEntry): readonly (string | number | null)[] {
  // Adding 0 turns -0 into 0: SQLite would store -0 as a real number.
  const value = entry.valueChange === null ? null : entry.valueChange + 0;
  const changes = [entry.lengthChange + 0, entry.heldChange + 0, value];
  return [entry.pieceSeq, entry.kind, ...changes, entry.reverses ?? null];
}

function firstOfRepeats(row: Row): number {
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
    kind: choiceOf(row, 'kind', entryKindSchema.options),
    lengthChange: numberOf(row, 'length_change'),
    heldChange: numberOf(row, 'held_change'),
    valueChange: numberOrNullOf(row, 'value_change'),
  };
}
