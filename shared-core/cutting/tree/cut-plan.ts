/** A kind of rectangular patch: `copies` equal patches, `width` across the fabric and `height` along it; whole units. */
export interface PatchType {
  readonly width: number;
  readonly height: number;
  readonly copies: number;
  /** False where the print or the grain must run along the fabric. */
  readonly mayTurn: boolean;
}

/** Patches to cut from a strip of fabric of fixed width and open length. */
export interface StripProblem {
  readonly stripWidth: number;
  readonly patches: readonly PatchType[];
}

/**
 * How the fabric may be cut: `2-stage` is strips across the whole width, then cross cuts, then a trim to height;
 * `guillotine` is any row of cuts from edge to edge.
 */
export type CuttingRule = '2-stage' | 'guillotine';

/** What a layout may do. `maxStages` 0 means any number; the longest cuts keep within ruler and mat. */
export interface CutLimits {
  readonly maxStages: number;
  readonly longestAcross: number;
  readonly longestAlong: number;
}

export const NO_LIMITS: CutLimits = { maxStages: 0, longestAcross: Infinity, longestAlong: Infinity };

/** What a search must keep to; equal `random` numbers in [0, 1) give equal searches, step for step. */
export interface SearchRules {
  readonly rule: CuttingRule;
  readonly limits: CutLimits;
  readonly random: () => number;
}

/** `across`: the cut line runs across the fabric, parts lie one behind the other; `along`: parts lie side by side. */
export type CutDirection = 'across' | 'along';

/** What becomes of fabric that is no patch: kept, thrown away, or taken off as selvage or straightening margin. */
export type RestUse = 'leftover' | 'scrap' | 'margin';

/**
 * How a rectangle of fabric is cut: a patch of exactly this size, a rest, or parts that fill it without gap, in order from
 * the near (across) or left (along) edge. A part never splits again in the direction of its parent.
 */
export type CutTree =
  | {
      readonly kind: 'patch';
      readonly width: number;
      readonly height: number;
      /** Index of the patch type. */
      readonly patch: number;
      readonly turned: boolean;
    }
  | { readonly kind: 'rest'; readonly width: number; readonly height: number; readonly use: RestUse }
  | {
      readonly kind: 'split';
      readonly width: number;
      readonly height: number;
      readonly direction: CutDirection;
      readonly parts: readonly CutTree[];
    };

/**
 * Some sheets of a pack, one behind the other, each of the same size and cut by itself: no cut lies between them, and a part
 * may be split in any direction.
 */
export interface SheetsTree {
  readonly kind: 'sheets';
  readonly width: number;
  readonly height: number;
  readonly parts: readonly CutTree[];
}

/** How one piece of the stash is cut: one fabric, or the sheets taken of a pack. */
export type PieceTree = CutTree | SheetsTree;

/** One patch where it lies: `x` from the left edge, `y` from the near edge, as laid (width and height turned if turned). */
export interface PlacedPatch {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly patch: number;
  readonly turned: boolean;
}

/** A whole layout on a strip: `height` is the length of fabric used, counted to the last patch. */
export interface StripLayout {
  readonly height: number;
  readonly tree: CutTree;
}
