import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact } from '#core/units/length';
import { type BiasFabricPlan, planBiasFabric } from '#core/calculators/binding/bias-fabric';
import { coverOf, foldReach, stripWidthFor } from '#core/calculators/binding/strip-width';
import type { Refusal } from '#core/calculators/calculator';
import { givenLength } from '#core/calculators/quantities';
import { limitsFromInputs, straightGrainRefusal } from '../curve-fields';
import { type InnerBindingInput, usableWidth } from './input';
import {
  type BoundCurve,
  type CurveStrains,
  curveStrains,
  smallestRadius,
  type StrainVerdict,
  strainVerdict,
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
  /** Bias to cut, and one straight strip for each side of the slit (0 if all of it is bias). */
  readonly biasLength: number;
  readonly legStrip: number;
  /** Fabric for the bias strip, within the usable width. */
  readonly bias: BiasFabricPlan;
  /** Smallest square, in whole steps, with room for the strip along its diagonal; null if it is wider than the fabric. */
  readonly squareForOneStrip: Length | null;
  readonly strains: CurveStrains;
  readonly verdict: StrainVerdict;
  /** How far the fold really passes the seam on the back; negative if it does not reach it. */
  readonly cover: number;
  /** Strip that just wraps the edge with this seam. */
  readonly stripForSeam: number;
  /** At the limit above which it is hard; null if this seam gives more at the edge. */
  readonly widestStrip: number | null;
  readonly smallestRadius: number;
  /** False if the hole is so small that a diagonal join is hard to sew in place. */
  readonly hasRoomForDiagonal: boolean;
}

export function workOutInnerBinding(input: InnerBindingInput): Result<InnerBindingDetails, Refusal> {
  const refusal = refusalOf(input);
  if (refusal !== null) return failure(refusal);
  const ring = ringOf(input);
  const join = joinOf(input);
  const stripLength = ring.seamLine + ring.legs + join;
  const cut = cutLengths(input, { ...ring, stripLength });
  const bias = planBiasFabric({
    needed: cut.biasLength,
    strip: input.stripWidth,
    seam: input.seamAllowance,
    squareStep: input.squareStep,
    fabricWidth: usableWidth(input),
    shortest: 3 * input.stripWidth,
  });
  if (bias === null) return failure(fabricTooNarrow(input));
  return success({
    ...ring,
    join,
    stripLength,
    stripToCut: lengthFromExact(stripLength, 'up', input.cutStep),
    ...cut,
    bias,
    squareForOneStrip: squareFor(input, cut.biasLength),
    ...fitOf(input),
    hasRoomForDiagonal: input.holeDiameter >= input.diagonalRoom,
  });
}

function fitOf(input: InnerBindingInput) {
  const { seamAllowance: seam, stripWidth: strip, quiltThickness: thickness, fold } = input;
  const curve = curveOf(input);
  const limits = limitsFromInputs(input);
  const strains = curveStrains(curve);
  return {
    cutRadius: input.holeDiameter / 2,
    seamRadius: input.holeDiameter / 2 + seam,
    strains,
    verdict: strainVerdict(strains, limits),
    cover: coverOf(fold, strip, { seam, thickness }),
    stripForSeam: stripWidthFor(fold, { seam, thickness, cover: input.backCover }),
    widestStrip: widestStrip(curve, limits.hard / 100),
    smallestRadius: smallestRadius(curve, limits.hard / 100),
  };
}

/**
 * Straight strips for the legs meet the bias in two diagonal joins. Each takes a strip width, half of it from either side:
 * together the three are two strip widths longer than one strip.
 */
function cutLengths(
  input: InnerBindingInput,
  lengths: { readonly seamLine: number; readonly legs: number; readonly stripLength: number },
): Pick<InnerBindingDetails, 'biasLength' | 'legStrip'> {
  if (lengths.legs === 0 || input.legGrain !== 'straight') {
    return { biasLength: lengths.stripLength, legStrip: 0 };
  }
  return {
    biasLength: lengths.seamLine + input.stripWidth,
    legStrip: lengths.legs / 2 + input.startFold + input.stripWidth / 2,
  };
}

/** A strip with square ends along the diagonal of a square of side a is a√2 − w long. */
function squareFor(input: InnerBindingInput, biasLength: number): Length | null {
  const side = lengthFromExact((biasLength + input.stripWidth) / Math.SQRT2, 'up', input.squareStep);
  return side <= usableWidth(input) ? side : null;
}

/** The ring in the form that the strain formulas take. */
export function curveOf(input: InnerBindingInput): BoundCurve {
  return {
    side: 'inside',
    radius: input.holeDiameter / 2,
    seam: input.seamAllowance,
    fold: input.fold,
    strip: input.stripWidth,
    thickness: input.quiltThickness,
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
  return straightGrainRefusal(input.grain);
}

function fabricTooNarrow(input: InnerBindingInput): Refusal {
  return {
    code: 'fabric-too-narrow',
    field: ['fabricWidth'],
    says: 'Fabric {width} wide does not give a bias strip {strip} wide that is long enough.',
    values: { width: givenLength(usableWidth(input)), strip: givenLength(input.stripWidth) },
  };
}
