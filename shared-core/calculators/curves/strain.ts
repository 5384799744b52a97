import { type BindingFold, coverOf, foldReach } from '../binding/strip-width';

/** inside: the edge of a hole; outside: the edge of a round project. */
type CurveSide = 'inside' | 'outside';

/** A bias strip on a curved edge of radius `radius` (of the cut edge); all in 1/320 mm. */
export interface BoundCurve {
  readonly side: CurveSide;
  readonly radius: number;
  readonly seam: number;
  readonly fold: BindingFold;
  readonly strip: number;
  /** Of the project at its edge. */
  readonly thickness: number;
}

/** How far a strip that is sewn on without stretching has to stretch or be eased, as shares of its length: 0.08 is 8%. */
export interface CurveStrains {
  /** While it is sewn: what the fold would have to give to lie flat. It need not, because bias stands up. */
  readonly sewing: number;
  /** Turned: the fabric at the edge. */
  readonly edge: number;
  /** Turned: the fold on the back. Negative if it stops before the stitching. */
  readonly back: number;
}

/** In percent, ascending. Once turned, a strip goes around easily up to `comfortable`, with care up to `hard`, and hardly up to `impossible`. */
export interface StrainLimits {
  readonly comfortable: number;
  readonly hard: number;
  readonly impossible: number;
}

/** too narrow: the fold does not reach the stitching on the back. too tight: no common bias gives that much. */
export type StrainVerdict = 'comfortable' | 'with care' | 'hard' | 'too tight' | 'too narrow';

/** Radius of the stitching: r + s inside a hole, R - s on an outer edge. */
export function seamRadius({ side, radius, seam }: Pick<BoundCurve, 'side' | 'radius' | 'seam'>): number {
  return side === 'inside' ? radius + seam : radius - seam;
}

/** The radius of the stitching must be above zero. */
export function curveStrains(curve: BoundCurve): CurveStrains {
  const base = seamRadius(curve);
  return {
    sewing: foldReach(curve.fold, curve.strip, curve.seam) / base,
    edge: curve.seam / base,
    back: coverOf(curve.fold, curve.strip, curve) / base,
  };
}

/** The most that the strip has to give once it is turned and sewn down: this decides whether it goes around. */
export function turnedStrain({ edge, back }: Pick<CurveStrains, 'edge' | 'back'>): number {
  return Math.max(edge, back);
}

/** Of the turned strip alone: how much it stands up while it is sewn forbids nothing. */
export function strainVerdict(
  strains: Pick<CurveStrains, 'edge' | 'back'>,
  limits: StrainLimits,
): StrainVerdict {
  if (strains.back < 0) return 'too narrow';
  const percent = 100 * turnedStrain(strains);
  if (percent <= limits.comfortable) return 'comfortable';
  if (percent <= limits.hard) return 'with care';
  return percent <= limits.impossible ? 'hard' : 'too tight';
}

/** Narrowest strip whose fold reaches the stitching on the back. */
export function narrowestStrip({ fold, seam, thickness }: Omit<BoundCurve, 'strip'>): number {
  return fold === 'double' ? 6 * seam + 2 * thickness : 4 * seam + thickness;
}

/** Widest strip that, once turned, gives no more than `most` (a share, such as 0.16); null if this seam gives more at the edge. */
export function widestStrip(curve: Omit<BoundCurve, 'strip'>, most: number): number | null {
  const cover = most * seamRadius(curve);
  if (curve.seam > cover) return null;
  return narrowestStrip(curve) + (curve.fold === 'double' ? 2 : 1) * cover;
}

/** Smallest radius of the cut edge on which the turned strip gives no more than `most`; never below zero. */
export function smallestRadius(curve: Omit<BoundCurve, 'radius'>, most: number): number {
  const base = Math.max(curve.seam, coverOf(curve.fold, curve.strip, curve)) / most;
  return Math.max(0, curve.side === 'inside' ? base - curve.seam : base + curve.seam);
}

export interface SeamRange {
  readonly least: number;
  readonly most: number;
}

/**
 * The seams with which this strip reaches the stitching and gives no more than `most`; null if there are none. A wider seam
 * leaves less on the back and more at the edge.
 */
export function seamsForStrip(curve: Omit<BoundCurve, 'seam'>, most: number): SeamRange | null {
  const turns = curve.fold === 'double' ? 3 : 4;
  const room = (curve.fold === 'double' ? curve.strip / 2 : curve.strip) - curve.thickness;
  const sign = curve.side === 'inside' ? 1 : -1;
  const least = Math.max(0, (room - most * curve.radius) / (turns + sign * most));
  const widest = Math.min(room / turns, widestEdge(curve, most));
  return widest > 0 && least <= widest ? { least, most: widest } : null;
}

/** Widest seam (and so front) for which the strip that wraps the edge with this cover gives no more than `most`; 0 if none does. */
export function widestSeam(
  curve: Pick<BoundCurve, 'side' | 'radius'> & { readonly cover: number },
  most: number,
): number {
  const edge = widestEdge(curve, most);
  if (curve.side === 'inside') return curve.cover <= edge ? edge : 0;
  return Math.max(0, Math.min(edge, curve.radius - curve.cover / most));
}

/** The seam whose fabric at the edge gives just `most`: s = m(r + s) in a hole, s = m(R - s) on an outer edge. */
function widestEdge({ side, radius }: Pick<BoundCurve, 'side' | 'radius'>, most: number): number {
  return (most * radius) / (side === 'inside' ? 1 - most : 1 + most);
}
