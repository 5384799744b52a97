import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { circlePerimeter } from '#core/geometry/circle';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import { limitsFromInputs } from '#core/calculators/curves/curve-fields';
import { type StrainVerdict, strainVerdict } from '#core/calculators/curves/strain';
import type { Refusal } from '#core/calculators/calculator';
import {
  outlineBounds,
  outlineCornerAngles,
  outlinePerimeter,
  outlineTightestRadius,
} from '#core/calculators/outline/outline-measures';
import { givenLength, lengthUp } from '#core/calculators/quantities';
import { cutEdgeStrips, type EdgeStrips, noFabricForStrips } from '../edge-strips';
import type { FacingInput } from './input';

/** A curve of the stitching, at its tightest. Lengths in 1/320 mm. */
export interface FacedCurve {
  readonly radius: number;
  /** How far a clip opens around a hole, or a notch has to be wide on an outer edge. */
  readonly opening: number;
  readonly clips: number;
}

export interface FacingDetails {
  /** The line of stitching, which is the finished edge. */
  readonly line: number;
  readonly curve: FacedCurve | null;
  /** The one patch of a shaped facing. */
  readonly patch: { readonly width: Length; readonly length: Length } | null;
  readonly strips: EdgeStrips | null;
  /** What a strip on a curve has to give where it is sewn down, as a share, and what that means; null for any other. */
  readonly give: { readonly share: number; readonly verdict: StrainVerdict } | null;
  readonly fabric: number;
  readonly fabricToBuy: Length;
}

export function planFacing(input: FacingInput): Result<FacingDetails, Refusal> {
  const line = lineOf(input);
  const curve = curveOf(input, line);
  if (curve !== null && curve.radius <= reachInward(input)) return failure(tooTight(input, curve));
  return input.way === 'shaped' ? shapedFacing(input, line, curve) : stripFacing(input, line, curve);
}

/** The stitching runs a seam outside the cut edge of a hole, and along the finished edge of the outside. */
function lineOf({ around, hole, outline, seamAllowance }: FacingInput): number {
  return around === 'hole' && hole !== null
    ? circlePerimeter(hole.diameter / 2 + seamAllowance)
    : outlinePerimeter(outline);
}

/** Turned, the cut edge that was s on one side of the stitching lies s on its other side. */
function curveOf({ around, hole, outline, seamAllowance: seam, clipEvery }: FacingInput, line: number) {
  const radius =
    around === 'hole' && hole !== null ? hole.diameter / 2 + seam : outlineTightestRadius(outline);
  if (radius === null) return null;
  const bent = around === 'outside' && outline.shape === 'rounded' ? circlePerimeter(radius) : line;
  return { radius, opening: (2 * clipEvery * seam) / radius, clips: bent / clipEvery };
}

/** How far a facing reaches inside a curve: around a hole only the seam does, on an outer edge the whole facing. */
function reachInward({ around, width, turnedEdge, seamAllowance }: FacingInput): number {
  return around === 'hole' ? seamAllowance : width + turnedEdge;
}

/** A patch that holds the facing with its turned edge and the seam; its inside is cut away. */
function shapedFacing(
  input: FacingInput,
  line: number,
  curve: FacedCurve | null,
): Result<FacingDetails, Refusal> {
  const { outline, hole, around, cutStep, seamAllowance, fabricWidth } = input;
  const bounds = outlineBounds(outline);
  const side = hole === null ? 0 : facingPatchSide(hole.diameter / 2, input);
  const [width, length] =
    around === 'hole' ? [side, side] : [bounds.width + 2 * seamAllowance, bounds.length + 2 * seamAllowance];
  const patch = { width: lengthUp(width, cutStep).rounded, length: lengthUp(length, cutStep).rounded };
  const laid = patchAsLaid(patch, fabricWidth);
  if (laid.width > fabricWidth) return failure(patchTooWide(input, patch.width));
  return success({ line, curve, patch, strips: null, give: null, ...bought(input, laid.length) });
}

type Patch = NonNullable<FacingDetails['patch']>;

/** Its longer side lies across the fabric where it fits, so that less is bought. */
export function patchAsLaid({ width, length }: Patch, fabricWidth: Length): Patch {
  const [short, long] = width < length ? [width, length] : [length, width];
  return long <= fabricWidth ? { width: long, length: short } : { width: short, length: long };
}

/** Across a round patch that faces a hole of this radius, cut edge to cut edge. Not rounded. */
export function facingPatchSide(
  radius: number,
  { seamAllowance, width, turnedEdge }: Readonly<Record<'seamAllowance' | 'width' | 'turnedEdge', number>>,
): number {
  return 2 * (radius + seamAllowance + width + turnedEdge);
}

function stripFacing(
  input: FacingInput,
  line: number,
  curve: FacedCurve | null,
): Result<FacingDetails, Refusal> {
  const { width, turnedEdge, seamAllowance, cutStep } = input;
  const strip = lengthUp(width + turnedEdge + seamAllowance, cutStep).rounded;
  const grain = curve === null ? 'straight' : 'bias';
  const strips = cutEdgeStrips({ ...input, grain }, strip, line + extraOf(input, curve));
  if (strips === null) return failure(noFabricForStrips(input, strip));
  const share = curve === null ? null : width / curve.radius;
  const limits = limitsFromInputs(input);
  return success({
    line,
    curve,
    patch: null,
    strips,
    give: share === null ? null : { share, verdict: strainVerdict({ edge: 0, back: share }, limits) },
    ...bought(input, strips.fabric),
  });
}

/** Around a curve the ends of one strip are joined; straight sides have strips of their own. */
export function extraOf(input: FacingInput, curve: FacedCurve | null): number {
  return curve === null ? 2 * sidesOf(input) * input.endExtra : input.extra;
}

export function sidesOf({ outline }: Pick<FacingInput, 'outline'>): number {
  return outline.shape === 'sides' ? outline.sides.length : outlineCornerAngles(outline).length;
}

function bought(input: FacingInput, fabric: number) {
  return { fabric, fabricToBuy: fabricToBuy(input, fabric).rounded };
}

function tooTight({ around }: FacingInput, { radius }: FacedCurve): Refusal {
  const values = { radius: lengthUp(radius) };
  return around === 'hole'
    ? {
        code: 'bend-too-tight',
        field: ['seamAllowance'],
        says: 'Around a stitching line with a radius of {radius} there is no room for this seam allowance.',
        values,
      }
    : {
        code: 'bend-too-tight',
        field: ['width'],
        says: 'The edge bends to a radius of {radius}. A facing this wide reaches past the middle of that bend. Make it narrower.',
        values,
      };
}

function patchTooWide({ fabricWidth }: FacingInput, width: Length): Refusal {
  return {
    code: 'no-fabric',
    field: ['way'],
    says: 'A shaped facing takes one patch {width} wide, and the fabric is {fabric} wide. Cut strips, or use wider fabric.',
    values: { width: givenLength(width), fabric: givenLength(fabricWidth) },
  };
}
