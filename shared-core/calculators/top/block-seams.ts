import { polygonArea, polygonPerimeter } from '#core/geometry/polygon';
import { planUnit } from '../patches/patch-units';
import type { BlockKind } from './input';

/** What one block is sewn from: how many patches, the length of all their edges, and their area, all finished. */
export interface BlockMake {
  readonly patches: number;
  readonly edges: number;
  readonly area: number;
}

/** A block without parts counts as one patch: its making is told elsewhere, or it is a plain square. */
export function makeOfBlock(block: BlockKind, seam: number): BlockMake {
  if (block.parts.length === 0) {
    return { patches: 1, edges: 2 * (block.width + block.length), area: block.width * block.length };
  }
  return block.parts.reduce<BlockMake>(
    (sum, { unit, times }) => {
      const { pieces, outline } = planUnit(unit, seam);
      const edges = pieces.reduce((length, piece) => length + polygonPerimeter(piece.polygon), 0);
      return {
        patches: sum.patches + times * pieces.length,
        edges: sum.edges + times * edges,
        area: sum.area + times * polygonArea(outline),
      };
    },
    { patches: 0, edges: 0, area: 0 },
  );
}
