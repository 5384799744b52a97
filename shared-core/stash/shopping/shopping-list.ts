import type { FabricId } from '#core/domain/ids';
import type { PieceKind, PrintDirection } from '#core/domain/stash';
import type { Length } from '#core/units/length';
import type { FabricNeed } from './fabric-need';

/** A fabric of the stash, as the list shows it. */
export interface FabricToBuy {
  readonly id: FabricId;
  readonly name: string;
  readonly supplier: string;
  readonly swatch: string;
  readonly direction: PrintDirection;
  readonly width: Length;
}

/** The part of a line for one need: its length with the extra, before rounding to what shops cut. */
export interface LineShare {
  readonly need: FabricNeed;
  readonly length: Length;
}

/** One thing to buy: a length of fabric, or a number of packages or spools. */
export interface ShoppingLine {
  readonly key: string;
  readonly fabric: FabricToBuy | null;
  readonly kind: PieceKind;
  readonly width: Length;
  /** What is needed, and the same rounded up to what shops cut. Both are the same for packages and thread. */
  readonly exact: Length;
  readonly length: Length;
  /** How many packages or spools; null for a length. */
  readonly count: number | null;
  /** The chosen fabric is narrower than a patch, so only wider fabric works. */
  readonly isWider: boolean;
  /** In the order of the needs. */
  readonly shares: readonly LineShare[];
}
