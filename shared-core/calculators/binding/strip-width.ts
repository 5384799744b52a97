/** double: the strip is folded in half first. single: one layer goes over the edge and its far edge is turned under. */
export type BindingFold = 'double' | 'single';

/** What a binding wraps, in 1/320 mm. `seam` is also the width seen on the front; `cover` is how far it passes the seam on the back. */
interface BoundEdge {
  readonly seam: number;
  readonly thickness: number;
  readonly cover: number;
}

/**
 * Cut width of the strip. One layer takes s for the seam allowance, s on the front, t over the edge, s on the back and c past the
 * seam: 3s + t + c. A double fold has two such layers. A single fold turns its far edge under by another s.
 */
export function stripWidthFor(fold: BindingFold, { seam, thickness, cover }: BoundEdge): number {
  return fold === 'double' ? 6 * seam + 2 * thickness + 2 * cover : 4 * seam + thickness + cover;
}

/** The front width this strip fits; zero or less when the strip is too narrow for the edge. */
export function frontWidthOf(fold: BindingFold, strip: number, edge: Omit<BoundEdge, 'seam'>): number {
  const { thickness, cover } = edge;
  return fold === 'double' ? (strip - 2 * thickness - 2 * cover) / 6 : (strip - thickness - cover) / 4;
}

/** How far the fold of this strip passes the seam on the back; negative when it stops before the seam. */
export function coverOf(fold: BindingFold, strip: number, edge: Omit<BoundEdge, 'cover'>): number {
  const { seam, thickness } = edge;
  return fold === 'double' ? strip / 2 - 3 * seam - thickness : strip - 4 * seam - thickness;
}

/**
 * Distance from the stitching to the fold while the strip is sewn on: half the strip less the seam allowance. For a single fold,
 * whose far edge is pressed under first, it is the strip less two seam allowances.
 */
export function foldReach(fold: BindingFold, strip: number, seam: number): number {
  return fold === 'double' ? strip / 2 - seam : strip - 2 * seam;
}
