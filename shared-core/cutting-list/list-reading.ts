import type { Length } from '#core/units/length';

/** What a cut patch is. A square cut once on the diagonal gives two half-square triangles; cut twice, four quarter-square triangles. */
export type ListShape =
  | 'square'
  | 'rectangle'
  | 'strip'
  | 'half-square-triangle'
  | 'quarter-square-triangle'
  | 'half-rectangle-triangle';

/** Patches of one size that a list asks for, at their cut size. */
export interface ListPatch {
  readonly shape: ListShape;
  /** Of the strip, square or rectangle that is cut from the fabric. */
  readonly width: Length;
  /** Null for a strip across the whole width of the fabric. */
  readonly length: Length | null;
  /** Squares, rectangles or strips to cut. */
  readonly cut: number;
  /** Patches these give: a triangle counts as one. */
  readonly count: number;
  /** The fabric as the list names it; null if the list does not say. */
  readonly role: string | null;
  /** The block of the pattern they are for. */
  readonly block: string | null;
  /** What they are for, in the words of the list. */
  readonly purpose: string | null;
}

/** Strips that a line cuts first and then cuts up into patches. */
export interface ListStrips {
  readonly count: number;
  readonly width: Length;
  /** Null if they run across the whole width of the fabric. */
  readonly length: Length | null;
  readonly role: string | null;
}

/** What the pattern states of itself, to be checked against its own patches. */
export type StatedAmount =
  | { readonly what: 'fabric'; readonly role: string | null; readonly length: Length }
  | { readonly what: 'fat-quarters'; readonly role: string | null; readonly count: number }
  | { readonly what: 'finished-size'; readonly width: Length; readonly length: Length }
  | { readonly what: 'block-size'; readonly width: Length; readonly length: Length };

/**
 * Why a line needs a look. not-understood: words that the grammar does not know. All others: what was read does not settle the
 * line, and `from` to `to` is the part in question.
 */
export type MarkCode =
  | 'not-understood'
  | 'no-count'
  | 'no-size'
  | 'no-shape'
  | 'no-fabric'
  | 'fabric-unclear'
  | 'sides-differ'
  | 'number-unclear'
  | 'count-differs'
  | 'more-than-strips-give'
  | 'no-strips'
  | 'strip-length-missing'
  | 'each-or-all'
  | 'block-count-missing'
  | 'once-or-twice'
  | 'which-patches'
  | 'name-unclear'
  | 'amounts-differ';

export interface ListMark {
  readonly code: MarkCode;
  /** Characters of the line, the last not included. */
  readonly from: number;
  readonly to: number;
}

/** heading: names a fabric, a block or a part of the list. note: a sentence that changes nothing. */
export type LineKind = 'blank' | 'heading' | 'cut' | 'stated' | 'note' | 'unread';

export interface ListLine {
  readonly text: string;
  readonly kind: LineKind;
  /** The fabric that the line names or stands under. */
  readonly role: string | null;
  readonly block: string | null;
  readonly strips: readonly ListStrips[];
  readonly patches: readonly ListPatch[];
  readonly stated: readonly StatedAmount[];
  /** Empty only if every word was understood and nothing is open. */
  readonly marks: readonly ListMark[];
}

export interface ListReading {
  readonly lines: readonly ListLine[];
  /** Fabrics in the order in which the list first names them. */
  readonly roles: readonly string[];
  readonly patches: readonly ListPatch[];
  readonly stated: readonly StatedAmount[];
  /** Some size has no unit, so the one that was asked for was taken. */
  readonly hasBareSizes: boolean;
}
