import { polygonOf } from '../patches/cut-shapes';
import type { PatchList } from '#core/domain/patch-list';
import type { Polygon } from '#core/geometry/polygon';
import { type Length, lengthFromExact } from '#core/units/length';
import { patchesPerStrip } from '../patches/fill-strips';
import { roundUpTo } from '#core/units/rounding';
import { arcWedge, type ArcWedge } from './arc-wedge';
import { stripSetOf, type StripSet } from './bands';
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
  /** Null if the edges are straight. */
  readonly arcs: ArcWedge | null;
  /** The straight-sided wedge around the cut one: the cut one itself if its edges are straight. */
  readonly frame: WedgeSides;
  /** Null without bands. */
  readonly set: StripSet | null;
  /** Cut width of a strip, rounded up to the cut step, or the height of a set as sewn. A wedge keeps its angle, so it grows with the strip. */
  readonly strip: Length;
  /** The wedge as it comes from that strip. */
  readonly fromStrip: WedgeSides;
  /** 0 if a wedge is longer than the strip. */
  readonly perStrip: number;
  readonly perStripHeadToTail: number;
  readonly perStripOneWay: number;
  /** Strips, or sets of strips. */
  readonly strips: number;
  /** By its name, in the order of the bands. */
  readonly fabrics: readonly FabricOfRing[];
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
  const arcs = input.edge === 'arcs' ? arcWedge(input, half) : null;
  const frame = arcs === null ? cut : frameOf(arcs, cut);
  const set = stripSetOf(input, frame.height);
  const strip = set?.height ?? lengthFromExact(frame.height, 'up', input.cutStep);
  const fromStrip = sidesOf(frame.short, frame.long + 2 * (strip - frame.height) * slope, strip);
  const first = fromStrip.long;
  const headToTail = patchesPerStrip({ first, pitch: (first + fromStrip.short) / 2 }, fabricWidth);
  const oneWay = patchesPerStrip({ first, pitch: first }, fabricWidth);
  const perStrip = input.isDirectional ? oneWay : headToTail;
  const strips = perStrip === 0 ? 0 : roundUpTo(wedges / perStrip, 1);
  return {
    half,
    finished,
    cut,
    arcs,
    frame,
    set,
    strip,
    fromStrip,
    perStrip,
    perStripHeadToTail: headToTail,
    perStripOneWay: oneWay,
    strips,
    fabrics: fabricsOf(input, { set, strip, strips }),
    beyondCircle: outerRadius / Math.cos(half) - outerRadius,
    sagitta: outerRadius * (1 - Math.cos(half)),
  };
}

/** The outer arc touches the frame's long side in its middle; the inner one ends at the corners of the short side. */
function frameOf({ cut }: ArcWedge, { long }: WedgeSides): WedgeSides {
  const { outer, inner } = cut;
  return sidesOf(inner.chord, long, outer.radius - (inner.radius - inner.sagitta));
}

/** Fabric for the strips of one name, in 1/320 mm. */
interface FabricOfRing {
  readonly name: string;
  /** What one set, or one strip, takes of it. */
  readonly ofSet: number;
  readonly length: number;
  readonly withExtra: number;
}

function fabricsOf(
  { safetyExtraPercent }: WedgeRingInput,
  { set, strip, strips }: Pick<WedgeRingWork, 'set' | 'strip' | 'strips'>,
): readonly FabricOfRing[] {
  const cuts = set === null ? [{ fabric: 'Wedges', cut: strip }] : set.bands;
  const names = [...new Set(cuts.map(({ fabric }) => fabric))];
  return names.map((name) => {
    const ofSet = cuts.reduce((sum, { fabric, cut }) => (fabric === name ? sum + cut : sum), 0);
    const length = strips * ofSet;
    return { name, ofSet, length, withExtra: length * (1 + safetyExtraPercent / 100) };
  });
}

/** The strips to cut: one size, or one for each band. */
export function patchListOf(
  { fabricWidth }: WedgeRingInput,
  { set, strip, strips }: WedgeRingWork,
): PatchList {
  const cuts = set === null ? [{ fabric: 'Wedges', cut: strip }] : set.bands;
  return cuts.map(({ fabric, cut }) => ({
    fabric,
    width: fabricWidth,
    length: cut,
    count: strips,
    mayTurn: false,
  }));
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
