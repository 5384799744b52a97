import { z } from 'zod';
import { failure, type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import type { Length } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import type { Unevenness } from '../closure';
import { findPoints, type Found, type NamedLength, type NamedPoint, orRefused } from '../found';
import { type FromPins, type Pair, placeFromPins } from '../network';
import { measuredField, type Whole } from './measure-fields';

const fromPins = z
  .object({
    toA: measuredField('To pin A'),
    toB: measuredField('To pin B'),
    toC: measuredField('To pin C'),
  })
  .readonly();

export const pins = {
  pinsAB: measuredField(
    'Pin A to pin B',
    'Put pins A, B and C on the edge, clockwise and about a third of the way round apart.',
  ),
  pinsBC: measuredField('Pin B to pin C'),
  pinsCA: measuredField('Pin C to pin A'),
};

type FromPinsRow = z.infer<typeof fromPins>;

/** A list of points besides the pins. */
export function pointRows(row: string, limits: { readonly least: number; readonly most: number }) {
  return z
    .array(fromPins.meta({ title: row }))
    .min(limits.least)
    .max(limits.most)
    .readonly();
}

interface Pins {
  readonly pinsAB: Length;
  readonly pinsBC: Length;
  readonly pinsCA: Length;
}

/** The distances between three pins on the edge. */
interface Pinned extends Pins {
  readonly others: readonly OtherPoint[];
}

/** A point with its distances from the pins, and where they stand in the input. */
interface OtherPoint {
  readonly name: string;
  readonly path: NamedLength['path'];
  readonly row: FromPinsRow;
}

interface MeasuredPins extends Pins {
  /** The points after A, after B and after C. */
  readonly after: readonly (readonly FromPinsRow[])[];
}

/** Points of an edge in order around it, as they would measure from the pins: three of them spread around. */
export function measuredFromPins(around: readonly Point[], whole: Whole): MeasuredPins {
  const third = around.length / 3;
  const places = [0, roundDownTo(third, 1), roundDownTo(2 * third, 1)];
  const [a = O, b = O, c = O] = places.map((place) => around[place] ?? O);
  const between = (one: Point, other: Point) => whole(pointDistance(one, other));
  return {
    pinsAB: between(a, b),
    pinsBC: between(b, c),
    pinsCA: between(c, a),
    after: places.map((place, index) =>
      around
        .slice(place + 1, places[index + 1])
        .map((point) => ({ toA: between(point, a), toB: between(point, b), toC: between(point, c) })),
    ),
  };
}

const O: Point = { x: 0, y: 0 };

interface Placed {
  readonly lengths: readonly NamedLength[];
  readonly fitted: readonly number[];
  readonly closure: Found['closure'];
  /** A, B, C, then the others. */
  readonly named: readonly NamedPoint[];
}

export function placePinned(
  measured: Pinned,
  accuracy: number,
  unevenness: Unevenness = () => 0,
): Result<Placed, Refusal> {
  const base: FromPins = [measured.pinsAB, measured.pinsBC, measured.pinsCA];
  const rows = measured.others.map(({ row }): FromPins => [row.toA, row.toB, row.toC]);
  const points = placeFromPins(base, rows);
  if (points === null || isNearlyInLine(points.slice(0, 3))) return failure(IN_LINE);
  const lengths = lengthsOf(measured);
  const found = findPoints({ points, pairs: pairsOf(rows.length), lengths, unevenness }, accuracy);
  const placed = orRefused(found, ['pinsAB'], NO_SUCH_POINTS);
  if (!placed.ok) return placed;
  const names = [...PIN_LETTERS, ...measured.others.map(({ name }) => name)];
  const named = placed.value.points.map((point, index) => ({ name: names[index] ?? '', point }));
  return success({ ...placed.value, lengths, named });
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
  const further = others.flatMap(({ name, path, row }) => [
    { words: `point ${name} to pin A`, path: [...path, 'toA'], measured: row.toA },
    { words: `point ${name} to pin B`, path: [...path, 'toB'], measured: row.toB },
    { words: `point ${name} to pin C`, path: [...path, 'toC'], measured: row.toC },
  ]);
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

export const NO_SUCH_POINTS =
  'No points on an edge have these distances, so one of them is wrong. Measure the distances between the pins again.';

export const MARK_PINS: Note = {
  kind: 'tip',
  says: 'Put the pins A, B and C on the edge clockwise, and a pin with its name at each other point. Measure between points of the finished edge, lying flat, without pulling.',
  values: {},
};
