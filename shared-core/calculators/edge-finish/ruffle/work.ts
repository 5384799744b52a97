import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import { LONGEST_BINDING } from '#core/calculators/binding/binding-fields';
import { stripsNeeded } from '#core/calculators/binding/strip-joins';
import type { Refusal } from '#core/calculators/calculator';
import type { LengthQuantity } from '#core/calculators/explanation';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { givenLength, lengthUp } from '#core/calculators/quantities';
import type { RuffleInput } from './input';

/**
 * A knife pleat is folded to one side and takes twice its depth; a box pleat is two that face each other and takes four times it.
 *
 *      ____          ____           from the side, the seam at the left and right:
 *     ____/____     ____\_/____     a knife pleat and a box pleat
 */
interface Pleats {
  readonly count: number;
  readonly depth: Length;
  /** How many times its depth one pleat takes. */
  readonly folds: 2 | 4;
  readonly pitch: number;
}

/** Lengths in 1/320 mm, as doubles unless they are rounded. */
export interface RuffleDetails {
  readonly edge: number;
  readonly pleats: Pleats | null;
  /** The strip before it is gathered or pleated, without joins and ends. */
  readonly flat: number;
  readonly fullness: number;
  /** What is left of the fullness at the free edge; null along one straight edge, where it stays the same. */
  readonly fullnessAtFreeEdge: number | null;
  readonly cutWidth: Length;
  /** With what the ends take: one more join where the strip closes in a ring, or a hem at each end. */
  readonly needed: number;
  readonly strips: number;
  readonly fabric: number;
  readonly fabricToBuy: Length;
}

/** More strips than this are a slip in the input. */
const MOST_STRIPS = 400;

export function planRuffle(input: RuffleInput): Result<RuffleDetails, Refusal> {
  const isRing = input.around === 'all-around';
  const edge = isRing ? outlinePerimeter(input.outline) : input.oneEdge;
  const pleats = pleatsOf(input, edge);
  const flat = flatLength(input, edge, pleats);
  if (flat > LONGEST_BINDING) return failure(TOO_MUCH_STRIP);
  const cutWidth = cutWidthOf(input).rounded;
  const join = joinOf(input);
  const needed = flat + endsOf(input);
  const strips = stripsNeeded(needed, input.fabricWidth, join);
  if (strips === null || strips > MOST_STRIPS) return failure(fabricTooNarrow(input));
  const fabric = strips * cutWidth;
  return success({
    edge,
    pleats,
    flat,
    fullness: flat / edge,
    fullnessAtFreeEdge: isRing ? flat / (edge + 2 * Math.PI * input.width) : null,
    cutWidth,
    needed,
    strips,
    fabric,
    fabricToBuy: fabricToBuy(input, fabric).rounded,
  });
}

export function cutWidthOf({ width, layers, hem, seamAllowance, cutStep }: RuffleInput): LengthQuantity {
  const exact = layers === 'folded' ? 2 * width + 2 * seamAllowance : width + seamAllowance + hem;
  return lengthUp(exact, cutStep);
}

/** What a straight join takes. */
export function joinOf({ seamAllowance }: RuffleInput): number {
  return 2 * seamAllowance;
}

export function endsOf(input: RuffleInput): number {
  return input.around === 'all-around' ? joinOf(input) : 2 * input.hem;
}

function pleatsOf({ ruffle }: RuffleInput, edge: number): Pleats | null {
  if (ruffle.style === 'gathers') return null;
  const count = Math.max(1, roundUpTo(edge / ruffle.spacing, 1));
  return { count, depth: ruffle.depth, folds: ruffle.style === 'knife-pleats' ? 2 : 4, pitch: edge / count };
}

function flatLength({ ruffle }: RuffleInput, edge: number, pleats: Pleats | null): number {
  if (pleats !== null) return edge + pleats.folds * pleats.count * pleats.depth;
  return ruffle.style === 'gathers' ? ruffle.fullness * edge : edge;
}

const TOO_MUCH_STRIP: Refusal = {
  code: 'too-much-strip',
  field: ['ruffle'],
  says: 'That takes more than {longest} of strip. Make it less full, or the edge shorter.',
  values: { longest: givenLength(LONGEST_BINDING) },
};

function fabricTooNarrow({ fabricWidth }: RuffleInput): Refusal {
  return {
    code: 'strips-too-short',
    field: ['fabricWidth'],
    says: 'Strips across fabric {width} wide don’t reach: each join takes nearly as much as a strip adds, or there would be hundreds.',
    values: { width: givenLength(fabricWidth) },
  };
}
