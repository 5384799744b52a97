import type { Length } from '#core/units/length';
import type { RingSize } from './ring-fields';

/** One curved edge of a wedge, in 1/320 mm, not rounded. */
export interface Arc {
  readonly radius: number;
  /** Straight from corner to corner. */
  readonly chord: number;
  /** How far the arc rises above its chord. */
  readonly sagitta: number;
}

interface ArcEdges {
  readonly outer: Arc;
  readonly inner: Arc;
}

export interface ArcWedge {
  readonly finished: ArcEdges;
  readonly cut: ArcEdges;
}

/** With arcs the seams of the legs must not meet before the inner edge. */
export function hasRoomForArcs({ innerRadius, seamAllowance }: CurvedRing): boolean {
  return innerRadius > 2 * seamAllowance;
}

type CurvedRing = Omit<RingSize, 'wedges'> & { readonly seamAllowance: Length };

/**
 * A wedge whose inner and outer edge are arcs around the middle of the ring. The cut arcs have the seam as a larger and a smaller
 * radius, and end at the legs, which are moved out by the seam. `half` is in radians; the ring must have room for arcs.
 */
export function arcWedge(
  { innerRadius, outerRadius, seamAllowance: seam }: CurvedRing,
  half: number,
): ArcWedge {
  const arc = (radius: number, away: number) => arcBetweenLegs(radius, away, half);
  return {
    finished: { outer: arc(outerRadius, 0), inner: arc(innerRadius, 0) },
    cut: { outer: arc(outerRadius + seam, seam), inner: arc(innerRadius - seam, seam) },
  };
}

/** The legs run beside the radii at half the angle to either side, `away` from them. */
function arcBetweenLegs(radius: number, away: number, half: number): Arc {
  const along = Math.sqrt(radius ** 2 - away ** 2);
  const [sin, cos] = [Math.sin(half), Math.cos(half)];
  return {
    radius,
    chord: 2 * (along * sin + away * cos),
    sagitta: radius - (along * cos - away * sin),
  };
}
