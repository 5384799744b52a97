import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { outlineSides } from '#core/calculators/outline/outline-sides';
import { givenLength } from '#core/calculators/quantities';
import { LONGEST_BINDING } from '../binding-fields';
import { joinCost, stripsNeeded } from '../strip-joins';
import { bestStart, clearanceAt } from './best-start';
import type { ScrappyBindingInput } from './input';

/** Lengths in 1/320 mm, as doubles. */
export interface ScrappyBindingDetails {
  readonly edge: number;
  readonly needed: number;
  /** All strips, laid end to end and joined. */
  readonly total: number;
  readonly given: number;
  readonly strips: number;
  /** In the order they are listed: how many of them are enough. All of them where they do not reach. */
  readonly used: number;
  /** One of the two is 0. */
  readonly spare: number;
  readonly missing: number;
  /** Strips across the fabric for what is missing, and that fabric; 0 where nothing is. */
  readonly more: number;
  readonly fabric: number;
  readonly fabricToBuy: Length;
  /** Where the joins lie along the strip from its beginning, the closing one first. Empty where strips are missing. */
  readonly joins: readonly number[];
  /** Null where strips are missing or the edge has no corners. */
  readonly start: StripStart | null;
}

/** The beginning of the strip: `along` the edge from its first corner, which is `past` the corner of a side this long. */
interface StripStart {
  readonly along: number;
  readonly side: number;
  readonly past: number;
  /** From the middle of the join nearest to a corner to that corner. */
  readonly clearance: number;
}

/** More strips than this are a slip in the input. */
const MOST_STRIPS = 1_000;

export function planScrappyBinding(input: ScrappyBindingInput): Result<ScrappyBindingDetails, Refusal> {
  const cost = joinCost(input.join, input.stripWidth, input.seamAllowance);
  const short = input.strips.findIndex(({ length }) => length <= cost);
  if (short !== -1) return failure(stripTooShort(input, short, cost));
  const lengths = input.strips.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
  const edge = outlinePerimeter(input.outline);
  const needed = edge + input.overlap;
  const total = lengths.reduce<number>((sum, length) => sum + length, 0);
  if (total > LONGEST_BINDING) return failure(MORE_THAN_ANY_BINDING);
  const given = total - (lengths.length - 1) * cost;
  const missing = Math.max(0, needed - given);
  const more = moreStrips(input, missing, cost);
  if (more === null) return failure(fabricTooNarrow(input));
  const fabric = more * input.stripWidth;
  const used = stripsUsed(lengths, needed, cost);
  const joins = missing > 0 ? [] : joinsAlong(lengths.slice(0, used), cost);
  return success({
    edge,
    needed,
    total,
    given,
    strips: lengths.length,
    used,
    spare: Math.max(0, given - needed),
    missing,
    more,
    fabric,
    fabricToBuy: fabricToBuy(input, fabric).rounded,
    joins,
    start: startOf(input, joins),
  });
}

/** Null when strips of this fabric add nothing, or so little that it is a slip. Each is joined to those that are there. */
function moreStrips({ fabricWidth }: ScrappyBindingInput, missing: number, cost: number): number | null {
  if (missing === 0) return 0;
  const strips = stripsNeeded(missing + cost, fabricWidth, cost);
  return strips === null || strips > MOST_STRIPS ? null : strips;
}

function stripsUsed(lengths: readonly number[], needed: number, cost: number): number {
  let joined = cost;
  const reached = lengths.findIndex((length) => {
    joined += length - cost;
    return joined >= needed;
  });
  return reached === -1 ? lengths.length : reached + 1;
}

/** The middle of each join; a strip reaches `cost` into the next. The closing join is at the beginning. */
function joinsAlong(lengths: readonly number[], cost: number): readonly number[] {
  let along = cost / 2;
  return lengths.map((length) => {
    const join = along;
    along += length - cost;
    return join;
  });
}

/** Rounded to the cutting step, since it is measured off; the clearance is that of the rounded start. */
function startOf({ outline, cutStep }: ScrappyBindingInput, joins: readonly number[]): StripStart | null {
  const sides = outlineSides(outline);
  if (sides.length === 0 || joins.length === 0) return null;
  let perimeter = 0;
  const corners = sides.map((side) => {
    const corner = perimeter;
    perimeter += side;
    return corner;
  });
  const around = { perimeter, corners, joins };
  const along = roundNearest(bestStart(around).start, cutStep);
  const from = corners.findLastIndex((corner) => corner <= along);
  const [corner = 0, side = 0] = [corners[from], sides[from]];
  return { along, side, past: along - corner, clearance: clearanceAt(along, around) };
}

/** What the strips come to with the other kind of join. */
export function givenWith(input: ScrappyBindingInput, join: ScrappyBindingInput['join']): number {
  const cost = joinCost(join, input.stripWidth, input.seamAllowance);
  const count = input.strips.reduce((sum, strip) => sum + strip.count, 0);
  const total = input.strips.reduce((sum, { length, count: alike }) => sum + alike * length, 0);
  return total - (count - 1) * cost;
}

const MORE_THAN_ANY_BINDING: Refusal = {
  code: 'too-much-strip',
  field: ['strips'],
  says: 'These strips come to more than {longest}, longer than any binding. List fewer.',
  values: { longest: givenLength(LONGEST_BINDING) },
};

function stripTooShort({ strips }: ScrappyBindingInput, at: number, cost: number): Refusal {
  const length = strips[at]?.length ?? lengthFromExact(0, 'nearest');
  return {
    code: 'strip-too-short',
    field: ['strips', at, 'length'],
    says: 'A strip {length} long adds nothing: a join takes {join} of it. Leave it out.',
    values: { length: givenLength(length), join: givenLength(lengthFromExact(cost, 'up')) },
  };
}

function fabricTooNarrow({ fabricWidth }: ScrappyBindingInput): Refusal {
  return {
    code: 'strips-too-short',
    field: ['fabricWidth'],
    says: 'Your strips don’t reach, and strips from fabric {width} wide add almost nothing: each join takes as much as a strip adds.',
    values: { width: givenLength(fabricWidth) },
  };
}
