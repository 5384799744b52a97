import type { FabricPiece } from '#core/domain/stash';
import type { PieceStep } from './piece-step-dialog';

/** What is to be done with a piece: a booking, laying it in another place, or a label for it. */
export type PieceAsked = PieceStep | { readonly kind: 'use' | 'lie' | 'label'; readonly piece: FabricPiece };
