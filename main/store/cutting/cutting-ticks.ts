import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { type CutStep, cutSteps } from '#core/cutting/tree/cut-steps';
import { failure, type Result, success } from '#core/result';
import { freeOf } from '#core/domain/stash';
import { lengthFromUnits } from '#core/units/length';
import { recordChange } from '../history/changes';
import { findPlan, type PlanRef, type StepRef, stepsOf } from './cutting-rows';
import { sharesOf, type StepShare } from './cutting-shares';
import {
  insertRow,
  type ReadableStore,
  updateRow,
  type Value,
  type WritableStore,
  write,
} from '../base/handles';
import { shortOfFabric } from '../fabric-use/ledger';
import { appendBooking, appendUndo, type NewEntry } from '../ledger/ledger-append';
import { cutEntries, leftoverMisfit } from '../fabric-use/cut';
import { undoRefusal } from '../fabric-use/undo-booking';
import { findPiece, findProject, notFound, type PieceRef } from '../base/lookups';

type StepInput = Pick<ChannelInput<'cutting:untick'>, 'projectId' | 'pieceId' | 'place'>;

interface FoundStep {
  readonly plan: PlanRef;
  /** The steps of this piece that were checked off. */
  readonly ticked: readonly StepRef[];
  readonly step: CutStep;
  readonly projectName: string;
}

/** Books a step of the plan: its leftovers and the cut for every project whose patches it gives, as one change. */
export function tickCut(
  store: ReadableStore,
  { knowingly, on, ...input }: ChannelInput<'cutting:tick'>,
): Result<Changed, Problem> {
  const found = findStep(store, input);
  if (!found.ok) return found;
  const { plan, ticked, step, projectName } = found.value;
  if (nextPlace(ticked) !== input.place) return staleStep();
  const piece = findPiece(store, input.pieceId);
  if (!piece.ok) return piece;
  const shares = sharesOf(store, plan.plan, step, piece.value);
  if (!shares.ok) return shares;
  const ownHold = shares.value.reduce((sum, share) => sum + share.ownHold, 0);
  const isOver = step.length > freeOf(piece.value, ownHold);
  if (step.length > piece.value.there || (isOver && !knowingly)) {
    return shortOfFabric(piece.value, ownHold, step.length);
  }
  const leftovers = step.leftovers.map(({ width, length }) => ({
    width: lengthFromUnits(width),
    length: lengthFromUnits(length),
  }));
  const misfit = leftoverMisfit(piece.value, { length: lengthFromUnits(step.length), leftovers });
  if (misfit !== null) return failure(misfit);
  // Projects may cut what is set aside for them; what is set aside for others only if the maker knows.
  const isKnowing = step.length > freeOf(piece.value);
  const words = `Cut “${piece.value.fabric.name}” by the cutting plan of “${projectName}”`;
  return recordChange(store, words, (writable) => {
    const entries = withReleases(
      piece.value,
      shares.value,
      cutEntries(writable, piece.value, leftovers, shares.value),
    );
    const bookings = shares.value.map(({ projectSeq, stage }, index) =>
      appendBooking(
        writable,
        { fabricSeq: piece.value.fabric.seq, projectSeq, stage, note: '', on, isKnowing },
        entries[index] ?? [],
      ),
    );
    const columns = { parts: step.parts.length, on_date: on, bookings_json: JSON.stringify(bookings) };
    saveStep(writable, found.value, input, columns);
    return success({});
  });
}

/** A step that was undone has a row already. */
function saveStep(
  store: WritableStore,
  { plan, ticked }: FoundStep,
  { pieceId, place }: StepInput,
  columns: Readonly<Record<string, Value>>,
): void {
  const undone = ticked.find((step) => step.place === place);
  if (undone !== undefined) updateRow(store, 'cut_step', undone.id, columns);
  else {
    const id = store.clockAndIds.newId();
    insertRow(store, 'cut_step', { id, plan_id: plan.id, piece_id: pieceId, place, ...columns });
  }
}

/** Undoes the last step of a piece that was checked off, with every booking of it that is still active. */
export function untickCut(
  store: ReadableStore,
  { on, ...input }: ChannelInput<'cutting:untick'>,
): Result<Changed, Problem> {
  const found = findStep(store, input);
  if (!found.ok) return found;
  const { ticked, projectName } = found.value;
  const last = ticked.findLast(({ isBooked }) => isBooked);
  if (last?.place !== input.place) return staleStep();
  for (const booking of last.activeBookings) {
    const refusal = undoRefusal(store, booking);
    if (refusal !== null) return failure<Problem>(refusal);
  }
  return recordChange(store, `Undid a cut by the cutting plan of “${projectName}”`, (writable) => {
    for (const booking of last.activeBookings.toReversed()) appendUndo(writable, booking, on);
    write(writable, 'DELETE FROM cut_step WHERE id = ?', last.id);
    return success({});
  });
}

function findStep(
  store: ReadableStore,
  { projectId, pieceId, place }: StepInput,
): Result<FoundStep, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const plan = findPlan(store, projectId);
  const tree = plan?.plan.pieces.find((piece) => piece.pieceId === pieceId)?.tree;
  if (plan === undefined || tree === undefined) return notFound('cutting-plan');
  const ticked = stepsOf(store, plan.id).filter((step) => step.pieceId === pieceId);
  const step = cutSteps(
    tree,
    ticked.map(({ parts }) => parts),
  )[place];
  if (step === undefined) return notFound('cut');
  return success({ plan, ticked, step, projectName: project.value.name });
}

/** The first step of a piece that is not cut yet. */
function nextPlace(ticked: readonly StepRef[]): number {
  const done = new Set(ticked.filter(({ isBooked }) => isBooked).map(({ place }) => place));
  let next = 0;
  while (done.has(next)) next += 1;
  return next;
}

/**
 * A project may have more set aside than its share of the cut. Releases what is then set aside beyond the fabric that is left.
 */
function withReleases(
  piece: PieceRef,
  shares: readonly StepShare[],
  entries: readonly (readonly NewEntry[])[],
): readonly (readonly NewEntry[])[] {
  const cuts = entries.flat().filter(({ kind }) => kind === 'cut');
  const there = cuts.reduce((sum, { lengthChange }) => sum + lengthChange, piece.there);
  const held = cuts.reduce((sum, { heldChange }) => sum + heldChange, piece.held);
  let tooMuch = Math.max(0, held - there);
  return shares.map(({ length, ownHold }, index) => {
    const own = entries[index] ?? [];
    const released = Math.min(tooMuch, Math.max(0, ownHold - length));
    if (released === 0) return own;
    tooMuch -= released;
    const changes = { lengthChange: 0, heldChange: -released, valueChange: 0 };
    return [...own, { pieceSeq: piece.seq, kind: 'released', ...changes }];
  });
}

/** The page shows an older state of the plan. */
function staleStep(): ReturnType<typeof failure<Problem>> {
  return failure<Problem>({ code: 'plan-changed' });
}
