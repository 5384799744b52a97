import type { SeamCheckInput } from './input';

/** The whole top or ring, as far as its width is made of seams and patches. */
export interface Whole {
  readonly kind: 'top' | 'ring';
  /** What it should measure as sewn, from edge to edge, in 1/320 mm. */
  readonly size: number;
  /** How often the error of a seam, and of a patch, counts in that width. */
  readonly seams: number;
  readonly patches: number;
  /** How much its own patches scatter, in squares of the scatter of one. */
  readonly own: number;
}

/** The angle from the middle of a wedge to its seam, in radians. */
export function halfWedge(wedges: number): number {
  return Math.PI / wedges;
}

/**
 * The top if it has one, otherwise the ring. If all wedges are narrower by e, each side of the ring moves in by (e ÷ 2) ÷ sin of half a
 * wedge, so its width loses e ÷ sin. The wedges scatter, but only their average counts.
 */
export function wholeOf({ top, ring, seamAllowance }: SeamCheckInput): Whole | null {
  if (top !== null) return { kind: 'top', ...top, own: top.patches };
  if (ring === null) return null;
  const times = 1 / Math.sin(halfWedge(ring.wedges));
  const size = 2 * (ring.radius + seamAllowance);
  return { kind: 'ring', size, seams: times, patches: times, own: times ** 2 / ring.wedges };
}
