import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import type { NeedAmount } from '#core/domain/need';
import type { FabricNeed } from './fabric-need';
import { cutFrom, isNothing, type PatchesLie, sizeOfNeed } from './fill-rows';

/** A piece of the stash that a need may be met from. Lengths in 1/320 mm. */
export interface PieceOnShelf {
  readonly id: FabricPieceId;
  readonly fabricId: FabricId;
  readonly width: number;
  readonly lies: PatchesLie;
  /** Told by number: spools, or packs cut to a size of their own, which no patch is cut from. */
  readonly isCounted: boolean;
  readonly there: number;
  readonly holds: readonly { readonly projectId: ProjectId; readonly held: number }[];
}

/** Area of a fabric that a project has used up of a piece, for a stage where one was named; (1/320 mm)². */
export interface FabricUsed {
  readonly projectId: ProjectId;
  readonly stageId: StageId | null;
  readonly fabricId: FabricId;
  readonly pieceId: FabricPieceId;
  readonly area: number;
}

export interface CoveredNeed {
  readonly need: FabricNeed;
  /** What neither the stash holds for it nor its stage has cut already. */
  readonly short: NeedAmount;
}

interface Open {
  readonly piece: PieceOnShelf;
  /** What there is, what of it nobody has spoken for, and what each project has; all go down as needs are met. */
  there: number;
  free: number;
  readonly held: Map<ProjectId, number>;
}

/**
 * Meets the needs in their order from the pieces of the fabrics chosen for them: what its project holds and what is free, never
 * what another project holds. What a stage has cut already counts by its area. Of two orders of the pieces (those set aside
 * first, or as they came) the one is taken that leaves less, so that fabric bought for what was short closes the gap.
 */
export function coverNeeds(
  needs: readonly FabricNeed[],
  shelf: readonly PieceOnShelf[],
  used: readonly FabricUsed[],
): readonly CoveredNeed[] {
  const open = shelf.map(openPiece);
  return needs.map((need) => {
    if (need.fabricId === null) return { need, short: need.amount };
    const own = open.filter(({ piece }) => servesNeed(piece, need));
    const asked = afterUse(need, used);
    const heldFirst = takeFrom(
      own.toSorted((one, other) => heldFor(other, need) - heldFor(one, need)),
      need,
      asked,
    );
    const asTheyCame = isNothing(heldFirst.short) ? heldFirst : takeFrom(own, need, asked);
    const better = sizeOfNeed(asTheyCame.short) < sizeOfNeed(heldFirst.short) ? asTheyCame : heldFirst;
    for (const { from, length } of better.takes) take(from, need, length);
    return { need, short: better.short };
  });
}

function servesNeed(piece: PieceOnShelf, need: FabricNeed): boolean {
  return (
    piece.fabricId === need.fabricId &&
    !need.ignores.includes(piece.id) &&
    (need.amount.measure === 'thread' || !piece.isCounted)
  );
}

function openPiece(piece: PieceOnShelf): Open {
  const held = new Map(piece.holds.map((hold) => [hold.projectId, hold.held]));
  const spoken = piece.holds.reduce((sum, hold) => sum + hold.held, 0);
  return { piece, there: piece.there, free: Math.max(0, piece.there - spoken), held };
}

function heldFor({ held }: Open, { projectId }: FabricNeed): number {
  return held.get(projectId) ?? 0;
}

interface Taken {
  readonly short: NeedAmount;
  readonly takes: readonly { readonly from: Open; readonly length: number }[];
}

function takeFrom(pieces: readonly Open[], need: FabricNeed, asked: NeedAmount): Taken {
  const takes: { from: Open; length: number }[] = [];
  let short = asked;
  for (const from of pieces) {
    if (isNothing(short)) break;
    // Where more is spoken for than there is, no project can count on more than there is.
    const length = Math.min(heldFor(from, need) + from.free, from.there);
    const cut = cutFrom(short, { ...from.piece, length });
    takes.push({ from, length: cut.length });
    short = cut.left;
  }
  return { short, takes };
}

function take(from: Open, need: FabricNeed, length: number): void {
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
  return cutFrom(need.amount, { width: need.fabricWidth, lies: 'any', length: area / need.fabricWidth }).left;
}
