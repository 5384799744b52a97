import type { CuttingJob, ClothMargins, JobFabric, JobPiece } from '#core/cutting/cutting-job';
import { type CuttingSetup, type CuttingTableHabits, fabricKeyOf } from '#core/domain/cutting-setup';
import type { ClothPieceId, FabricId } from '#core/domain/ids';
import type { ClothKind, ClothPiece, ClothPrice, Fabric } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import type { Length } from '#core/units/length';
import { type LockedCuts, type Locks, NO_LOCKS } from './locked-cuts';

/** A fabric of the stash with the pieces there are of it. */
export interface ClothOnShelf {
  readonly fabric: Fabric;
  readonly pieces: readonly ClothPiece[];
  /** What a shop asks for it; null where that is not known. */
  readonly price: ClothPrice | null;
}

export interface Shelf {
  readonly cloth: ReadonlyMap<FabricId, ClothOnShelf>;
  /** What the projects of the plan hold themselves, by piece, 1/320 mm: it is free to them. */
  readonly ownHolds: ReadonlyMap<ClothPieceId, number>;
  /** Width of cloth that is not in the stash yet. */
  readonly usualWidth: Length;
  /** Shops sell by steps of this. */
  readonly lengthStep: Length;
}

/** Made up already, or no cloth to cut patches from. */
const NEVER_CUT: readonly ClothKind[] = ['bias-made-up', 'batting', 'batting-package'];
/** Ends of these are straight: they were cut with a ruler. */
const STRAIGHT: readonly ClothKind[] = ['precut-strips', 'precut-squares', 'leftover'];
/** Sheets of a pack come cut to size. */
const NO_MARGINS: ClothMargins = { leftSelvage: 0, rightSelvage: 0, straighten: 0 };
/** Cloth that may still have its selvages. */
const WITH_SELVAGE: readonly ClothKind[] = ['yardage', 'backing', 'wide-backing', 'panel'];

/**
 * Length of a piece that these projects may cut, 1/320 mm: what is there and not spoken for by another; of a pack whole sheets
 * only.
 */
export function freeToCut({ id, there, held, unitLength }: ClothPiece, ownHolds: Shelf['ownHolds']): number {
  const free = Math.max(0, Math.min(there, there - held + (ownHolds.get(id) ?? 0)));
  return unitLength === null ? free : free - (free % unitLength);
}

/** The pieces of a fabric that could be cut, left out or not: cloth, and packs of cloth. */
export function cuttablePieces({ pieces }: ClothOnShelf, ownHolds: Shelf['ownHolds']): readonly ClothPiece[] {
  return pieces.filter((piece) => isCloth(piece) && freeToCut(piece, ownHolds) > 0);
}

function isCloth({ kind }: ClothPiece): boolean {
  return !NEVER_CUT.includes(kind) && measureOfKind(kind) !== 'count';
}

/**
 * What the planner is asked: every fabric with its pieces that may be cut, and cloth to buy where they do not reach. Pieces
 * with cuts that are locked keep their place in the job, whether more may be cut of them or not.
 */
export function jobOfSetup(setup: CuttingSetup, shelf: Shelf, locks: Locks = NO_LOCKS): CuttingJob {
  const { lines, table } = setup;
  const keys = [
    ...lines.map((line) => fabricKeyOf(setup, line)),
    ...[...locks.values()].map(({ fabric }) => fabric),
  ];
  return {
    fabrics: [...new Set(keys)].map((key) => jobFabric(key, setup, shelf, locks)),
    patches: lines.map((line) => ({
      id: line.id,
      fabric: fabricKeyOf(setup, line),
      width: line.width,
      length: line.length,
      copies: line.count,
      mayTurn: line.mayTurn,
      isBiasSquare: false,
    })),
    table: { rulerLength: table.rulerLength, matLength: table.matLength, mayFold: table.mayFold },
    keep: {
      shortSide: Math.min(table.keepShort, table.keepLong),
      longSide: Math.max(table.keepShort, table.keepLong),
    },
    objectives: table.wishes,
  };
}

function jobFabric(key: string, { leftOut, table }: CuttingSetup, shelf: Shelf, locks: Locks): JobFabric {
  const onShelf = [...shelf.cloth.values()].find(({ fabric }) => fabric.id === key);
  const mayBeCut = onShelf === undefined ? [] : cuttablePieces(onShelf, shelf.ownHolds);
  const pieces = (onShelf?.pieces ?? []).flatMap((piece) => {
    const lock = locks.get(piece.id);
    const isFree = mayBeCut.includes(piece) && !leftOut.includes(piece.id);
    if (lock === undefined && !isFree) return [];
    return [jobPiece(piece, table, isFree ? freeToCut(piece, shelf.ownHolds) : 0, lock)];
  });
  return {
    id: key,
    isDirectional: onShelf !== undefined && onShelf.fabric.direction !== 'any',
    pieces,
    toBuy: {
      width: onShelf?.fabric.width ?? shelf.usualWidth,
      margins: marginsOf('yardage', table),
      lengthStep: shelf.lengthStep,
    },
  };
}

function jobPiece(
  piece: ClothPiece,
  table: CuttingTableHabits,
  free: number,
  lock: LockedCuts | undefined,
): JobPiece {
  return {
    id: piece.id,
    width: piece.width,
    length: free + (lock?.length ?? 0),
    margins: piece.unitLength === null ? marginsOf(piece.kind, table) : NO_MARGINS,
    sheetLength: piece.unitLength ?? undefined,
    printRuns: piece.printRuns,
    lockedParts: lock?.parts ?? [],
  };
}

function marginsOf(kind: ClothKind, table: CuttingTableHabits): ClothMargins {
  const selvage = WITH_SELVAGE.includes(kind) ? table.selvage : 0;
  return {
    leftSelvage: selvage,
    rightSelvage: selvage,
    straighten: STRAIGHT.includes(kind) ? 0 : table.straighten,
  };
}
