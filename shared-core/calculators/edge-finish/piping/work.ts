import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import type { Outline } from '#core/domain/outline';
import { circlePerimeter } from '#core/geometry/circle';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import type { Refusal } from '#core/calculators/calculator';
import type { LengthQuantity } from '#core/calculators/explanation';
import { outlinePerimeter, outlineTightestRadius } from '#core/calculators/outline/outline-measures';
import { givenLength, lengthDown, lengthUp } from '#core/calculators/quantities';
import { cutEdgeStrips, type EdgeStrips, noFabricForStrips } from '../edge-strips';
import type { PipingInput } from './input';

/** A bend of the line of stitching, at its tightest, and how long the bent part is. In 1/320 mm. */
interface Bend {
  readonly radius: number;
  readonly length: number;
  readonly clips: number;
  /** How far a clip opens where the edge bows out; around a hole its sides overlap by as much. */
  readonly opening: number;
}

/** `needed` is the length of the strip and of the cord. */
export interface PipingDetails extends EdgeStrips {
  /** The line of stitching. */
  readonly edge: number;
  readonly bend: Bend | null;
  readonly fabricToBuy: Length;
}

export function planPiping(input: PipingInput): Result<PipingDetails, Refusal> {
  const bend = bendOf(input);
  const tightest = Math.max(input.cord, input.seamAllowance);
  if (bend !== null && bend.radius <= tightest) return failure(bendTooTight(input, bend));
  if (bend !== null && input.grain === 'straight') return failure(NEEDS_BIAS);
  const edge = edgeOf(input);
  const needed = edge + input.extra;
  const strip = stripToCut(input).rounded;
  const cut = cutEdgeStrips(input, strip, needed);
  if (cut === null) return failure(noFabricForStrips(input, strip));
  return success({ edge, bend, ...cut, fabricToBuy: fabricToBuy(input, cut.fabric).rounded });
}

/** Once around the cord and a seam allowance on both sides. */
export function stripToCut({ cord, seamAllowance, cutStep }: PipingInput): LengthQuantity {
  return lengthUp(Math.PI * cord + 2 * seamAllowance, cutStep);
}

/** The outline is the finished edge, where the piping is sewn. A hole is measured at its cut edge, so its seam is outside of that. */
function edgeOf({ outline, hole, around, seamAllowance }: PipingInput): number {
  return around === 'hole' && hole !== null
    ? circlePerimeter(hole.diameter / 2 + seamAllowance)
    : outlinePerimeter(outline);
}

/**
 * On a bend of radius R the stitching is on the bend and the cut edges are s away from it, so between two clips p apart they are
 * longer or shorter by p · s ÷ R.
 */
function bendOf(input: PipingInput): Bend | null {
  const { outline, hole, around, seamAllowance: seam, clipEvery } = input;
  const isHole = around === 'hole' && hole !== null;
  const radius = isHole ? hole.diameter / 2 + seam : outlineTightestRadius(outline);
  if (radius === null) return null;
  const length = isHole ? edgeOf(input) : bentLength(outline, radius);
  return {
    radius,
    length,
    clips: length / clipEvery,
    opening: (clipEvery * seam) / radius,
  };
}

/** Of rounded corners, the four quarter circles. */
function bentLength(outline: Outline, radius: number): number {
  return outline.shape === 'rounded' ? circlePerimeter(radius) : outlinePerimeter(outline);
}

function bendTooTight({ cord, seamAllowance }: PipingInput, { radius }: Bend): Refusal {
  return {
    code: 'bend-too-tight',
    field: ['cord'],
    says: 'The edge bends to a radius of {radius}. A cord {cord} thick with a seam allowance of {seam} doesn’t go around that.',
    values: { radius: lengthDown(radius), cord: givenLength(cord), seam: givenLength(seamAllowance) },
  };
}

const NEEDS_BIAS: Refusal = {
  code: 'needs-bias',
  field: ['grain'],
  says: 'This edge is curved, and a strip on the straight grain doesn’t bend with the cord. Cut it on the bias.',
  values: {},
};
