import type { CutDirection, CutTree, CuttingRule, PieceTree, PlacedPatch } from './cut-plan';

/** Patches to cut from one fabric: cut sizes in length units (1/320 mm), `width` across the print, `length` along it. */
export interface JobPatch {
  readonly id: string;
  readonly fabric: string;
  readonly width: number;
  readonly length: number;
  readonly copies: number;
  readonly mayTurn: boolean;
  /** A square for bias strips: it competes for the same fabric as any patch. */
  readonly isBiasSquare: boolean;
}

/** What is taken off a fabric before it is of use: a selvage at each side, a straightening cut at the near end. */
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
   * Where the piece is a pack: the length of one of its sheets, which lie one behind the other and fill it; undefined for one
   * fabric. A pack has no margins.
   */
  readonly sheetLength: number | undefined;
  /** Whether the print runs along the piece's length, or across it, as in a leftover turned on its side. */
  readonly printRuns: CutDirection;
  /**
   * What is already cut off the near end, in order, each across the whole piece: parts of an earlier plan's tree for this
   * piece, with the straightening margin; of a pack its sheets. The rest of the job is planned behind them.
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
  /** A print with an up and a down, or a nap: no patch may turn. */
  readonly isDirectional: boolean;
  readonly pieces: readonly JobPiece[];
  readonly toBuy: PieceToBuy | undefined;
}

export interface CuttingTable {
  readonly rulerLength: number;
  readonly matLength: number;
  /** Fabric may be folded once, so that cuts across go through two layers. */
  readonly mayFold: boolean;
}

/** A rest is worth keeping if it is at least this large, whichever way it lies. */
export interface KeepLimit {
  readonly shortSide: number;
  readonly longSide: number;
}

export type Objective = 'buy-least' | 'least-fabric' | 'fewest-pieces' | 'fewest-cuts' | 'largest-leftover';

export const DEFAULT_OBJECTIVES: readonly Objective[] = [
  'buy-least',
  'least-fabric',
  'fewest-pieces',
  'fewest-cuts',
  'largest-leftover',
];

export interface CuttingJob {
  readonly fabrics: readonly JobFabric[];
  readonly patches: readonly JobPatch[];
  readonly table: CuttingTable;
  readonly keep: KeepLimit;
  /** Most important first; what is left out follows in the default order. */
  readonly objectives: readonly Objective[];
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
  /** How often the ruler is laid down. */
  readonly passes: number;
  /** True if the part this cut frees was cut already and is locked. */
  readonly isDone: boolean;
}

export interface Leftover {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

/** Areas that add up to the piece to the last unit. */
export interface PieceAreas {
  readonly piece: number;
  readonly patches: number;
  readonly leftovers: number;
  readonly scrap: number;
  readonly margins: number;
}

/** How one piece of fabric is cut; of a pack, what is taken of it. Trees and places count patches by their index in the job. */
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
  /** Number of cuts where equal parts of a folded strip are cut two at a time, and sheets that are cut alike in stacks. */
  readonly foldedCuts: number;
  readonly stages: number;
  readonly areas: PieceAreas;
}

export interface Purchase {
  readonly fabric: string;
  readonly width: number;
  /** What the layout needs with its straightening margin. */
  readonly exactLength: number;
  /** The same rounded up to a step of the shop. */
  readonly length: number;
  /** No layout under this rule needs less (exact, without the margin); 0 where pieces of the stash share the work. */
  readonly leastLength: number;
}

export type PatchHelp =
  | { readonly code: 'turn-it' }
  | { readonly code: 'piece-it' }
  | { readonly code: 'wider-fabric'; readonly width: number }
  | { readonly code: 'longer-fabric'; readonly length: number };

/** Patches that no plan can place, and why; `copies` of them. */
export interface UnplacedPatch {
  readonly patch: string;
  readonly copies: number;
  readonly reason: 'no-fabric' | 'wider-than-any-fabric' | 'longer-than-any-fabric' | 'stash-used-up';
  readonly helps: readonly PatchHelp[];
}

/** What a plan costs, by objective; smaller is better except the leftover. */
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
  /** Fabric that any plan for these patches must use: the patches themselves. */
  readonly leastArea: number;
  /** (usedArea - leastArea) / leastArea; 0 if nothing is placed. */
  readonly gap: number;
}
