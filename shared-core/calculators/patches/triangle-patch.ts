import { type CutEdge, type EdgeTerm, halfSquareEdge, quarterSquareEdge } from './cut-edge';
import { type CutShape, halvedShape, quarteredShape } from './cut-shapes';
import type { CutPatch } from './patch-unit';

type Counted = Pick<CutPatch, 'name' | 'role' | 'takes' | 'makes'>;

/** Squares cut once on the diagonal into two triangles each. The cut size includes the seam allowance. */
export function halfSquarePatch(counted: Counted, leg: EdgeTerm, seam: number): CutPatch {
  const edge = halfSquareEdge(leg, seam);
  return squarePatch(counted, edge, halvedShape(edge.exact, edge.exact));
}

/** Squares cut on both diagonals into four triangles each, with straight grain on their long sides. */
export function quarterSquarePatch(counted: Counted, longSide: EdgeTerm, seam: number): CutPatch {
  const edge = quarterSquareEdge(longSide, seam);
  return squarePatch(counted, edge, quarteredShape(edge.exact));
}

/** A square patch with this edge, cut into the parts of `shape`. */
export function squarePatch(counted: Counted, edge: CutEdge, shape: CutShape): CutPatch {
  return { ...counted, across: edge, along: edge, shape, source: 'fabric' };
}
