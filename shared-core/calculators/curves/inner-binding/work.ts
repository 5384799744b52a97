import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact } from '#core/units/length';
import { coverOf, foldReach, stripWidthFor } from '#core/calculators/binding/strip-width';
import type { Refusal } from '#core/calculators/calculator';
import { givenLength } from '#core/calculators/quantities';
import { limitsFromInputs } from '../curve-fields';
import type { InnerBindingInput } from './input';
import {
  type BoundCurve,
  type CurveStrains,
  curveStrains,
  greatestStrain,
  smallestRadius,
  type StrainVerdict,
  strainVerdict,
  widestSeam,
  widestStrip,
} from '../strain';

export interface InnerBindingDetails {
  readonly cutRadius: number;
  readonly seamRadius: number;
  /** Stitching round the hole: the full circle, or the arc between the legs of a slit. */
  readonly seamLine: number;
  /** What the ends of the strip take. */
  readonly joint: number;
  /** Both legs of the slit with their corners, 0 without a slit. */
  readonly legs: number;
  readonly stripLength: number;
  readonly stripToCut: Length;
  /** Smallest square, in whole steps, that gives the strip in one piece along its diagonal. */
  readonly squareForOneStrip: Length;
  readonly strains: CurveStrains;
  readonly verdict: StrainVerdict;
  /** How far the fold really passes the seam on the back; negative where it falls short. */
  readonly cover: number;
  /** Strip that just wraps the edge with this seam. */
  readonly stripForSeam: number;
  /** At the limit from which it is hard: widest strip, smallest radius, widest front that wraps (0 where none does). */
  readonly widestStrip: number;
  readonly smallestRadius: number;
  readonly widestFront: number;
  /** False where the hole is too small for a diagonal joint, so that tuck and overlap is what is left. */
  readonly hasRoomForDiagonal: boolean;
}

export function planInnerBinding(asked: InnerBindingInput): Result<InnerBindingDetails, Refusal> {
  const refusal = refusalOf(asked);
  if (refusal !== null) return failure(refusal);
  const { seamAllowance: seam, stripWidth: strip, quiltThickness: thickness, fold } = asked;
  const cutRadius = asked.holeDiameter / 2;
  const curve = curveOf(asked);
  const limits = limitsFromInputs(asked);
  const strains = curveStrains(curve);
  const hardLimit = (asked.grain === 'straight' ? limits.straight : limits.hard) / 100;
  const shape = { thickness, cover: asked.backCover };

  const ring = ringOf(asked);
  const joint = jointOf(asked);
  const stripLength = ring.seamLine + ring.legs + joint;
  const squareSide = (stripLength + strip) / Math.SQRT2;
  return success({
    cutRadius,
    seamRadius: cutRadius + seam,
    ...ring,
    joint,
    stripLength,
    stripToCut: lengthFromExact(stripLength, 'up', asked.cutStep),
    squareForOneStrip: lengthFromExact(squareSide, 'up', asked.squareStep),
    strains,
    verdict: strainVerdict(greatestStrain(strains), limits, asked.grain),
    cover: coverOf(fold, strip, { seam, thickness }),
    stripForSeam: stripWidthFor(fold, { seam, ...shape }),
    widestStrip: widestStrip(curve, hardLimit),
    smallestRadius: smallestRadius(curve, hardLimit),
    widestFront: Math.max(0, widestSeam({ ...curve, ...shape }, hardLimit)),
    hasRoomForDiagonal: asked.holeDiameter >= asked.diagonalRoom,
  });
}

/** The ring as the strain formulas know it. */
export function curveOf(asked: InnerBindingInput): BoundCurve {
  return {
    side: 'inside',
    radius: asked.holeDiameter / 2,
    seam: asked.seamAllowance,
    fold: asked.fold,
    strip: asked.stripWidth,
    cover: asked.backCover,
  };
}

/**
 * Without a slit the stitching is a full circle of radius q = r + s. Legs stitched s beside the slit meet it asin(s/q) from the
 * slit on either side; the miter at each of the two corners takes the strip as far as the raw edge, another s on the ring's side.
 */
function ringOf(asked: InnerBindingInput): Pick<InnerBindingDetails, 'seamLine' | 'legs'> {
  const { seamAllowance: seam, slitLength } = asked;
  const radius = asked.holeDiameter / 2 + seam;
  if (!asked.hasSlit) return { seamLine: 2 * Math.PI * radius, legs: 0 };
  const missing = 2 * Math.asin(seam / radius);
  return {
    seamLine: (2 * Math.PI - missing) * radius,
    legs: asked.bindLegs ? 2 * (slitLength + seam) : 0,
  };
}

/** A closed ring folds its start and lets the end overlap and tuck in; a diagonal joint takes a strip width; open ends fold under. */
function jointOf(asked: InnerBindingInput): number {
  if (asked.hasSlit) return 2 * asked.startFold;
  return asked.joint === 'diagonal' ? asked.stripWidth : asked.startFold + asked.overlap + asked.tuck;
}

function refusalOf(asked: InnerBindingInput): Refusal | null {
  const { stripWidth: strip, seamAllowance: seam } = asked;
  if (foldReach(asked.fold, strip, seam) <= 0) {
    return {
      code: 'strip-too-narrow',
      field: ['stripWidth'],
      says: 'A strip {strip} wide is used up by a seam of {seam}: nothing is left to turn.',
      values: { strip: givenLength(strip), seam: givenLength(seam) },
    };
  }
  return null;
}
