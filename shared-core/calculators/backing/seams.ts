import { outlineBounds } from '../outline/outline-measures';
import type { BackingInput } from './input';
import type { PanelWay } from './work';

/** Where the seams between panels run, in 1/320 mm from one edge of the backing, which is `span` wide across them. */
export function seamPlaces({ fabric, panels, last }: PanelWay, span: number): readonly number[] {
  const step = fabric.width - 2 * fabric.seam;
  // With two outer panels the seams are the same on both sides of the middle. Otherwise the first panel keeps its outer edge,
  // so its seam is a whole panel less one allowance away from it.
  const first = last === 'outer' ? (span - (panels - 2) * step) / 2 : fabric.width - fabric.seam;
  return Array.from({ length: panels - 1 }, (_, index) => first + index * step);
}

/** One seam beside the hole, which is cut in the middle of the backing. In 1/320 mm, not rounded. */
export interface SeamByHole {
  readonly fromEdge: number;
  readonly fromMiddle: number;
  /** From the seam to the edge of the hole; below 0 where the seam crosses the hole. */
  readonly clear: number;
  /** Where the seam meets the slit, from the finished edge; null where it does not cross it. */
  readonly onSlit: number | null;
}

/**
 * Every seam between panels with its distance from the hole; none without a hole. The slit runs straight down from the hole, as it
 * is drawn. Joins within a last panel need no look: the middle is never in the last panel, so its seam is nearer.
 */
export function seamsByHole(
  { outline, hole, hasSlit }: BackingInput,
  way: PanelWay,
  span: number,
): readonly SeamByHole[] {
  if (hole === null) return [];
  const radius = hole.diameter / 2;
  const toEdge = outlineBounds(outline).length / 2;
  return seamPlaces(way, span).map((fromEdge) => {
    const below = fromEdge - span / 2;
    const fromMiddle = Math.abs(below);
    const isOnSlit = hasSlit && way.panelsRun === 'across' && below > radius && below < toEdge;
    return { fromEdge, fromMiddle, clear: fromMiddle - radius, onSlit: isOnSlit ? toEdge - below : null };
  });
}
