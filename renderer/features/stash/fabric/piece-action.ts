import type { FabricPiece } from '#core/domain/stash';
import type { PieceStep } from './piece-step-dialog';

/** An action on a piece of fabric: a booking, moving it to another place, or printing its label. */
export type PieceAction =
  PieceStep | { readonly kind: 'use' | 'move' | 'label'; readonly piece: FabricPiece };
