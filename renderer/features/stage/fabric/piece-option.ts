import type { FabricOfProject } from '#core/contract/stash';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { type Length, lengthFromUnits } from '#core/units/length';

export interface PieceOption {
  readonly fabric: Fabric;
  readonly piece: FabricPiece;
  /** Free to this project: there, and not spoken for by another. */
  readonly free: Length;
  readonly isHeld: boolean;
}

interface FoundFabric {
  readonly fabric: Fabric;
  readonly pieces: readonly FabricPiece[];
}

/** The pieces that can be cut: what this project has set aside first, then everything found that is not used up and is measured. */
export function pieceOptions(
  found: readonly FoundFabric[],
  held: FabricOfProject['held'],
): readonly PieceOption[] {
  const ownHold = new Map(held.map((one) => [one.piece.id, one.held]));
  const options = found.flatMap(({ fabric, pieces }) =>
    pieces
      .filter((piece) => piece.there > 0 && piece.unitLength === null)
      .map((piece): PieceOption => {
        const own = ownHold.get(piece.id) ?? 0;
        return { fabric, piece, free: lengthFromUnits(piece.there - piece.held + own), isHeld: own > 0 };
      }),
  );
  return options.toSorted((first, second) => Number(second.isHeld) - Number(first.isHeld));
}
