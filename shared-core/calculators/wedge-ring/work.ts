import { polygonOf } from '../patches/cut-shapes';
import type { Polygon } from '#core/geometry/polygon';
import { type Length, lengthFromExact } from '#core/units/length';
import { patchesPerStrip } from '../patches/fill-strips';
import { roundUpTo } from '#core/units/rounding';
import type { WedgeRingInput } from './input';
import type { RingSize } from './ring-fields';

/** One wedge in 1/320 mm, not rounded. The long side is outside. */
export interface WedgeSides {
  readonly short: number;
  readonly long: number;
  readonly height: number;
}

export interface WedgeRingWork {
  /** Half the angle of a wedge, in radians. */
  readonly half: number;
  readonly finished: WedgeSides;
  readonly cut: WedgeSides;
  /** Cut width of a strip, rounded up to the cut step. A wedge keeps its angle, so it grows with the strip. */
  readonly strip: Length;
  /** The wedge as it comes from that strip. */
  readonly fromStrip: WedgeSides;
  /** 0 if a wedge is longer than the strip. */
  readonly perStrip: number;
  readonly perStripHeadToTail: number;
  readonly strips: number;
  /** Fabric for the strips, and with the safety extra, not rounded. */
  readonly fabric: number;
  readonly withExtra: number;
  /** How far a corner of the ring reaches beyond the circle that touches its sides. */
  readonly beyondCircle: number;
  /** How far an arc with the outer radius rises above the straight line between its ends. */
  readonly sagitta: number;
}

export function workOutWedgeRing(input: WedgeRingInput): WedgeRingWork {
  const { wedges, outerRadius, fabricWidth } = input;
  const half = Math.PI / wedges;
  const slope = Math.tan(half);
  const { finished, cut } = wedgeWithAngle(input, half);
  const strip = lengthFromExact(cut.height, 'up', input.cutStep);
  const fromStrip = sidesOf(cut.short, cut.long + 2 * (strip - cut.height) * slope, strip);
  const first = fromStrip.long;
  const headToTail = patchesPerStrip({ first, pitch: (first + fromStrip.short) / 2 }, fabricWidth);
  const perStrip = input.isDirectional ? patchesPerStrip({ first, pitch: first }, fabricWidth) : headToTail;
  const strips = perStrip === 0 ? 0 : roundUpTo(wedges / perStrip, 1);
  const fabric = strips * strip;
  return {
    half,
    finished,
    cut,
    strip,
    fromStrip,
    perStrip,
    perStripHeadToTail: headToTail,
    strips,
    fabric,
    withExtra: fabric * (1 + input.safetyExtraPercent / 100),
    beyondCircle: outerRadius / Math.cos(half) - outerRadius,
    sagitta: outerRadius * (1 - Math.cos(half)),
  };
}

/**
 * With half angle t, radii r to the sides and seam s, the cut wedge is the finished one grown by s: its sides are s farther in
 * and out, and its legs reach s ÷ cos t farther to each side. `half` is in radians.
 */
export function wedgeWithAngle(
  {
    innerRadius,
    outerRadius,
    seamAllowance: seam,
  }: Omit<RingSize, 'wedges'> & { readonly seamAllowance: Length },
  half: number,
): { readonly finished: WedgeSides; readonly cut: WedgeSides } {
  const [slope, ofLegs] = [Math.tan(half), seam / Math.cos(half)];
  const height = outerRadius - innerRadius;
  return {
    finished: sidesOf(2 * innerRadius * slope, 2 * outerRadius * slope, height),
    cut: sidesOf(
      2 * ((innerRadius - seam) * slope + ofLegs),
      2 * ((outerRadius + seam) * slope + ofLegs),
      height + 2 * seam,
    ),
  };
}

function sidesOf(short: number, long: number, height: number): WedgeSides {
  return { short, long, height };
}

/** The long side up, from (0, 0) to the right and down. */
export function wedgePolygon({ short, long, height }: WedgeSides): Polygon {
  const inset = (long - short) / 2;
  return polygonOf([0, 0], [long, 0], [inset + short, height], [inset, height]);
}
