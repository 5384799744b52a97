import type { ClothPiece } from '#core/domain/stash';
import type { PieceStep } from './piece-step-dialog';

/** What is to be done with a piece: a booking, or laying it in another place. */
export type PieceAsked = PieceStep | { readonly kind: 'lie'; readonly piece: ClothPiece };
