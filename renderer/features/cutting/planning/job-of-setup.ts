import type { CuttingJob, FabricMargins, JobFabric, JobPiece } from '#core/cutting/tree/cutting-job';
import { type CuttingSetup, type CuttingTableSettings, fabricKeyOf } from '#core/domain/cutting-setup';
import type { FabricPieceId, FabricId } from '#core/domain/ids';
import type { PieceKind, FabricPiece, StashPrice, Fabric } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import type { Length } from '#core/units/length';
import { type LockedCuts, type Locks, NO_LOCKS } from '../table/locked-cuts';

/** A fabric of the stash with the pieces there are of it. */
export interface FabricOnShelf {
  readonly fabric: Fabric;
  readonly pieces: readonly FabricPiece[];
  /** What a shop asks for it; null where that is not known. */
  readonly price: StashPrice | null;
}

export interface Shelf {
  readonly fabrics: ReadonlyMap<FabricId, FabricOnShelf>;
  /** What the projects of the plan hold themselves, by piece, 1/320 mm: it is free to them. */
  readonly ownHolds: ReadonlyMap<FabricPieceId, number>;
  /** Width of fabric that is not in the stash yet. */
  readonly usualWidth: Length;
  /** Shops sell by steps of this. */
  readonly lengthStep: Length;
}

/** Made up already, or no fabric to cut patches from. */
const NEVER_CUT: readonly PieceKind[] = ['bias-made-up', 'batting', 'batting-package'];
/** Ends of these are straight: they were cut with a ruler. */
const STRAIGHT: readonly PieceKind[] = ['precut-strips', 'precut-squares', 'leftover'];
/** Sheets of a pack come cut to size. */
const NO_MARGINS: FabricMargins = { leftSelvage: 0, rightSelvage: 0, straighten: 0 };
/** Fabric that may still have its selvages. */
const WITH_SELVAGE: readonly PieceKind[] = ['yardage', 'backing', 'wide-backing', 'panel'];

/**
 * Length of a piece that these projects may cut, 1/320 mm: what is there and not spoken for by another; of a pack whole sheets
 * only.
 */
export function freeToCut({ id, there, held, unitLength }: FabricPiece, ownHolds: Shelf['ownHolds']): number {
  const free = Math.max(0, Math.min(there, there - held + (ownHolds.get(id) ?? 0)));
  return unitLength === null ? free : free - (free % unitLength);
}

/** The pieces of a fabric that could be cut, left out or not: fabric, and packs of fabric. */
export function cuttablePieces(
  { pieces }: FabricOnShelf,
  ownHolds: Shelf['ownHolds'],
): readonly FabricPiece[] {
  return pieces.filter((piece) => isFabric(piece) && freeToCut(piece, ownHolds) > 0);
}

function isFabric({ kind }: FabricPiece): boolean {
  return !NEVER_CUT.includes(kind) && measureOfKind(kind) !== 'count';
}

/**
 * What the planner is asked: every fabric with its pieces that may be cut, and fabric to buy where they do not reach. Pieces
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
  const onShelf = [...shelf.fabrics.values()].find(({ fabric }) => fabric.id === key);
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
  piece: FabricPiece,
  table: CuttingTableSettings,
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

function marginsOf(kind: PieceKind, table: CuttingTableSettings): FabricMargins {
  const selvage = WITH_SELVAGE.includes(kind) ? table.selvage : 0;
  return {
    leftSelvage: selvage,
    rightSelvage: selvage,
    straighten: STRAIGHT.includes(kind) ? 0 : table.straighten,
  };
}
