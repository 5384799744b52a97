import type { CuttingJob, FabricMargins, JobFabric, JobPiece } from '#core/cutting/tree/cutting-job';
import { type CuttingSetup, type CuttingTableSettings, fabricKeyOf } from '#core/domain/cutting-setup';
import type { FabricPieceId, FabricId } from '#core/domain/ids';
import { type Fabric, type FabricPiece, freeOf, type PieceKind, type StashPrice } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import { type Length, lengthMinimum } from '#core/units/length';
import { type LockedCuts, type Locks, NO_LOCKS } from '../table/locked-cuts';

/** A fabric of the stash with its pieces. */
export interface FabricInStash {
  readonly fabric: Fabric;
  readonly pieces: readonly FabricPiece[];
  /** The shop’s price; null when it is unknown. */
  readonly price: StashPrice | null;
}

export interface PlanStash {
  readonly fabrics: ReadonlyMap<FabricId, FabricInStash>;
  /** What is set aside for the plan’s own projects, by piece, 1/320 mm; they may cut it. */
  readonly ownHolds: ReadonlyMap<FabricPieceId, number>;
  /** Width of fabric that is not in the stash yet. */
  readonly usualWidth: Length;
  /** Shops sell lengths in steps of this. */
  readonly lengthStep: Length;
}

/** Finished goods, or nothing to cut patches from. */
const NEVER_CUT: readonly PieceKind[] = ['bias-made-up', 'batting', 'batting-package'];
/** The ends of these are straight, because they were cut with a ruler. */
const STRAIGHT: readonly PieceKind[] = ['precut-strips', 'precut-squares', 'leftover'];
/** Precuts come in their size. */
const NO_MARGINS: FabricMargins = { leftSelvage: 0, rightSelvage: 0, straighten: 0 };
/** Fabric that may still have its selvages. */
const WITH_SELVAGE: readonly PieceKind[] = ['yardage', 'backing', 'wide-backing', 'panel'];

/**
 * Length of a piece that these projects may cut, 1/320 mm: what is there and not set aside for others. From a pack only whole
 * sheets may be cut.
 */
export function freeToCut(piece: FabricPiece, ownHolds: PlanStash['ownHolds']): number {
  const { id, there, unitLength } = piece;
  const free = lengthMinimum(there, freeOf(piece, ownHolds.get(id)));
  return unitLength === null ? free : free - (free % unitLength);
}

/** The pieces of a fabric with something free to cut, whether the plan leaves them alone or not. */
export function cuttablePieces(
  { pieces }: FabricInStash,
  ownHolds: PlanStash['ownHolds'],
): readonly FabricPiece[] {
  return pieces.filter((piece) => isFabric(piece) && freeToCut(piece, ownHolds) > 0);
}

function isFabric({ kind }: FabricPiece): boolean {
  return !NEVER_CUT.includes(kind) && measureOfKind(kind) !== 'count';
}

/**
 * The job for the planner: every fabric with the pieces that may be cut, and new fabric where they are not enough. A piece with
 * locked cuts is part of the job even if nothing more may be cut from it.
 */
export function jobOfSetup(setup: CuttingSetup, stash: PlanStash, locks: Locks = NO_LOCKS): CuttingJob {
  const { lines, table } = setup;
  const keys = [
    ...lines.map((line) => fabricKeyOf(setup, line)),
    ...[...locks.values()].map(({ fabric }) => fabric),
  ];
  return {
    fabrics: [...new Set(keys)].map((key) => jobFabric(key, setup, stash, locks)),
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
    wishes: table.wishes,
  };
}

function jobFabric(key: string, { leftOut, table }: CuttingSetup, stash: PlanStash, locks: Locks): JobFabric {
  const inStash = [...stash.fabrics.values()].find(({ fabric }) => fabric.id === key);
  const mayBeCut = inStash === undefined ? [] : cuttablePieces(inStash, stash.ownHolds);
  const pieces = (inStash?.pieces ?? []).flatMap((piece) => {
    const lock = locks.get(piece.id);
    const isFree = mayBeCut.includes(piece) && !leftOut.includes(piece.id);
    if (lock === undefined && !isFree) return [];
    return [jobPiece(piece, table, isFree ? freeToCut(piece, stash.ownHolds) : 0, lock)];
  });
  return {
    id: key,
    isDirectional: inStash !== undefined && inStash.fabric.direction !== 'any',
    pieces,
    toBuy: {
      width: inStash?.fabric.width ?? stash.usualWidth,
      margins: marginsOf('yardage', table),
      lengthStep: stash.lengthStep,
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
