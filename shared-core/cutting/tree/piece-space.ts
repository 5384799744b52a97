import type {
  FabricMargins,
  PieceToBuy,
  JobFabric,
  JobPatch,
  JobPiece,
  PatchHelp,
  UnplacedPatch,
} from './cutting-job';
import type { PatchType } from './cut-plan';

/**
 * The part of a piece that patches can be cut from, turned so that the print runs along it: a piece whose print runs across is
 * planned on its side. Fabric to buy has no `source` and any length.
 */
export interface PieceSpace {
  readonly source: JobPiece | undefined;
  readonly width: number;
  readonly height: number;
  /** The number of equal spaces: the sheets of a pack, otherwise 1. */
  readonly times: number;
  readonly isOnItsSide: boolean;
}

/** The free space of a piece, or of one sheet of a pack. Nothing is free if the width, the height or the number is 0. */
export function pieceSpace(piece: JobPiece): PieceSpace {
  const across = usableWidth(piece.width, piece.margins);
  const free = Math.max(0, piece.length - startOfFree(piece));
  const along = piece.sheetLength ?? free;
  const isOnItsSide = piece.printRuns === 'across';
  return {
    source: piece,
    width: isOnItsSide ? along : across,
    height: isOnItsSide ? across : along,
    times: piece.sheetLength === undefined ? 1 : Math.floor(free / piece.sheetLength),
    isOnItsSide,
  };
}

/** The length before the free fabric of a piece: its locked parts, or else its straightening margin. */
export function startOfFree(piece: JobPiece): number {
  if (piece.lockedParts.length === 0) return piece.margins.straighten;
  return piece.lockedParts.reduce((sum, part) => sum + part.height, 0);
}

/** The space of fabric to buy, which can have any height. */
export function spaceToBuy(stock: PieceToBuy): PieceSpace {
  return {
    source: undefined,
    width: usableWidth(stock.width, stock.margins),
    height: Infinity,
    times: 1,
    isOnItsSide: false,
  };
}

function usableWidth(width: number, margins: FabricMargins): number {
  return Math.max(0, width - margins.leftSelvage - margins.rightSelvage);
}

/** The job's patches as patch types for one fabric; patches of other fabrics have no copies. */
export function patchTypes(patches: readonly JobPatch[], fabric: JobFabric): PatchType[] {
  return patches.map((patch) => ({
    width: patch.width,
    height: patch.length,
    copies: patch.fabric === fabric.id ? patch.copies : 0,
    mayTurn: patch.mayTurn && !fabric.isDirectional,
  }));
}

/** Whether a patch by itself fits a space, turned if it may turn. */
export function fitsSpace(patch: PatchType, space: PieceSpace): boolean {
  return fits(patch.width, patch.height, space) || (patch.mayTurn && fits(patch.height, patch.width, space));
}

function fits(width: number, height: number, space: PieceSpace): boolean {
  return width <= space.width && height <= space.height;
}

/** Why a patch fits none of the spaces, and what would help; undefined if it fits one. */
export function whyImpossible(
  patch: JobPatch,
  type: PatchType,
  spaces: readonly PieceSpace[],
): UnplacedPatch | undefined {
  if (type.copies === 0 || spaces.some((space) => fitsSpace(type, space))) return undefined;
  const helps: PatchHelp[] = [];
  if (spaces.some((space) => fits(type.height, type.width, space))) helps.push({ code: 'turn-it' });
  helps.push({ code: 'piece-it' });
  const fitsWidth = spaces.some(
    (space) => type.width <= space.width || (type.mayTurn && type.height <= space.width),
  );
  const width = type.mayTurn ? Math.min(type.width, type.height) : type.width;
  const length = type.mayTurn ? Math.max(type.width, type.height) : type.height;
  helps.push(fitsWidth ? { code: 'longer-fabric', length } : { code: 'wider-fabric', width });
  const reason =
    spaces.length === 0 ? 'no-fabric' : fitsWidth ? 'longer-than-any-fabric' : 'wider-than-any-fabric';
  return { patch: patch.id, copies: type.copies, reason, helps };
}
