import { type BindingFold, foldReach } from '../binding/strip-width';

/** inside: the edge of a hole; outside: the edge of a round project. */
type CurveSide = 'inside' | 'outside';
export type Grain = 'bias' | 'straight';

/** A strip on a curved edge of radius `radius` (of the cut edge); all in 1/320 mm. */
export interface BoundCurve {
  readonly side: CurveSide;
  readonly radius: number;
  readonly seam: number;
  readonly fold: BindingFold;
  readonly strip: number;
  /** How far the fold passes the seam on the back. */
  readonly cover: number;
}

/** How far a strip that is sewn on without stretching has to stretch or be eased, as shares of its length: 0.08 is 8%. */
export interface CurveStrains {
  /** The fold, laid flat while the seam is sewn. */
  readonly sewing: number;
  /** The fabric at the edge, once it is folded over. */
  readonly edge: number;
  /** The fold on the back, once it is folded over. */
  readonly back: number;
}

/** In percent, ascending. Up to `comfortable` a strip goes around easily; above `hard` it resists; above `impossible` it cannot lie flat. */
export interface StrainLimits {
  readonly comfortable: number;
  readonly hard: number;
  readonly impossible: number;
  /** The most that straight grain gives. */
  readonly straight: number;
}

export type StrainVerdict = 'comfortable' | 'with care' | 'hard' | 'impossible';

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
    back: curve.cover / base,
  };
}

export function greatestStrain({ sewing, edge, back }: CurveStrains): number {
  return Math.max(sewing, edge, back);
}

/** Straight grain has no middle ground: within its limit it is comfortable, above it impossible. */
export function strainVerdict(strain: number, limits: StrainLimits, grain: Grain): StrainVerdict {
  const percent = 100 * strain;
  if (grain === 'straight') return percent <= limits.straight ? 'comfortable' : 'impossible';
  if (percent <= limits.comfortable) return 'comfortable';
  if (percent <= limits.hard) return 'with care';
  return percent <= limits.impossible ? 'hard' : 'impossible';
}

/** Widest strip whose fold gives no more than `most` (a share, such as 0.16) while it is sewn. */
export function widestStrip(curve: Omit<BoundCurve, 'strip' | 'cover'>, most: number): number {
  const reach = most * seamRadius(curve);
  return curve.fold === 'double' ? 2 * (curve.seam + reach) : 2 * curve.seam + reach;
}

/** Smallest radius of the cut edge on which all three strains stay within `most`; never below zero. */
export function smallestRadius(curve: Omit<BoundCurve, 'radius'>, most: number): number {
  const reach = Math.max(foldReach(curve.fold, curve.strip, curve.seam), curve.seam, curve.cover);
  const base = reach / most;
  return Math.max(0, curve.side === 'inside' ? base - curve.seam : base + curve.seam);
}

/**
 * Widest seam (and so front) for which the strip that just wraps the edge gives no more than `most`. Its fold is 2s + t + c from
 * the seam, in single and double fold. 0 or negative if no binding goes around.
 */
export function widestSeam(
  curve: Pick<BoundCurve, 'side' | 'radius' | 'cover'> & { readonly thickness: number },
  most: number,
): number {
  const spare = most * curve.radius - curve.thickness - curve.cover;
  return spare / (curve.side === 'inside' ? 2 - most : 2 + most);
}
