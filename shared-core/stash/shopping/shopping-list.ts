import type { FabricId } from '#core/domain/ids';
import type { PieceKind, PrintDirection } from '#core/domain/stash';
import type { Length } from '#core/units/length';
import type { FabricNeed } from './fabric-need';

/** A fabric of the stash as the list names it. */
export interface FabricToBuy {
  readonly id: FabricId;
  readonly name: string;
  readonly supplier: string;
  readonly swatch: string;
  readonly direction: PrintDirection;
  readonly width: Length;
}

/** The part of a line that one need asks for: the length of it, with its extra, before the shop rounds it. */
export interface LineShare {
  readonly need: FabricNeed;
  readonly length: Length;
}

/** One thing to buy. A length is cut off the bolt; packages and spools are bought by number. */
export interface ShoppingLine {
  readonly key: string;
  readonly fabric: FabricToBuy | null;
  readonly kind: PieceKind;
  readonly width: Length;
  /** What is needed, and the same rounded up to what shops cut; of packages and thread both are the length of one or all. */
  readonly exact: Length;
  readonly length: Length;
  /** How many packages or spools; null where a length is cut. */
  readonly count: number | null;
  /** The fabric chosen is narrower than a patch of it: only wider fabric will do. */
  readonly isWider: boolean;
  /** In the order of the needs. */
  readonly shares: readonly LineShare[];
}
