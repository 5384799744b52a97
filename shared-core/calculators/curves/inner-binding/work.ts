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
  /** Stitching around the hole: the full circle, or the arc between the two sides of a slit. */
  readonly seamLine: number;
  /** The length that the ends of the strip take. */
  readonly join: number;
  /** Both sides of the slit with their corners; 0 without a slit. */
  readonly legs: number;
  readonly stripLength: number;
  readonly stripToCut: Length;
  /** Smallest square, in whole steps, with room for the strip along its diagonal. */
  readonly squareForOneStrip: Length;
  readonly strains: CurveStrains;
  readonly verdict: StrainVerdict;
  /** How far the fold really passes the seam on the back; negative if it does not reach it. */
  readonly cover: number;
  /** Strip that just wraps the edge with this seam. */
  readonly stripForSeam: number;
  /** At the limit above which it is hard. */
  readonly widestStrip: number;
  readonly smallestRadius: number;
  /** Widest front whose strip wraps the edge; 0 if there is none. */
  readonly widestFront: number;
  /** False if the hole is too small for a diagonal join, so that the ends can only be tucked. */
  readonly hasRoomForDiagonal: boolean;
}

export function workOutInnerBinding(input: InnerBindingInput): Result<InnerBindingDetails, Refusal> {
  const refusal = refusalOf(input);
  if (refusal !== null) return failure(refusal);
  const { seamAllowance: seam, stripWidth: strip, quiltThickness: thickness, fold } = input;
  const cutRadius = input.holeDiameter / 2;
  const curve = curveOf(input);
  const limits = limitsFromInputs(input);
  const strains = curveStrains(curve);
  const hardLimit = (input.grain === 'straight' ? limits.straight : limits.hard) / 100;
  const shape = { thickness, cover: input.backCover };

  const ring = ringOf(input);
  const join = joinOf(input);
  const stripLength = ring.seamLine + ring.legs + join;
  const squareSide = (stripLength + strip) / Math.SQRT2;
  return success({
    cutRadius,
    seamRadius: cutRadius + seam,
    ...ring,
    join,
    stripLength,
    stripToCut: lengthFromExact(stripLength, 'up', input.cutStep),
    squareForOneStrip: lengthFromExact(squareSide, 'up', input.squareStep),
    strains,
    verdict: strainVerdict(greatestStrain(strains), limits, input.grain),
    cover: coverOf(fold, strip, { seam, thickness }),
    stripForSeam: stripWidthFor(fold, { seam, ...shape }),
    widestStrip: widestStrip(curve, hardLimit),
    smallestRadius: smallestRadius(curve, hardLimit),
    widestFront: Math.max(0, widestSeam({ ...curve, ...shape }, hardLimit)),
    hasRoomForDiagonal: input.holeDiameter >= input.diagonalRoom,
  });
}

/** The ring in the form that the strain formulas take. */
export function curveOf(input: InnerBindingInput): BoundCurve {
  return {
    side: 'inside',
    radius: input.holeDiameter / 2,
    seam: input.seamAllowance,
    fold: input.fold,
    strip: input.stripWidth,
    cover: input.backCover,
  };
}

/**
 * Without a slit, the stitching is a full circle of radius q = r + s. The sides of a slit are stitched s away from it and meet the
 * circle asin(s/q) from the slit. The miter at each of the two corners takes the strip as far as the raw edge, which is another s.
 */
function ringOf(input: InnerBindingInput): Pick<InnerBindingDetails, 'seamLine' | 'legs'> {
  const { seamAllowance: seam, slitLength } = input;
  const radius = input.holeDiameter / 2 + seam;
  if (!input.hasSlit) return { seamLine: 2 * Math.PI * radius, legs: 0 };
  const missing = 2 * Math.asin(seam / radius);
  return {
    seamLine: (2 * Math.PI - missing) * radius,
    legs: input.bindLegs ? 2 * (slitLength + seam) : 0,
  };
}

/** A closed ring is tucked or joined diagonally; at a slit both ends are folded under. */
function joinOf(input: InnerBindingInput): number {
  if (input.hasSlit) return 2 * input.startFold;
  return input.join === 'diagonal' ? input.stripWidth : input.startFold + input.overlap + input.tuck;
}

function refusalOf(input: InnerBindingInput): Refusal | null {
  const { stripWidth: strip, seamAllowance: seam } = input;
  if (foldReach(input.fold, strip, seam) <= 0) {
    return {
      code: 'strip-too-narrow',
      field: ['stripWidth'],
      says: 'A {strip} strip is too narrow for a {seam} seam: nothing is left to fold over.',
      values: { strip: givenLength(strip), seam: givenLength(seam) },
    };
  }
  return null;
}
