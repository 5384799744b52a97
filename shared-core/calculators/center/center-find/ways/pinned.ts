import { z } from 'zod';
import { failure, type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import { polygonIsSimple } from '#core/geometry/polygon';
import type { Length } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import type { Unevenness } from '../closure';
import { findPoints, type Found, middleOf, type NamedLength, type NamedPoint, orRefused } from '../found';
import { type FromPins, type Pair, placeFromPins } from '../network';
import { measuredField, type Whole } from './measure-fields';

const fromPins = z
  .object({
    toA: measuredField('To pin A'),
    toB: measuredField('To pin B'),
    toC: measuredField('To pin C'),
  })
  .readonly();

/** Enough for any edge that is measured by hand. */
export const MOST_OTHERS = 9;

export const pins = {
  pinsAB: measuredField(
    'Pin A to pin B',
    'Put pins A, B and C on the edge, clockwise and about a third of the way round apart.',
  ),
  pinsBC: measuredField('Pin B to pin C'),
  pinsCA: measuredField('Pin C to pin A'),
};

/** The points besides the pins: at least one, since three lengths cannot check one another. */
export function otherPoints(row: string, title: string) {
  return z
    .array(fromPins.meta({ title: row }))
    .min(1)
    .max(MOST_OTHERS)
    .readonly()
    .meta({ title });
}

/** The distances between the pins, and of each other point from the three. */
export interface Pinned {
  readonly pinsAB: Length;
  readonly pinsBC: Length;
  readonly pinsCA: Length;
  readonly others: readonly z.infer<typeof fromPins>[];
}

/** Points of an edge in order around it, as they would measure from the pins: three of them spread around. */
export function measuredFromPins(around: readonly Point[], whole: Whole): Pinned {
  const third = around.length / 3;
  const places = [0, roundDownTo(third, 1), roundDownTo(2 * third, 1)];
  const [a = O, b = O, c = O] = places.map((place) => around[place] ?? O);
  const between = (one: Point, other: Point) => whole(pointDistance(one, other));
  return {
    pinsAB: between(a, b),
    pinsBC: between(b, c),
    pinsCA: between(c, a),
    others: around
      .filter((_, index) => !places.includes(index))
      .map((point) => ({ toA: between(point, a), toB: between(point, b), toC: between(point, c) })),
  };
}

const O: Point = { x: 0, y: 0 };

export interface Placed {
  readonly lengths: readonly NamedLength[];
  readonly fitted: readonly number[];
  readonly closure: Found['closure'];
  /** A, B, C, then the others. */
  readonly named: readonly NamedPoint[];
  /** In order around the edge. */
  readonly around: readonly Point[];
}

export function placePinned(
  measured: Pinned,
  accuracy: number,
  unevenness: Unevenness = () => 0,
): Result<Placed, Refusal> {
  const base: FromPins = [measured.pinsAB, measured.pinsBC, measured.pinsCA];
  const rows = measured.others.map(({ toA, toB, toC }): FromPins => [toA, toB, toC]);
  const points = placeFromPins(base, rows);
  if (points === null || isNearlyInLine(points.slice(0, 3))) return failure(IN_LINE);
  const lengths = lengthsOf(measured);
  const found = findPoints({ points, pairs: pairsOf(rows.length), lengths, unevenness }, accuracy);
  const placed = orRefused(found, ['pinsAB'], NO_SUCH_POINTS);
  if (!placed.ok) return placed;
  const around = inOrder(placed.value.points);
  if (!polygonIsSimple(around)) return failure(SAME_PLACE);
  const named = placed.value.points.map((point, index) => ({
    name: PIN_LETTERS[index] ?? String(index - 2),
    point,
  }));
  return success({ ...placed.value, lengths, named, around });
}

function pairsOf(others: number): readonly Pair[] {
  const further = Array.from({ length: others }, (_, index): readonly Pair[] => {
    const point = index + 3;
    return [
      [point, 0],
      [point, 1],
      [point, 2],
    ];
  });
  return [[0, 1], [1, 2], [2, 0], ...further.flat()];
}

function lengthsOf({ pinsAB, pinsBC, pinsCA, others }: Pinned): readonly NamedLength[] {
  const further = others.flatMap(({ toA, toB, toC }, index) => {
    const from = `point ${index + 1}`;
    return [
      { words: `${from} to pin A`, path: ['others', index, 'toA'], measured: toA },
      { words: `${from} to pin B`, path: ['others', index, 'toB'], measured: toB },
      { words: `${from} to pin C`, path: ['others', index, 'toC'], measured: toC },
    ];
  });
  return [
    { words: 'pin A to pin B', path: ['pinsAB'], measured: pinsAB },
    { words: 'pin B to pin C', path: ['pinsBC'], measured: pinsBC },
    { words: 'pin C to pin A', path: ['pinsCA'], measured: pinsCA },
    ...further,
  ];
}

const PIN_LETTERS = ['A', 'B', 'C'];

/** As a share of the longest distance between the pins: a triangle this low places points too badly. */
const LOW = 0.05;

function isNearlyInLine(triangle: readonly Point[]): boolean {
  const [a = O, b = O, c = O] = triangle;
  const longest = Math.max(pointDistance(a, b), pointDistance(b, c), pointDistance(c, a));
  const twice = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  return twice / longest < LOW * longest;
}

/** By the direction in which each is seen from the middle of all. */
function inOrder(points: readonly Point[]): readonly Point[] {
  const middle = middleOf(points);
  const direction = ({ x, y }: Point) => Math.atan2(y - middle.y, x - middle.x);
  return [...points].sort((one, other) => direction(one) - direction(other));
}

export function pinNames(named: readonly NamedPoint[]): readonly NamedPoint[] {
  return named.map(({ name, point }, index) => ({ name: `${index < 3 ? 'pin' : 'point'} ${name}`, point }));
}

export function pinLines([a = O, b = O, c = O]: readonly Point[]): readonly (readonly [Point, Point])[] {
  return [
    [a, b],
    [b, c],
    [c, a],
  ];
}

const IN_LINE: Refusal = {
  code: 'pins-in-line',
  field: ['measured', 'pinsAB'],
  says: 'Pins A, B and C are nearly in one line, so no point can be placed from them. Put them about a third of the way round apart.',
  values: {},
};

const SAME_PLACE: Refusal = {
  code: 'points-in-one-place',
  field: ['measured', 'others', 0, 'toA'],
  says: 'Two of these points would be in the same place or in line with the middle. Measure each point once, in order around the edge.',
  values: {},
};

export const NO_SUCH_POINTS =
  'No points on an edge have these distances, so one of them is wrong. Measure the distances between the pins again.';

export const MARK_PINS: Note = {
  kind: 'tip',
  says: 'Put the pins A, B and C on the edge clockwise, and a numbered pin at each other point. Measure between points of the finished edge, lying flat, without pulling.',
  values: {},
};
