import type { Booking } from '#core/contract/stash';
import type { BookingId, FabricPieceId, FabricId, LedgerEntryId, ProjectId, StageId } from '#core/domain/ids';
import { pieceKindSchema, entryKindSchema } from '#core/domain/stash';
import { addCosts, costOfArea, type KnownCost, NO_COST } from '#core/units/known-cost';
import { allRows, type ReadableStore, type Row } from '../base/handles';
import { BOOKING_IS_ACTIVE } from './ledger-sql';
import {
  choiceOf,
  flagOf,
  groupRows,
  idOf,
  idOrNullOf,
  numberOf,
  numberOrNullOf,
  partialDateOrNullOf,
  textOf,
  textOrNullOf,
} from '../base/rows';

/** The bookings of one fabric, newest first. */
export function bookingsOfFabric(store: ReadableStore, fabricSeq: number): readonly Booking[] {
  return readBookings(store, 'booking.fabric_seq = ?', fabricSeq);
}

/** The bookings made for one project, newest first. */
export function bookingsOfProject(store: ReadableStore, projectSeq: number): readonly Booking[] {
  return readBookings(store, 'booking.project_seq = ?', projectSeq);
}

type EntryWithPiece = Booking['entries'][number];

/** `condition` comes from code, never from input. */
function readBookings(store: ReadableStore, condition: string, value: number): readonly Booking[] {
  const heads = allRows(
    store,
    `SELECT booking.seq, booking.id, fabric.id AS fabric_id, fabric.name AS fabric_name, fabric.swatch,
      project.id AS project_id, project.name AS project_name,
      booking.stage_id, coalesce(stage.name, booking.stage_name) AS stage_name,
      booking.note, booking.on_date, booking.recorded_at,
      ${BOOKING_IS_ACTIVE} AS is_active
    FROM booking JOIN fabric ON fabric.seq = booking.fabric_seq
    LEFT JOIN project ON project.seq = booking.project_seq LEFT JOIN stage ON stage.id = booking.stage_id
    WHERE ${condition} ORDER BY booking.seq DESC`,
    value,
  );
  const entries = allRows(
    store,
    `SELECT entry.id, entry.booking_seq, entry.kind, entry.length_change, entry.held_change, entry.value_change,
      fabric_piece.id AS piece_id, fabric_piece.width AS piece_width, fabric_piece.kind AS piece_kind, fabric_piece.unit_length,
      was.id AS reverses_id, was.kind AS reverses_kind
    FROM booking JOIN ledger_entry AS entry ON entry.booking_seq = booking.seq
    JOIN fabric_piece ON fabric_piece.seq = entry.piece_seq
    LEFT JOIN ledger_entry AS was ON was.seq = entry.reverses
    WHERE ${condition} ORDER BY entry.seq`,
    value,
  );
  const byBooking = groupRows(entries, 'booking_seq');
  return heads.map((head) => toBooking(head, byBooking.get(numberOf(head, 'seq')) ?? []));
}

function toBooking(head: Row, rows: readonly Row[]): Booking {
  const used = rows.filter((row) => isUse(row));
  return {
    id: idOf<BookingId>(head, 'id'),
    fabricId: idOf<FabricId>(head, 'fabric_id'),
    fabricName: textOf(head, 'fabric_name'),
    swatch: textOf(head, 'swatch'),
    projectId: idOrNullOf<ProjectId>(head, 'project_id'),
    projectName: textOrNullOf(head, 'project_name'),
    stageId: idOrNullOf<StageId>(head, 'stage_id'),
    stageName: textOrNullOf(head, 'stage_name'),
    note: textOf(head, 'note'),
    on: partialDateOrNullOf(head, 'on_date'),
    recordedAt: numberOf(head, 'recorded_at'),
    entries: rows.map(toEntry),
    usedArea: used.reduce((total, row) => total - areaChange(row), 0),
    cost: addCosts(rows.map(costOfEntry)),
    isUndone: !flagOf(head, 'is_active'),
  };
}

function areaChange(row: Row): number {
  return numberOf(row, 'length_change') * numberOf(row, 'piece_width');
}

/** The price paid, or else the value that left with the fabric. Measuring again costs nothing that could be unknown. */
function costOfEntry(row: Row): KnownCost {
  const sign = originalKind(row) === 'bought' ? 1 : -1;
  const value = numberOrNullOf(row, 'value_change');
  if (value === null && originalKind(row) === 'counted') return NO_COST;
  // Adding 0 turns -0 into 0.
  return costOfArea(value === null ? null : sign * value + 0, sign * areaChange(row) + 0);
}

/** What was booked; for an entry that reverses another, the kind of that one. */
function originalKind(row: Row): string {
  return textOrNullOf(row, 'reverses_kind') ?? textOf(row, 'kind');
}

function isUse(row: Row): boolean {
  return ['cut', 'leftover', 'discarded'].includes(originalKind(row));
}

function toEntry(row: Row): EntryWithPiece {
  return {
    id: idOf<LedgerEntryId>(row, 'id'),
    pieceId: idOf<FabricPieceId>(row, 'piece_id'),
    kind: choiceOf(row, 'kind', entryKindSchema.options),
    lengthChange: numberOf(row, 'length_change'),
    heldChange: numberOf(row, 'held_change'),
    costChange: numberOrNullOf(row, 'value_change'),
    reverses: idOrNullOf<LedgerEntryId>(row, 'reverses_id'),
    pieceWidth: numberOf(row, 'piece_width'),
    pieceKind: choiceOf(row, 'piece_kind', pieceKindSchema.options),
    unitLength: numberOrNullOf(row, 'unit_length'),
  };
}
