import { z } from 'zod';
import { type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import { regularPolygonCorners } from '#core/geometry/regular-polygon';
import { nearestToLines } from '#core/geometry/segment';
import type { Length } from '#core/units/length';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { fineLength, lengthNearest } from '#core/calculators/quantities';
import { derived } from '#core/calculators/working/terms';
import { unevenIn } from '../closure';
import { arcsFrom, findPoints, type Found, goesRoundOnce, middleOf, orRefused } from '../found';
import { atOrigin, type Pair } from '../network';
import { alikeLengths, measuredField, type Whole } from './measure-fields';
import { unseenNote } from './unseen';

/**
 * Corners A, B, C … clockwise. Measured are the sides, the long diagonals from each corner to the one opposite, and from every other
 * corner to the next of these: three more lengths than the shape needs, so that they check one another. Each way has field names of
 * its own, so that a form does not carry a side of one shape into the other.
 */
const side = (from: string, to: string) => measuredField(`Side from ${from} to ${to}`);
const long = (from: string, to: string) => measuredField(`Long diagonal from ${from} to ${to}`);
const past = (from: string, to: string) => measuredField(`From ${from} to ${to}, past one corner`);

export const hexagon = z
  .object({
    way: z.literal('hexagon'),
    hexAB: side('A', 'B'),
    hexBC: side('B', 'C'),
    hexCD: side('C', 'D'),
    hexDE: side('D', 'E'),
    hexEF: side('E', 'F'),
    hexFA: side('F', 'A'),
    hexAD: long('A', 'D'),
    hexBE: long('B', 'E'),
    hexCF: long('C', 'F'),
    hexAC: past('A', 'C'),
    hexCE: past('C', 'E'),
    hexEA: past('E', 'A'),
  })
  .readonly();
export type Hexagon = z.infer<typeof hexagon>;

export const octagon = z
  .object({
    way: z.literal('octagon'),
    octAB: side('A', 'B'),
    octBC: side('B', 'C'),
    octCD: side('C', 'D'),
    octDE: side('D', 'E'),
    octEF: side('E', 'F'),
    octFG: side('F', 'G'),
    octGH: side('G', 'H'),
    octHA: side('H', 'A'),
    octAE: long('A', 'E'),
    octBF: long('B', 'F'),
    octCG: long('C', 'G'),
    octDH: long('D', 'H'),
    octAC: past('A', 'C'),
    octCE: past('C', 'E'),
    octEG: past('E', 'G'),
    octGA: past('G', 'A'),
  })
  .readonly();
export type Octagon = z.infer<typeof octagon>;

const HEXAGON_NAMES = [
  'hexAB',
  'hexBC',
  'hexCD',
  'hexDE',
  'hexEF',
  'hexFA',
  'hexAD',
  'hexBE',
  'hexCF',
  'hexAC',
  'hexCE',
  'hexEA',
] as const;
const OCTAGON_NAMES = [
  ...(['octAB', 'octBC', 'octCD', 'octDE', 'octEF', 'octFG', 'octGH', 'octHA'] as const),
  ...(['octAE', 'octBF', 'octCG', 'octDH', 'octAC', 'octCE', 'octEG', 'octGA'] as const),
];

/** A regular shape of about this size across its flats, as it would measure once its sides are rounded. */
export function startingHexagon(acrossFlats: number, whole: Whole): Hexagon {
  const ab = whole(acrossFlats / Math.sqrt(3));
  const ad = whole(2 * ab);
  const [ac = ab, ce = ac, ea = ac] = alikeLengths(Math.sqrt(3) * ab, 3, whole);
  return {
    way: 'hexagon',
    ...{ hexAB: ab, hexBC: ab, hexCD: ab, hexDE: ab, hexEF: ab, hexFA: ab },
    ...{ hexAD: ad, hexBE: ad, hexCF: ad },
    ...{ hexAC: ac, hexCE: ce, hexEA: ea },
  };
}

export function startingOctagon(acrossFlats: number, whole: Whole): Octagon {
  const ab = whole(acrossFlats * (Math.SQRT2 - 1));
  const corner = ab / Math.sin(Math.PI / 8);
  const [ae = ab, cg = ae, bf = ae, dh = ae] = alikeLengths(corner, 4, whole);
  const [ac = ab, ce = ac, eg = ac, ga = ac] = alikeLengths(corner / Math.SQRT2, 4, whole);
  return {
    way: 'octagon',
    ...{ octAB: ab, octBC: ab, octCD: ab, octDE: ab, octEF: ab, octFG: ab, octGH: ab, octHA: ab },
    ...{ octAE: ae, octBF: bf, octCG: cg, octDH: dh },
    ...{ octAC: ac, octCE: ce, octEG: eg, octGA: ga },
  };
}

export function findInHexagon(measured: Hexagon, accuracy: number): Result<Found, Refusal> {
  const lengths = HEXAGON_NAMES.map((name) => ({ name, measured: measured[name] }));
  return findInRegular({ corners: 6, lengths, called: 'hexagon' }, accuracy);
}

export function findInOctagon(measured: Octagon, accuracy: number): Result<Found, Refusal> {
  const lengths = OCTAGON_NAMES.map((name) => ({ name, measured: measured[name] }));
  return findInRegular({ corners: 8, lengths, called: 'octagon' }, accuracy);
}

interface Regular {
  readonly corners: number;
  /** Sides, long diagonals, then the lengths past one corner; each name ends with the two corners it joins. */
  readonly lengths: readonly { readonly name: string; readonly measured: Length }[];
  readonly called: 'hexagon' | 'octagon';
}

function findInRegular(
  { corners: count, lengths, called }: Regular,
  accuracy: number,
): Result<Found, Refusal> {
  const pairs = lengths.map(({ name }): Pair => [cornerAt(name, -2), cornerAt(name, -1)]);
  const named = lengths.map(({ name, measured }, index) => ({
    words: `${index < count ? 'side' : index < 1.5 * count ? 'long diagonal' : ''} ${lettersOf(name)}`.trim(),
    path: [name],
    measured,
  }));
  const longs = named.slice(count, 1.5 * count);
  const across = longs.reduce((sum, { measured }) => sum + measured, 0) / longs.length;
  const points = atOrigin(regularPolygonCorners({ sides: count, side: across * Math.sin(Math.PI / count) }));
  const found = findPoints(
    { points, pairs, lengths: named, unevenness: unevenIn(groupsOf(count)) },
    accuracy,
  );
  const isShape = found !== null && goesRoundOnce(found.points);
  const shape = orRefused(isShape ? found : null, longs[0]?.path ?? [], NO_SUCH_SHAPE[called]);
  if (!shape.ok) return shape;

  const corners = shape.value.points;
  const best = middleOf(corners);
  const diagonals = corners
    .slice(0, count / 2)
    .map((from, index) => [from, corners[index + count / 2] ?? from] as const);
  const cross = nearestToLines(diagonals.map(([from, to]) => ({ from, to }))) ?? best;
  const letters = everyOtherFirst(corners.map((point, index) => ({ name: letterOf(index), point })));
  return success({
    ...shape.value,
    lengths: named,
    arcs: arcsFrom(
      best,
      letters.map(({ name, point }) => ({ name: `corner ${name}`, point })),
    ),
    centers: [
      { name: 'the middle of the corners (the best center)', point: best },
      { name: 'where the long diagonals cross', point: cross },
    ],
    figures: [
      { label: 'Longest and shortest side differ by', quantity: fineLength(unevenSides(corners), 'nearest') },
    ],
    tables: [],
    working: [
      {
        label: 'From corner A to the center',
        formula: 'the average of the corners',
        terms: [],
        result: lengthNearest(pointDistance(best, corners[0] ?? best)),
        rule: derived('In a regular shape the long diagonals cross there.'),
      },
    ],
    notes: [HOW_TO, UNSEEN],
    picture: {
      edge: { kind: 'polygon', points: corners },
      lines: diagonals,
      named: letters,
      center: best,
      motif: null,
    },
  });
}

function cornerAt(name: string, fromEnd: number): number {
  return (name.at(fromEnd) ?? 'A').charCodeAt(0) - 'A'.charCodeAt(0);
}

function letterOf(corner: number): string {
  return String.fromCharCode('A'.charCodeAt(0) + corner);
}

function lettersOf(name: string): string {
  return `${name.slice(-2, -1)} to ${name.slice(-1)}`;
}

function groupsOf(count: number): readonly (readonly number[])[] {
  const from = (first: number, size: number) => Array.from({ length: size }, (_, index) => first + index);
  return [from(0, count), from(count, count / 2), from(1.5 * count, count / 2)];
}

/** Arcs from corners a third or a quarter of the way round apart cross best. */
function everyOtherFirst<Item>(items: readonly Item[]): readonly Item[] {
  return [...items.filter((_, index) => index % 2 === 0), ...items.filter((_, index) => index % 2 === 1)];
}

function unevenSides(corners: readonly Point[]): number {
  const sides = corners.map((corner, index) =>
    pointDistance(corner, corners[(index + 1) % corners.length] ?? corner),
  );
  return Math.max(...sides) - Math.min(...sides);
}

const NO_SUCH_SHAPE = {
  hexagon:
    'No hexagon that is nearly regular has these lengths, so one of them is wrong. Measure the long diagonals again. For another shape choose “Any shape: corners from three pins”.',
  octagon:
    'No octagon that is nearly regular has these lengths, so one of them is wrong. Measure the long diagonals again. For another shape choose “Any shape: corners from three pins”.',
} as const;

const HOW_TO: Note = {
  kind: 'tip',
  says: 'Pin a letter to each corner, A, B, C and so on, clockwise around the edge. Measure from corner to corner of the finished edge, all alike, without pulling.',
  values: {},
};

const UNSEEN = unseenNote('fewer than 1.');
