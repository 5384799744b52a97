import type { ProjectFabric } from '#core/contract/stash';
import { type Fabric, type FabricPiece, freeOf } from '#core/domain/stash';
import type { Length } from '#core/units/length';

export interface PieceToCut {
  readonly fabric: Fabric;
  readonly piece: FabricPiece;
  /** Free for this project: what is there less what other projects have set aside. */
  readonly free: Length;
  readonly isHeld: boolean;
}

interface FoundFabric {
  readonly fabric: Fabric;
  readonly pieces: readonly FabricPiece[];
}

/** The pieces that can be cut, those set aside for this project first. Used-up pieces and packs counted in items are left out. */
export function piecesToCut(
  found: readonly FoundFabric[],
  held: ProjectFabric['held'],
): readonly PieceToCut[] {
  const ownHold = new Map(held.map((one) => [one.piece.id, one.held]));
  const options = found.flatMap(({ fabric, pieces }) =>
    pieces
      .filter((piece) => piece.there > 0 && piece.unitLength === null)
      .map((piece): PieceToCut => {
        const own = ownHold.get(piece.id) ?? 0;
        return { fabric, piece, free: freeOf(piece, own), isHeld: own > 0 };
      }),
  );
  return options.toSorted((first, second) => Number(second.isHeld) - Number(first.isHeld));
}
