import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { type CutStep, cutSteps } from '#core/cutting/tree/cut-steps';
import { failure, type Result, success } from '#core/result';
import { lengthFromUnits } from '#core/units/length';
import { recordChange } from '../history/changes';
import { findPlan, type PlanRef, type StepRef, stepsOf } from './cutting-rows';
import { sharesOf, type StepShare } from './cutting-shares';
import { insertRow, type ReadableStore, updateRow, write } from '../base/handles';
import { shortOfFabric } from '../fabric-use/ledger';
import { appendBooking, appendTakeBack, type NewEntry } from '../ledger/ledger-append';
import { cutEntries, firstMisfit } from '../fabric-use/cut';
import { whatIsInTheWay } from '../fabric-use/undo-booking';
import { findPiece, findProject, notFound, type PieceRef } from '../base/lookups';

type StepInput = Pick<ChannelInput<'cutting:untick'>, 'projectId' | 'pieceId' | 'place'>;

interface StepAtHand {
  readonly plan: PlanRef;
  /** What was ticked of this piece. */
  readonly ticked: readonly StepRef[];
  readonly step: CutStep;
  readonly projectName: string;
}

/** Books a step of the plan: the cut for every project whose patches it gives, and its leftovers, as one change. */
export function tickCut(
  store: ReadableStore,
  { knowingly, on, ...input }: ChannelInput<'cutting:tick'>,
): Result<Changed, Problem> {
  const found = stepAtHand(store, input);
  if (!found.ok) return found;
  const { plan, ticked, step, projectName } = found.value;
  if (nextPlace(ticked) !== input.place) return staleStep();
  const piece = findPiece(store, input.pieceId);
  if (!piece.ok) return piece;
  const shares = sharesOf(store, plan.plan, step, piece.value);
  if (!shares.ok) return shares;
  const own = shares.value.reduce((sum, { ownHold }) => sum + ownHold, 0);
  const free = piece.value.there - piece.value.held + own;
  if (step.length > piece.value.there || (step.length > free && !knowingly)) {
    return shortOfFabric(piece.value, own, step.length);
  }
  const leftovers = step.leftovers.map(({ width, length }) => ({
    width: lengthFromUnits(width),
    length: lengthFromUnits(length),
  }));
  const misfit = firstMisfit(piece.value, { length: lengthFromUnits(step.length), leftovers });
  if (misfit !== null) return misfit;
  // What its projects hold themselves they may cut; so may she what others hold, when she said so.
  const isKnowing = step.length > piece.value.there - piece.value.held;
  const words = `Cut “${piece.value.fabric.name}” by the plan of “${projectName}”`;
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
    const dead = ticked.find(({ place }) => place === input.place);
    if (dead !== undefined) updateRow(writable, 'cut_step', dead.id, columns);
    else {
      insertRow(writable, 'cut_step', {
        id: store.surroundings.newId(),
        plan_id: plan.id,
        piece_id: input.pieceId,
        place: input.place,
        ...columns,
      });
    }
    return success({});
  });
}

/** Takes the last step that was ticked of a piece back, with every booking of it that stands. */
export function untickCut(
  store: ReadableStore,
  { on, ...input }: ChannelInput<'cutting:untick'>,
): Result<Changed, Problem> {
  const found = stepAtHand(store, input);
  if (!found.ok) return found;
  const { ticked, projectName } = found.value;
  const last = ticked.findLast(({ isBooked }) => isBooked);
  if (last?.place !== input.place) return staleStep();
  for (const booking of last.standing) {
    const what = whatIsInTheWay(store, booking);
    if (what !== null) return failure<Problem>({ code: 'in-use', what });
  }
  return recordChange(store, `Took back a cut by the plan of “${projectName}”`, (writable) => {
    for (const booking of last.standing.toReversed()) appendTakeBack(writable, booking, on);
    write(writable, 'DELETE FROM cut_step WHERE id = ?', last.id);
    return success({});
  });
}

function stepAtHand(
  store: ReadableStore,
  { projectId, pieceId, place }: StepInput,
): Result<StepAtHand, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const plan = findPlan(store, projectId);
  const tree = plan?.plan.pieces.find((piece) => piece.pieceId === pieceId)?.tree;
  if (plan === undefined || tree === undefined) return notFound('cutting plan');
  const ticked = stepsOf(store, plan.id).filter((step) => step.pieceId === pieceId);
  const step = cutSteps(
    tree,
    ticked.map(({ parts }) => parts),
  )[place];
  if (step === undefined) return notFound('cut');
  return success({ plan, ticked, step, projectName: project.value.name });
}

/** The first step of a piece that has not been cut. */
function nextPlace(ticked: readonly StepRef[]): number {
  const done = new Set(ticked.filter(({ isBooked }) => isBooked).map(({ place }) => place));
  let next = 0;
  while (done.has(next)) next += 1;
  return next;
}

/** A project may hold more than its share of what is cut; what there is no fabric for any more it lets go. */
function withReleases(
  piece: PieceRef,
  shares: readonly StepShare[],
  entries: readonly (readonly NewEntry[])[],
): readonly (readonly NewEntry[])[] {
  const changes = entries.flat().filter(({ kind }) => kind === 'cut');
  const there = changes.reduce((sum, { lengthChange }) => sum + lengthChange, piece.there);
  const held = changes.reduce((sum, { heldChange }) => sum + heldChange, piece.held);
  let tooMuch = Math.max(0, held - there);
  return shares.map(({ length, ownHold }, index) => {
    const own = entries[index] ?? [];
    const released = Math.min(tooMuch, Math.max(0, ownHold - length));
    if (released === 0) return own;
    tooMuch -= released;
    const letGo = { lengthChange: 0, heldChange: -released, valueChange: 0 };
    return [...own, { pieceSeq: piece.seq, kind: 'released', ...letGo }];
  });
}

function staleStep(): ReturnType<typeof failure<Problem>> {
  return failure<Problem>({ code: 'changed-since', what: 'cutting plan' });
}
