import type { Length } from '#core/units/length';
import type { PieceKind } from './stash';

/** Rectangles of one size: `width` across the fabric, `length` along it; a patch that may turn can also be cut the other way. */
export interface NeededPatch {
  readonly width: number;
  readonly length: number;
  readonly count: number;
  readonly mayTurn: boolean;
}

/**
 * How much is needed. patches: rectangles, each of which must come from one piece. strips: strips as wide as `strip`, cut
 * across fabric of any width and joined until `needed` is reached, each join costing `cost`. thread: a length; one spool is
 * enough. notion: a length of cord or the like; the stash counts notions without their length, so one is taken to be enough.
 */
export type NeedAmount =
  | { readonly measure: 'patches'; readonly patches: readonly NeededPatch[] }
  | { readonly measure: 'strips'; readonly strip: number; readonly needed: number; readonly cost: number }
  | { readonly measure: 'thread'; readonly length: number }
  | { readonly measure: 'notion'; readonly length: number };

/** One fabric, batting or thread that an answer asks for. Lengths in 1/320 mm. */
export interface Need {
  /** What the answer calls it, such as `Backing` or `Dark`. */
  readonly name: string;
  /** What would be bought. */
  readonly kind: PieceKind;
  readonly amount: NeedAmount;
  /** The width of fabric the amount is worked out for. */
  readonly fabricWidth: Length;
  /** Safety extra on what is bought; 5 is 5%. */
  readonly extraPercent: number;
  /** A package that is enough, where it is sold in packages. */
  readonly package: { readonly name: string; readonly width: Length; readonly length: Length } | null;
}

/** Whether it is met by an item that the stash counts, such as a spool, and not by a length of fabric. */
export function isMetByItem(
  amount: NeedAmount,
): amount is Extract<NeedAmount, { readonly measure: 'thread' | 'notion' }> {
  return amount.measure === 'thread' || amount.measure === 'notion';
}
