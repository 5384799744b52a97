/** A kind of rectangular patch: `copies` equal patches, `width` across the fabric and `height` along it; whole units. */
export interface PatchType {
  readonly width: number;
  readonly height: number;
  readonly copies: number;
  /** False where the print or the grain must run along the fabric. */
  readonly mayTurn: boolean;
}

/** Patches to cut from a strip of fabric of fixed width and any length. */
export interface StripProblem {
  readonly stripWidth: number;
  readonly patches: readonly PatchType[];
}

/**
 * How the fabric may be cut: `2-stage` is strips across the whole width, then cross cuts, then a trim to height;
 * `guillotine` is any sequence of cuts from edge to edge.
 */
export type CuttingRule = '2-stage' | 'guillotine';

/** Limits of a layout. `maxStages` 0 means any number; the longest cuts are set by ruler and mat. */
export interface CutLimits {
  readonly maxStages: number;
  readonly longestAcross: number;
  readonly longestAlong: number;
}

export const NO_LIMITS: CutLimits = { maxStages: 0, longestAcross: Infinity, longestAlong: Infinity };

/** The rules for a search. Equal `random` numbers in [0, 1) give equal searches, step for step. */
export interface SearchRules {
  readonly rule: CuttingRule;
  readonly limits: CutLimits;
  readonly random: () => number;
}

/** A patch and its place: `x` from the left edge, `y` from the near edge. Width and height are swapped if it is turned. */
export interface PlacedPatch {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly patch: number;
  readonly turned: boolean;
}
