import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact } from '#core/units/length';
import type { Refusal } from '../calculator';
import { greatestStrain, curveStrains } from '../curves/strain';
import { outlinePerimeter, outlineSlit, outlineTightestRadius } from '../outline/outline-measures';
import { givenLength } from '../quantities';
import { cornerExtra } from './corner-miters';
import { type BindingWay, bindingWays } from './outer-binding-ways';
import type { OuterBindingInput } from './outer-binding-input';
import { joinCost, joinedLength, stripsNeeded } from './strip-joins';
import { coverOf, frontWidthOf, stripWidthFor } from './strip-width';

export interface OuterBindingDetails {
  /** Outline, and both sides of the slit where it is bound with the outside. */
  readonly edge: number;
  /** One side of the slit where it is bound with the outside, else 0. */
  readonly slit: number;
  readonly cornerExtra: number;
  readonly needed: number;
  readonly strips: number;
  readonly given: number;
  /** Straight strips side by side: strips times width. */
  readonly fabric: number;
  readonly fabricToBuy: Length;
  /** Front width that the strip is right for, and how far its fold passes the seam on the back with the given seam. */
  readonly frontWidth: number;
  readonly cover: number;
  readonly stripForSeam: number;
  readonly bend: { readonly radius: number; readonly strain: number } | null;
  readonly isBiasNeeded: boolean;
  readonly ways: readonly BindingWay[];
}

/** Beyond this many strips the answer would be of no use, and the input is a slip. */
const MOST_STRIPS = 1_000;

export function planOuterBinding(asked: OuterBindingInput): Result<OuterBindingDetails, Refusal> {
  const refusal = refusalOf(asked);
  if (refusal !== null) return failure(refusal);
  const { stripWidth, seamAllowance: seam, quiltThickness: thickness, fold } = asked;
  const slit = countedSlit(asked);
  const edge = outlinePerimeter(asked.outline) + 2 * slit;
  const extra = asked.innerCorners * cornerExtra(asked.innerCornerAngle, seam);
  const needed = edge + extra + asked.overlap;
  const cost = joinCost(asked.join, stripWidth, seam);
  const strips = stripsNeeded(needed, asked.fabricWidth, cost);
  if (strips === null || strips > MOST_STRIPS) return failure(stripsTooShort(asked));

  const fabric = strips * stripWidth;
  const given = joinedLength(strips, asked.fabricWidth, cost);
  const bend = bendOf(asked);
  const isBiasNeeded = bend !== null && 100 * bend.strain > asked.straightGrainGive;
  return success({
    edge,
    slit,
    cornerExtra: extra,
    needed,
    strips,
    given,
    fabric,
    fabricToBuy: lengthFromExact(fabric * (1 + asked.safetyExtra / 100), 'up', asked.yardageStep),
    frontWidth: frontWidthOf(fold, stripWidth, { thickness, cover: asked.backCover }),
    cover: coverOf(fold, stripWidth, { seam, thickness }),
    stripForSeam: stripWidthFor(fold, { seam, thickness, cover: asked.backCover }),
    bend,
    isBiasNeeded,
    ways: bindingWays(asked, { needed, strips, given }),
  });
}

function countedSlit({ hasSlit, slitBoundWith, hole, outline }: OuterBindingInput): number {
  return hasSlit && slitBoundWith === 'outside' && hole !== null ? outlineSlit(outline, hole) : 0;
}

function bendOf(asked: OuterBindingInput): OuterBindingDetails['bend'] {
  const radius = outlineTightestRadius(asked.outline);
  if (radius === null) return null;
  const strains = curveStrains({
    side: 'outside',
    radius,
    seam: asked.seamAllowance,
    fold: asked.fold,
    strip: asked.stripWidth,
    cover: asked.backCover,
  });
  return { radius, strain: greatestStrain(strains) };
}

function refusalOf(asked: OuterBindingInput): Refusal | null {
  const { hole, outline, seamAllowance: seam, stripWidth: strip } = asked;
  if (hole !== null && outlineSlit(outline, hole) <= 0) {
    return {
      code: 'hole-too-wide',
      field: ['hole', 'diameter'],
      says: 'A hole {hole} across does not fit this piece.',
      values: { hole: givenLength(hole.diameter) },
    };
  }
  if (strip <= 2 * seam) {
    return {
      code: 'strip-too-narrow',
      field: ['stripWidth'],
      says: 'A strip {strip} wide is used up by a seam of {seam}: nothing is left to turn.',
      values: { strip: givenLength(strip), seam: givenLength(seam) },
    };
  }
  const radius = outlineTightestRadius(outline);
  if (radius === null || radius > seam) return null;
  return {
    code: 'bend-too-tight',
    field: ['seamAllowance'],
    says: 'A seam of {seam} does not go round this edge: it bends more tightly than that.',
    values: { seam: givenLength(seam) },
  };
}

function stripsTooShort({ fabricWidth, stripWidth }: OuterBindingInput): Refusal {
  return {
    code: 'strips-too-short',
    field: ['fabricWidth'],
    says: 'Strips {strip} wide from fabric {width} wide gain almost nothing: each join takes what a strip brings.',
    values: { strip: givenLength(stripWidth), width: givenLength(fabricWidth) },
  };
}
