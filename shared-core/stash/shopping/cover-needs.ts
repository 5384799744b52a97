import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import { isMetByItem, type NeedAmount } from '#core/domain/need';
import type { FabricNeed } from './fabric-need';
import { cutFrom, isNothing, type PatchTurning, sizeOfNeed } from './fill-rows';

/** A piece of fabric in the stash that may meet a need. Lengths in 1/320 mm. */
export interface PieceOnShelf {
  readonly id: FabricPieceId;
  readonly fabricId: FabricId;
  readonly width: number;
  readonly turning: PatchTurning;
  /** Counted in items: spools, or precuts of a size of their own, which no patch is cut from. */
  readonly isCounted: boolean;
  readonly there: number;
  readonly holds: readonly { readonly projectId: ProjectId; readonly held: number }[];
}

/** Area that a project has used of a piece of fabric, for a stage if one was named; (1/320 mm)². */
export interface FabricUsed {
  readonly projectId: ProjectId;
  readonly stageId: StageId | null;
  readonly fabricId: FabricId;
  readonly pieceId: FabricPieceId;
  readonly area: number;
}

export interface CoveredNeed {
  readonly need: FabricNeed;
  /** What is neither in the stash for it nor cut already for its stage. */
  readonly short: NeedAmount;
}

interface RemainingPiece {
  readonly piece: PieceOnShelf;
  /** The length left, the part that is free, and the part set aside for each project. All shrink as needs are met. */
  there: number;
  free: number;
  readonly held: Map<ProjectId, number>;
}

/**
 * Meets the needs, in order, from the fabrics chosen for them: from what is set aside for the project and what is free, never from
 * what is set aside for another project. Fabric that a stage has cut already counts by its area. Of several orders of the pieces
 * it keeps the one that leaves least to buy.
 */
export function coverNeeds(
  needs: readonly FabricNeed[],
  shelf: readonly PieceOnShelf[],
  used: readonly FabricUsed[],
): readonly CoveredNeed[] {
  const remaining = shelf.map(remainingPiece);
  return needs.map((need) => {
    if (need.fabricId === null) return { need, short: need.amount };
    const own = remaining.filter(({ piece }) => servesNeed(piece, need));
    const asked = afterUse(need, used);
    const best = bestCoverage(own, need, asked);
    for (const { from, length } of best.takes) take(from, need, length);
    return { need, short: best.short };
  });
}

/**
 * Takes the pieces with most set aside first, then tries the same with only the oldest few of them put in that order. What is bought for
 * the rest is the newest piece, so each of these orders is still tried with it at the end: buying what is short closes the gap.
 */
function bestCoverage(pieces: readonly RemainingPiece[], need: FabricNeed, asked: NeedAmount): Coverage {
  let best = takeFrom(heldFirst(pieces, need), need, asked);
  for (let oldest = pieces.length - 1; oldest >= 0 && !isNothing(best.short); oldest -= 1) {
    const order = [...heldFirst(pieces.slice(0, oldest), need), ...pieces.slice(oldest)];
    const other = takeFrom(order, need, asked);
    if (sizeOfNeed(other.short) < sizeOfNeed(best.short)) best = other;
  }
  return best;
}

function heldFirst(pieces: readonly RemainingPiece[], need: FabricNeed): readonly RemainingPiece[] {
  return pieces.toSorted((one, other) => heldFor(other, need) - heldFor(one, need));
}

function servesNeed(piece: PieceOnShelf, need: FabricNeed): boolean {
  return (
    piece.fabricId === need.fabricId &&
    !need.ignores.includes(piece.id) &&
    (isMetByItem(need.amount) || !piece.isCounted)
  );
}

function remainingPiece(piece: PieceOnShelf): RemainingPiece {
  const held = new Map(piece.holds.map((hold) => [hold.projectId, hold.held]));
  const setAside = piece.holds.reduce((sum, hold) => sum + hold.held, 0);
  return { piece, there: piece.there, free: Math.max(0, piece.there - setAside), held };
}

function heldFor({ held }: RemainingPiece, { projectId }: FabricNeed): number {
  return held.get(projectId) ?? 0;
}

interface Coverage {
  readonly short: NeedAmount;
  readonly takes: readonly { readonly from: RemainingPiece; readonly length: number }[];
}

function takeFrom(pieces: readonly RemainingPiece[], need: FabricNeed, asked: NeedAmount): Coverage {
  const takes: { from: RemainingPiece; length: number }[] = [];
  let short = asked;
  for (const from of pieces) {
    if (isNothing(short)) break;
    // More may be set aside than there is; a project can count only on what is there.
    const length = Math.min(heldFor(from, need) + from.free, from.there);
    const cut = cutFrom(short, { ...from.piece, length });
    takes.push({ from, length: cut.length });
    short = cut.left;
  }
  return { short, takes };
}

function take(from: RemainingPiece, need: FabricNeed, length: number): void {
  const held = heldFor(from, need);
  from.held.set(need.projectId, Math.max(0, held - length));
  from.free -= Math.max(0, length - held);
  from.there -= length;
}

function afterUse(need: FabricNeed, used: readonly FabricUsed[]): NeedAmount {
  const area = used
    .filter(
      (one) =>
        one.projectId === need.projectId &&
        one.fabricId === need.fabricId &&
        (need.stageId === null ? !need.ignores.includes(one.pieceId) : one.stageId === need.stageId),
    )
    .reduce((sum, one) => sum + one.area, 0);
  if (area <= 0) return need.amount;
  return cutFrom(need.amount, { width: need.fabricWidth, turning: 'any', length: area / need.fabricWidth })
    .left;
}
