/** double: the strip is folded in half first; single: one layer goes over the edge and its far edge is turned under. */
export type BindingFold = 'double' | 'single';

/** What a binding wraps, in 1/320 mm: seam (also the width seen on the front), edge thickness, cover past the seam on the back. */
export interface BoundEdge {
  readonly seam: number;
  readonly thickness: number;
  readonly cover: number;
}

/**
 * Cut width of the strip. One layer runs s inside the seam, s up the front, t over the edge, s down the back and c past the
 * seam: 3s + t + c. A double fold has two such layers; a single fold turns its far edge under by another s.
 */
export function stripWidthFor(fold: BindingFold, { seam, thickness, cover }: BoundEdge): number {
  return fold === 'double' ? 6 * seam + 2 * thickness + 2 * cover : 4 * seam + thickness + cover;
}

/** The front width a given strip is right for; not above zero where the strip is too narrow for the edge at all. */
export function frontWidthOf(fold: BindingFold, strip: number, edge: Omit<BoundEdge, 'seam'>): number {
  const { thickness, cover } = edge;
  return fold === 'double' ? (strip - 2 * thickness - 2 * cover) / 6 : (strip - thickness - cover) / 4;
}

/** How far the fold of a given strip passes the seam on the back; negative where it does not reach it. */
export function coverOf(fold: BindingFold, strip: number, edge: Omit<BoundEdge, 'cover'>): number {
  const { seam, thickness } = edge;
  return fold === 'double' ? strip / 2 - 3 * seam - thickness : strip - 4 * seam - thickness;
}

/**
 * How far the fold lies from the seam while the strip is sewn on: half the strip less the seam; for a single fold, whose far
 * edge is pressed under by the seam first, the strip less two seams.
 */
export function foldReach(fold: BindingFold, strip: number, seam: number): number {
  return fold === 'double' ? strip / 2 - seam : strip - 2 * seam;
}
