import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import type { Hole } from '#core/domain/outline';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import { roundDownTo, roundUpTo } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import { curveStrains, turnedStrain } from '#core/calculators/curves/strain';
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

/** A bend of the edge: outside around the piece, inside around its hole. */
interface Bend {
  readonly side: 'outside' | 'inside';
  readonly radius: number;
  readonly strain: number;
}

export interface OuterBindingDetails {
  /** Length of the outline, with both sides of a slit and the way around a hole that are bound with the outside. */
  readonly edge: number;
  /** One side of a slit that is bound with the outside, else 0. */
  readonly slit: number;
  /** Around a hole that is bound with the outside, along its seam line, else 0. */
  readonly hole: number;
  readonly cornerExtra: number;
  readonly needed: number;
  readonly strips: number;
  readonly given: number;
  /** Length of fabric to cut from: for straight strips their number times their width, else for the bias. */
  readonly fabric: number;
  readonly fabricToBuy: Length;
  /** The front width that the strip fits, and how far its fold passes the seam on the back. */
  readonly frontWidth: number;
  readonly cover: number;
  readonly stripForSeam: number;
  /** The tightest bend, and what the turned strip has to give there. The percent only informs. */
  readonly bend: Bend | null;
  /** Wherever the edge is curved, however gently (common practice). */
  readonly isBiasNeeded: boolean;
  /** The way that is bought and cut where bias is needed, else null. */
  readonly biasWay: BindingWay | null;
  readonly ways: readonly BindingWay[];
}

/** More strips than this are a slip in the input. */
const MOST_STRIPS = 1_000;

export function planOuterBinding(input: OuterBindingInput): Result<OuterBindingDetails, Refusal> {
  const refusal = refusalOf(input);
  if (refusal !== null) return failure(refusal);
  const { stripWidth, seamAllowance: seam, quiltThickness: thickness, fold } = input;
  const slit = countedSlit(input);
  const hole = slit > 0 && input.hole !== null ? holeSeam(input, input.hole) : 0;
  const edge = outlinePerimeter(input.outline) + 2 * slit + hole;
  const extra = input.innerCorners * cornerExtra(input.innerCornerAngle, seam);
  const needed = edge + extra + input.overlap;
  const cost = joinCost(input.join, stripWidth, seam);
  const strips = stripsNeeded(needed, input.fabricWidth, cost);
  if (strips === null || strips > MOST_STRIPS) return failure(stripsTooShort(input));

  const given = joinedLength(strips, input.fabricWidth, cost);
  const bend = bendOf(input, hole);
  const isBiasNeeded = bend !== null;
  const ways = bindingWays(input, { needed, strips, given });
  const biasWay = isBiasNeeded ? biasWayOf(ways) : null;
  if (isBiasNeeded && biasWay === null) return failure(noBias(input));
  const fabric = biasWay === null ? strips * stripWidth : lengthOfFabric(input, biasWay);
  return success({
    edge,
    slit,
    hole,
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
    biasWay,
    ways,
  });
}

/** Continuous bias, or else bias strips joined; never straight strips. Null when this fabric gives neither. */
function biasWayOf(ways: readonly BindingWay[]): BindingWay | null {
  const named = (name: BindingWay['way']) => ways.find(({ way }) => way === name);
  return named('continuous-bias') ?? named('bias-strips') ?? null;
}

/** As many pieces side by side as the fabric is wide. */
function lengthOfFabric({ fabricWidth }: OuterBindingInput, { pieces, width, length }: BindingWay): number {
  const across = Math.max(1, roundDownTo(fabricWidth / width, 1));
  return roundUpTo(pieces / across, 1) * length;
}

function countedSlit({ hasSlit, slitBoundWith, hole, outline }: OuterBindingInput): number {
  return hasSlit && slitBoundWith !== 'hole' && hole !== null ? outlineSlit(outline, hole) : 0;
}

/** The seam line is longer than the cut edge, so the strip is never short. A hole without a slit is not reached from the outside. */
function holeSeam({ slitBoundWith, seamAllowance }: OuterBindingInput, { diameter }: Hole): number {
  return slitBoundWith === 'outside-and-hole' ? Math.PI * (diameter + 2 * seamAllowance) : 0;
}

/** The bend that asks most of the strip; null where the whole edge is straight. */
function bendOf(input: OuterBindingInput, hole: number): Bend | null {
  const outer = outlineTightestRadius(input.outline);
  const inner = hole > 0 && input.hole !== null ? input.hole.diameter / 2 : null;
  const bends = [
    ...(outer === null ? [] : [bendAt(input, 'outside', outer)]),
    ...(inner === null ? [] : [bendAt(input, 'inside', inner)]),
  ];
  return bends.toSorted((one, other) => other.strain - one.strain)[0] ?? null;
}

function bendAt(input: OuterBindingInput, side: Bend['side'], radius: number): Bend {
  const strains = curveStrains({
    side,
    radius,
    seam: input.seamAllowance,
    fold: input.fold,
    strip: input.stripWidth,
    thickness: input.quiltThickness,
  });
  return { side, radius, strain: turnedStrain(strains) };
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

function noBias({ fabricWidth, stripWidth }: OuterBindingInput): Refusal {
  return {
    code: 'fabric-too-narrow',
    field: ['fabricWidth'],
    says: 'This edge is curved and takes bias. Fabric {width} wide does not give enough bias strip {strip} wide.',
    values: { width: givenLength(fabricWidth), strip: givenLength(stripWidth) },
  };
}
