import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import type { Refusal } from '#core/calculators/calculator';
import { greatestStrain, curveStrains } from '#core/calculators/curves/strain';
import {
  outlinePerimeter,
  outlineSlit,
  outlineTightestRadius,
} from '#core/calculators/outline/outline-measures';
import { givenLength } from '#core/calculators/quantities';
import { cornerExtra } from './corner-miters';
import { type BindingWay, bindingWays } from './ways';
import type { OuterBindingInput } from './input';
import { joinCost, joinedLength, stripsNeeded } from '../strip-joins';
import { coverOf, frontWidthOf, stripWidthFor } from '../strip-width';

export interface OuterBindingDetails {
  /** Length of the outline, with both sides of a slit that is bound with the outside. */
  readonly edge: number;
  /** One side of a slit that is bound with the outside, else 0. */
  readonly slit: number;
  readonly cornerExtra: number;
  readonly needed: number;
  readonly strips: number;
  readonly given: number;
  /** Length of fabric for straight strips: strips times width. */
  readonly fabric: number;
  readonly fabricToBuy: Length;
  /** The front width that the strip fits, and how far its fold passes the seam on the back. */
  readonly frontWidth: number;
  readonly cover: number;
  readonly stripForSeam: number;
  readonly bend: { readonly radius: number; readonly strain: number } | null;
  readonly isBiasNeeded: boolean;
  readonly ways: readonly BindingWay[];
}

/** More strips than this are a slip in the input. */
const MOST_STRIPS = 1_000;

export function planOuterBinding(input: OuterBindingInput): Result<OuterBindingDetails, Refusal> {
  const refusal = refusalOf(input);
  if (refusal !== null) return failure(refusal);
  const { stripWidth, seamAllowance: seam, quiltThickness: thickness, fold } = input;
  const slit = countedSlit(input);
  const edge = outlinePerimeter(input.outline) + 2 * slit;
  const extra = input.innerCorners * cornerExtra(input.innerCornerAngle, seam);
  const needed = edge + extra + input.overlap;
  const cost = joinCost(input.join, stripWidth, seam);
  const strips = stripsNeeded(needed, input.fabricWidth, cost);
  if (strips === null || strips > MOST_STRIPS) return failure(stripsTooShort(input));

  const fabric = strips * stripWidth;
  const given = joinedLength(strips, input.fabricWidth, cost);
  const bend = bendOf(input);
  const isBiasNeeded = bend !== null && 100 * bend.strain > input.straightGrainGive;
  return success({
    edge,
    slit,
    cornerExtra: extra,
    needed,
    strips,
    given,
    fabric,
    fabricToBuy: fabricToBuy(input, fabric).rounded,
    frontWidth: frontWidthOf(fold, stripWidth, { thickness, cover: input.backCover }),
    cover: coverOf(fold, stripWidth, { seam, thickness }),
    stripForSeam: stripWidthFor(fold, { seam, thickness, cover: input.backCover }),
    bend,
    isBiasNeeded,
    ways: bindingWays(input, { needed, strips, given }),
  });
}

function countedSlit({ hasSlit, slitBoundWith, hole, outline }: OuterBindingInput): number {
  return hasSlit && slitBoundWith === 'outside' && hole !== null ? outlineSlit(outline, hole) : 0;
}

function bendOf(input: OuterBindingInput): OuterBindingDetails['bend'] {
  const radius = outlineTightestRadius(input.outline);
  if (radius === null) return null;
  const strains = curveStrains({
    side: 'outside',
    radius,
    seam: input.seamAllowance,
    fold: input.fold,
    strip: input.stripWidth,
    cover: input.backCover,
  });
  return { radius, strain: greatestStrain(strains) };
}

function refusalOf(input: OuterBindingInput): Refusal | null {
  const { hole, outline, seamAllowance: seam, stripWidth: strip } = input;
  if (hole !== null && outlineSlit(outline, hole) <= 0) {
    return {
      code: 'hole-too-wide',
      field: ['hole', 'diameter'],
      says: 'A hole {hole} across does not fit inside this outline.',
      values: { hole: givenLength(hole.diameter) },
    };
  }
  if (strip <= 2 * seam) {
    return {
      code: 'strip-too-narrow',
      field: ['stripWidth'],
      says: 'A seam allowance of {seam} uses up a strip {strip} wide: nothing is left to turn.',
      values: { strip: givenLength(strip), seam: givenLength(seam) },
    };
  }
  const radius = outlineTightestRadius(outline);
  if (radius === null || radius > seam) return null;
  return {
    code: 'bend-too-tight',
    field: ['seamAllowance'],
    says: 'A seam allowance of {seam} does not go around this edge: the edge bends more tightly than that.',
    values: { seam: givenLength(seam) },
  };
}

function stripsTooShort({ fabricWidth, stripWidth }: OuterBindingInput): Refusal {
  return {
    code: 'strips-too-short',
    field: ['fabricWidth'],
    says: 'Strips {strip} wide from fabric {width} wide add almost nothing: each join takes as much as a strip adds.',
    values: { strip: givenLength(stripWidth), width: givenLength(fabricWidth) },
  };
}
