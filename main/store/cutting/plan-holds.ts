import { cutSteps } from '#core/cutting/tree/cut-steps';
import type { KeptPlan } from '#core/domain/cutting-plan';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';
import { freeOf } from '#core/domain/stash';
import { oneRow, type ReadableStore, type WritableStore } from '../base/handles';
import { findPiece, findProject, heldBy, type PieceRef } from '../base/lookups';
import { numberOf } from '../base/rows';
import { appendBooking, setAsideEntry } from '../ledger/ledger-append';
import type { PlanHold, PlanRef, StepRef } from './cutting-rows';
import { sharesOf } from './cutting-shares';

/** For the ledger’s line of what a plan sets aside or releases. */
const NOTE = 'By the cutting plan';

/**
 * Sets aside what the plan has still to cut of each piece, for each of its projects. What is set aside for the project already counts, and
 * no more is taken than is free: a plan for fabric that is gone is told so on its page.
 */
export function setPlanAside(
  store: WritableStore,
  plan: KeptPlan,
  steps: readonly StepRef[],
): readonly PlanHold[] {
  return plan.pieces.flatMap(({ pieceId, tree }) => {
    const found = pieceId === null ? null : findPiece(store, pieceId);
    if (pieceId === null || found?.ok !== true) return [];
    const done = steps.filter((step) => step.pieceId === pieceId && step.isBooked);
    const parts = done.map((step) => step.parts);
    const wanted = new Map<ProjectId, number>();
    for (const step of cutSteps(tree, parts).slice(done.length)) {
      const shares = sharesOf(store, plan, step, found.value);
      for (const share of shares.ok ? shares.value : [])
        wanted.set(share.projectId, (wanted.get(share.projectId) ?? 0) + share.length);
    }
    return [...wanted].flatMap(([projectId, length]) => {
      const held = setAsideForPlan(store, pieceId, projectId, length);
      const cut = cutByPlan(store, found.value, projectId, done);
      return held + cut === 0 ? [] : [{ pieceId, projectId, length: held + cut }];
    });
  });
}

/** Releases what the plan set aside and has not cut. What the maker set aside herself stays. */
export function releasePlan(store: WritableStore, { holds }: PlanRef, steps: readonly StepRef[]): void {
  for (const { pieceId, projectId, length } of holds) {
    const [piece, project] = [findPiece(store, pieceId), findProject(store, projectId)];
    if (!piece.ok || !project.ok) continue;
    const own = steps.filter((step) => step.pieceId === pieceId && step.isBooked);
    const left = length - cutByPlan(store, piece.value, projectId, own);
    const released = Math.min(left, heldBy(store, piece.value.seq, project.value.seq));
    if (released <= 0) continue;
    appendBooking(store, bookingOf(store, piece.value, project.value.seq), [
      {
        pieceSeq: piece.value.seq,
        kind: 'released',
        lengthChange: 0,
        heldChange: -released,
        valueChange: 0,
      },
    ]);
  }
}

/** Returns the length that was set aside. */
function setAsideForPlan(
  store: WritableStore,
  pieceId: FabricPieceId,
  projectId: ProjectId,
  wanted: number,
): number {
  const [piece, project] = [findPiece(store, pieceId), findProject(store, projectId)];
  if (!piece.ok || !project.ok) return 0;
  const more = wanted - heldBy(store, piece.value.seq, project.value.seq);
  const length = Math.min(more, freeOf(piece.value));
  if (length <= 0) return 0;
  const entry = setAsideEntry(piece.value.seq, length);
  appendBooking(store, bookingOf(store, piece.value, project.value.seq), [entry]);
  return length;
}

function bookingOf(store: ReadableStore, { fabric }: PieceRef, projectSeq: number) {
  const on = store.clockAndIds.today();
  return { fabricSeq: fabric.seq, projectSeq, stage: null, note: NOTE, on };
}

/** What the booked steps took out of the project's hold on the piece. */
function cutByPlan(
  store: ReadableStore,
  { seq }: PieceRef,
  projectId: ProjectId,
  steps: readonly StepRef[],
): number {
  const bookings = JSON.stringify(steps.flatMap(({ activeBookings }) => activeBookings));
  const sql = `SELECT coalesce(-sum(held_change), 0) AS length
    FROM ledger_entry JOIN booking ON booking.seq = booking_seq JOIN project ON project.seq = project_seq
    WHERE booking_seq IN (SELECT value FROM json_each(?)) AND piece_seq = ? AND project.id = ?`;
  const row = oneRow(store, sql, bookings, seq, projectId);
  return row === undefined ? 0 : numberOf(row, 'length');
}
