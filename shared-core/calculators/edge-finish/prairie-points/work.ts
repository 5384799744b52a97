import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import { roundDownTo, roundUpTo } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import type { LengthQuantity } from '#core/calculators/explanation';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { outlineSides } from '#core/calculators/outline/outline-sides';
import { givenLength, lengthDown, lengthUp } from '#core/calculators/quantities';
import type { PrairiePointsInput } from './input';

/** The points along one side, or all around a curve. Lengths in 1/320 mm. */
export interface PointsOfSide {
  readonly length: number;
  readonly points: number;
  /** From one point to the next. The length of the side where there is one point only. */
  readonly pitch: number;
  readonly overlap: number;
}

/**
 * A square folded twice on its diagonals, or in half and then to the middle, is a triangle with the square's side as its base and
 * half of that as its height. Its slopes are at 45°, so at the seam its base is shorter by two seam allowances:
 *
 *            /\            height h above the seam
 *           /  \
 *      ----/----\----      the seam, where the base is b = c - 2s
 *         /______\         cut edges, base c
 */
export interface PrairiePointsDetails {
  /** Side of the square to cut. */
  readonly square: Length;
  /** What the cut square gives, a little more than asked where the cut was rounded up. */
  readonly height: number;
  readonly base: number;
  /** A closed curve has one entry, without corners. */
  readonly isCurve: boolean;
  readonly sides: readonly PointsOfSide[];
  readonly points: number;
  readonly perStrip: number;
  readonly strips: number;
  readonly fabric: number;
  readonly fabricToBuy: Length;
}

/** More points than this are a slip in the input. */
const MOST_POINTS = 5_000;

export function planPrairiePoints(input: PrairiePointsInput): Result<PrairiePointsDetails, Refusal> {
  const square = squareToCut(input).rounded;
  const base = square - 2 * input.seamAllowance;
  const step = base - input.overlap;
  if (step <= 0) return failure(overlapTooLarge(input, base));
  const straight = outlineSides(input.outline);
  const short = straight.find((side) => side < base);
  if (short !== undefined) return failure(sideTooShort(short, base));
  const isCurve = straight.length === 0;
  const edge = outlinePerimeter(input.outline);
  if (isCurve && edge < 3 * base) return failure(sideTooShort(edge / 3, base));
  const sides = isCurve
    ? [aroundCurve(edge, base, step)]
    : straight.map((side) => alongSide(side, base, step));
  const points = sides.reduce((sum, side) => sum + side.points, 0);
  if (points > MOST_POINTS) return failure(TOO_MANY_POINTS);
  const perStrip = roundDownTo(input.fabricWidth / square, 1);
  if (perStrip === 0) return failure(squareTooLarge(input, square));
  const strips = roundUpTo(points / perStrip, 1);
  const fabric = strips * square;
  return success({
    square,
    height: square / 2 - input.seamAllowance,
    base,
    isCurve,
    sides,
    points,
    perStrip,
    strips,
    fabric,
    fabricToBuy: fabricToBuy(input, fabric).rounded,
  });
}

export function squareToCut({ height, seamAllowance, cutStep }: PrairiePointsInput): LengthQuantity {
  return lengthUp(2 * height + 2 * seamAllowance, cutStep);
}

/** The first point begins at one corner and the last ends at the next, so that two meet at every corner. */
function alongSide(length: number, base: number, step: number): PointsOfSide {
  const points = roundUpTo((length - base) / step, 1) + 1;
  const pitch = points === 1 ? length : (length - base) / (points - 1);
  return { length, points, pitch, overlap: points === 1 ? 0 : base - pitch };
}

function aroundCurve(length: number, base: number, step: number): PointsOfSide {
  const points = roundUpTo(length / step, 1);
  return { length, points, pitch: length / points, overlap: base - length / points };
}

function overlapTooLarge({ overlap }: PrairiePointsInput, base: number): Refusal {
  return {
    code: 'overlap-too-large',
    field: ['overlap'],
    says: 'A point is {base} wide at the seam, so it can’t overlap the next by {overlap}.',
    values: { base: lengthDown(base), overlap: givenLength(overlap) },
  };
}

function sideTooShort(side: number, base: number): Refusal {
  return {
    code: 'side-too-short',
    field: ['height'],
    says: 'A point is {base} wide at the seam and doesn’t fit along {side} of edge. Make the points lower.',
    values: { base: lengthUp(base), side: lengthDown(side) },
  };
}

function squareTooLarge({ fabricWidth }: PrairiePointsInput, square: Length): Refusal {
  return {
    code: 'square-too-large',
    field: ['height'],
    says: 'A square of {square} is larger than fabric {width} wide.',
    values: { square: givenLength(square), width: givenLength(fabricWidth) },
  };
}

const TOO_MANY_POINTS: Refusal = {
  code: 'too-many-points',
  field: ['overlap'],
  says: 'That is more than 5,000 points. Make them higher, or let them overlap less.',
  values: {},
};
