import { polygonArea, polygonPerimeter } from '#core/geometry/polygon';
import { planUnit } from '../patches/patch-units';
import type { BlockKind } from './input';

/** The patches of one block: how many, the length of all their edges, and their area; all finished. */
export interface BlockTotals {
  readonly patches: number;
  readonly edges: number;
  readonly area: number;
}

/** A block without units counts as one patch. */
export function blockTotals(block: BlockKind, seam: number): BlockTotals {
  if (block.units.length === 0) {
    return { patches: 1, edges: 2 * (block.width + block.length), area: block.width * block.length };
  }
  return block.units.reduce<BlockTotals>(
    (sum, { unit, times }) => {
      const { finishedPatches, outline } = planUnit(unit, seam);
      const edges = finishedPatches.reduce((length, { polygon }) => length + polygonPerimeter(polygon), 0);
      return {
        patches: sum.patches + times * finishedPatches.length,
        edges: sum.edges + times * edges,
        area: sum.area + times * polygonArea(outline),
      };
    },
    { patches: 0, edges: 0, area: 0 },
  );
}
