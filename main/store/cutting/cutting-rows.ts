import { z } from 'zod';
import { type KeptPlan, keptPlanSchema, type TickedStep } from '#core/domain/cutting-plan';
import {
  type BookingId,
  bookingIdSchema,
  type FabricPieceId,
  fabricPieceIdSchema,
  projectIdSchema,
} from '#core/domain/ids';
import { allRows, oneRow, type ReadableStore, type Row } from '../base/handles';
import { activeBooking } from '../ledger/ledger-append';
import { dateOf, idOf, jsonOf, numberOf, readBy, textOf } from '../base/rows';

/** What a plan set aside of a piece for one project, cuts already booked by it included; 1/320 mm. */
const planHoldSchema = z
  .object({ pieceId: fabricPieceIdSchema, projectId: projectIdSchema, length: z.int().min(0) })
  .readonly();
export type PlanHold = z.infer<typeof planHoldSchema>;
const planHoldsSchema = z.array(planHoldSchema).readonly();

export interface PlanRef {
  readonly id: string;
  readonly plan: KeptPlan;
  readonly savedAt: number;
  /** What it set aside. */
  readonly holds: readonly PlanHold[];
}

/** The plan saved with a project, if it has one. */
export function findPlan(store: ReadableStore, projectId: string): PlanRef | undefined {
  const row = oneRow(store, 'SELECT * FROM cutting_plan WHERE project_id = ?', projectId);
  return row && planOf(row);
}

/** The plans of all projects that are not archived, by due day. */
export function plansOfOpenProjects(store: ReadableStore): readonly PlanRef[] {
  const sql = `SELECT cutting_plan.* FROM cutting_plan JOIN project ON project.id = project_id
    WHERE is_archived = 0 AND deleted_at IS NULL ORDER BY due_on IS NULL, due_on, project.seq`;
  return allRows(store, sql).map(planOf);
}

function planOf(row: Row): PlanRef {
  const id = textOf(row, 'id');
  return {
    id,
    plan: readBy(keptPlanSchema, jsonOf(row, 'plan_json'), `cutting_plan ${id}`),
    savedAt: numberOf(row, 'kept_at'),
    holds: readBy(planHoldsSchema, jsonOf(row, 'holds_json'), `cutting_plan ${id}`),
  };
}

export interface StepRef extends TickedStep {
  readonly id: string;
  /** The `seq` of each of its bookings that is not undone, in the order they were made. */
  readonly activeBookings: readonly number[];
}

/** The steps of a plan that were checked off, by piece, then in the order of cutting. */
export function stepsOf(store: ReadableStore, planId: string): readonly StepRef[] {
  const sql = 'SELECT * FROM cut_step WHERE plan_id = ? ORDER BY piece_id, place';
  return allRows(store, sql, planId).map((row) => stepOf(store, row));
}

function stepOf(store: ReadableStore, row: Row): StepRef {
  const activeBookings = activeOf(
    store,
    readBy(bookingIdsSchema, jsonOf(row, 'bookings_json'), 'bookings_json'),
  );
  return {
    id: textOf(row, 'id'),
    pieceId: idOf<FabricPieceId>(row, 'piece_id'),
    place: numberOf(row, 'place'),
    parts: numberOf(row, 'parts'),
    on: dateOf(row, 'on_date'),
    isBooked: activeBookings.length > 0,
    activeBookings,
    leftovers: activeBookings.flatMap((seq) => leftoversOf(store, seq)),
  };
}

const bookingIdsSchema = z.array(bookingIdSchema).readonly();

function activeOf(store: ReadableStore, ids: readonly BookingId[]): readonly number[] {
  return ids.flatMap((id) => {
    const row = oneRow(store, 'SELECT seq FROM booking WHERE id = ?', id);
    return row === undefined ? [] : (activeBooking(store, numberOf(row, 'seq')) ?? []);
  });
}

function leftoversOf(store: ReadableStore, bookingSeq: number): readonly FabricPieceId[] {
  const sql = `SELECT fabric_piece.id FROM ledger_entry JOIN fabric_piece ON fabric_piece.seq = piece_seq
    WHERE booking_seq = ? AND ledger_entry.kind = 'leftover' ORDER BY ledger_entry.seq`;
  return allRows(store, sql, bookingSeq).map((row) => idOf<FabricPieceId>(row, 'id'));
}
