import type { CuttingWish } from '#core/domain/cutting-setup';
import type { CutDirection, CutTree, PieceTree } from '#core/domain/cutting-plan';
import type { CuttingRule, PlacedPatch } from './cut-plan';

/** Patches to cut from one fabric: cut sizes in length units (1/320 mm), `width` across the print, `length` along it. */
export interface JobPatch {
  readonly id: string;
  readonly fabric: string;
  readonly width: number;
  readonly length: number;
  readonly copies: number;
  readonly mayTurn: boolean;
  /** A square for bias strips, planned like any other patch. */
  readonly isBiasSquare: boolean;
}

/**
 * What is trimmed off a fabric before it can be used: a selvage on each side, and a strip that straightens the near end.
 */
export interface FabricMargins {
  readonly leftSelvage: number;
  readonly rightSelvage: number;
  readonly straighten: number;
}

/** One piece of fabric in the stash: a bolt, a fat quarter, a precut, a leftover. */
export interface JobPiece {
  readonly id: string;
  readonly width: number;
  readonly length: number;
  readonly margins: FabricMargins;
  /**
   * For a pack, the length of one of its sheets, which are placed one after the other and fill the length; otherwise undefined.
   * A pack has no margins.
   */
  readonly sheetLength: number | undefined;
  /** Whether the print runs along the piece's length, or across it, as in a leftover turned on its side. */
  readonly printRuns: CutDirection;
  /**
   * What is already cut from the near end, in order, each across the whole piece: parts of an earlier plan's tree for this
   * piece, with the straightening margin, or sheets of a pack. The rest of the job is planned beyond them.
   */
  readonly lockedParts: readonly CutTree[];
}

/** Fabric that can be bought by the length. */
export interface PieceToBuy {
  readonly width: number;
  readonly margins: FabricMargins;
  /** Lengths are sold in steps of this, rounded up. */
  readonly lengthStep: number;
}

export interface JobFabric {
  readonly id: string;
  /** A print with a top and a bottom, or a nap: no patch may turn. */
  readonly isDirectional: boolean;
  readonly pieces: readonly JobPiece[];
  readonly toBuy: PieceToBuy | undefined;
}

export interface CuttingTable {
  readonly rulerLength: number;
  readonly matLength: number;
  /** Fabric may be folded once, so that a cut across goes through two layers. */
  readonly mayFold: boolean;
}

/** A rest is worth keeping if it is at least this large, in either direction. */
export interface KeepLimit {
  readonly shortSide: number;
  readonly longSide: number;
}

export interface CuttingJob {
  readonly fabrics: readonly JobFabric[];
  readonly patches: readonly JobPatch[];
  readonly table: CuttingTable;
  readonly keep: KeepLimit;
  /** Most important first; wishes that are not listed follow in the default order. */
  readonly wishes: readonly CuttingWish[];
}

/** A cut from edge to edge of the part in hand, in the order of cutting. */
export interface OrderedCut {
  readonly direction: CutDirection;
  /** Where the cut starts on the piece, from its left and near edge. */
  readonly x: number;
  readonly y: number;
  readonly length: number;
  /** 1 for the first cuts of the piece, one more for each turn of direction. */
  readonly stage: number;
  readonly layers: 1 | 2;
  /** The number of times the ruler is placed. */
  readonly passes: number;
  /** True if this cut is already made and its part is locked. */
  readonly isDone: boolean;
}

export interface Leftover {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

/** Areas that add up exactly to the area of the piece. */
export interface PieceAreas {
  readonly piece: number;
  readonly patches: number;
  readonly leftovers: number;
  readonly scrap: number;
  readonly margins: number;
}

/** How one piece is cut, or the sheets taken from a pack. Trees and places number patches by their index in the job. */
export interface PiecePlan {
  /** The piece's id, undefined for fabric to buy. */
  readonly piece: string | undefined;
  readonly fabric: string;
  readonly width: number;
  readonly length: number;
  readonly tree: PieceTree;
  readonly placed: readonly PlacedPatch[];
  readonly leftovers: readonly Leftover[];
  readonly cuts: readonly OrderedCut[];
  /** The number of cuts where equal parts of a folded strip are cut two at a time and sheets in stacks. */
  readonly foldedCuts: number;
  readonly stages: number;
  readonly areas: PieceAreas;
}

export interface Purchase {
  readonly fabric: string;
  readonly width: number;
  /** The length that the layout needs, with its straightening margin. */
  readonly exactLength: number;
  /** The same, rounded up to a length that is sold. */
  readonly length: number;
  /** No layout under this rule needs less (exact, without the margin); 0 where pieces of the stash are used too. */
  readonly leastLength: number;
}

export type PatchHelp =
  | { readonly code: 'turn-it' }
  | { readonly code: 'piece-it' }
  | { readonly code: 'wider-fabric'; readonly width: number }
  | { readonly code: 'longer-fabric'; readonly length: number };

/** Copies of a patch that are not placed, and why. */
export interface UnplacedPatch {
  readonly patch: string;
  readonly copies: number;
  readonly reason: 'no-fabric' | 'wider-than-any-fabric' | 'longer-than-any-fabric' | 'stash-used-up';
  readonly helps: readonly PatchHelp[];
}

/** What a plan costs, with a figure for every wish; smaller is better except for the leftover. */
export interface PlanTotals {
  readonly unplaced: number;
  readonly boughtArea: number;
  /** Area of the pieces started less the leftovers kept. */
  readonly usedArea: number;
  readonly pieces: number;
  readonly cuts: number;
  readonly largestLeftover: number;
}

export interface JobPlan {
  readonly rule: CuttingRule;
  readonly pieces: readonly PiecePlan[];
  readonly purchases: readonly Purchase[];
  readonly unplaced: readonly UnplacedPatch[];
  readonly totals: PlanTotals;
  /** The area of the placed patches, which every plan for them must use. */
  readonly leastArea: number;
  /** (usedArea - leastArea) / leastArea; 0 if nothing is placed. */
  readonly gap: number;
}
