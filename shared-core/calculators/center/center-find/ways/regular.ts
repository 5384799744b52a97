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
 * corner to the next of these: three more lengths than the shape needs, so that they check one another.
 */
const side = (from: string, to: string) => measuredField(`Side from ${from} to ${to}`);
const long = (from: string, to: string) => measuredField(`Long diagonal from ${from} to ${to}`);
const past = (from: string, to: string) => measuredField(`From ${from} to ${to}, past one corner`);

export const hexagon = z
  .object({
    way: z.literal('hexagon'),
    ab: side('A', 'B'),
    bc: side('B', 'C'),
    cd: side('C', 'D'),
    de: side('D', 'E'),
    ef: side('E', 'F'),
    fa: side('F', 'A'),
    ad: long('A', 'D'),
    be: long('B', 'E'),
    cf: long('C', 'F'),
    ac: past('A', 'C'),
    ce: past('C', 'E'),
    ea: past('E', 'A'),
  })
  .readonly();
export type Hexagon = z.infer<typeof hexagon>;

export const octagon = z
  .object({
    way: z.literal('octagon'),
    ab: side('A', 'B'),
    bc: side('B', 'C'),
    cd: side('C', 'D'),
    de: side('D', 'E'),
    ef: side('E', 'F'),
    fg: side('F', 'G'),
    gh: side('G', 'H'),
    ha: side('H', 'A'),
    ae: long('A', 'E'),
    bf: long('B', 'F'),
    cg: long('C', 'G'),
    dh: long('D', 'H'),
    ac: past('A', 'C'),
    ce: past('C', 'E'),
    eg: past('E', 'G'),
    ga: past('G', 'A'),
  })
  .readonly();
export type Octagon = z.infer<typeof octagon>;

const HEXAGON_NAMES = ['ab', 'bc', 'cd', 'de', 'ef', 'fa', 'ad', 'be', 'cf', 'ac', 'ce', 'ea'] as const;
const OCTAGON_NAMES = [
  ...(['ab', 'bc', 'cd', 'de', 'ef', 'fg', 'gh', 'ha'] as const),
  ...(['ae', 'bf', 'cg', 'dh', 'ac', 'ce', 'eg', 'ga'] as const),
];

/** A regular shape of about this size across its flats, as it would measure once its sides are rounded. */
export function startingHexagon(acrossFlats: number, whole: Whole): Hexagon {
  const ab = whole(acrossFlats / Math.sqrt(3));
  const ad = whole(2 * ab);
  const [ac = ab, ce = ac, ea = ac] = alikeLengths(Math.sqrt(3) * ab, 3, whole);
  return {
    way: 'hexagon',
    ...{ ab, bc: ab, cd: ab, de: ab, ef: ab, fa: ab },
    ...{ ad, be: ad, cf: ad },
    ...{ ac, ce, ea },
  };
}

export function startingOctagon(acrossFlats: number, whole: Whole): Octagon {
  const ab = whole(acrossFlats * (Math.SQRT2 - 1));
  const corner = ab / Math.sin(Math.PI / 8);
  const [ae = ab, cg = ae, bf = ae, dh = ae] = alikeLengths(corner, 4, whole);
  const [ac = ab, ce = ac, eg = ac, ga = ac] = alikeLengths(corner / Math.SQRT2, 4, whole);
  return {
    way: 'octagon',
    ...{ ab, bc: ab, cd: ab, de: ab, ef: ab, fg: ab, gh: ab, ha: ab },
    ...{ ae, bf, cg, dh },
    ...{ ac, ce, eg, ga },
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
  /** Sides, long diagonals, then the lengths past one corner; each name holds the two corners it joins. */
  readonly lengths: readonly { readonly name: string; readonly measured: Length }[];
  readonly called: 'hexagon' | 'octagon';
}

function findInRegular(
  { corners: count, lengths, called }: Regular,
  accuracy: number,
): Result<Found, Refusal> {
  const pairs = lengths.map(({ name }): Pair => [cornerAt(name, 0), cornerAt(name, 1)]);
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

function cornerAt(name: string, place: number): number {
  return name.charCodeAt(place) - 'a'.charCodeAt(0);
}

function letterOf(corner: number): string {
  return String.fromCharCode('A'.charCodeAt(0) + corner);
}

function lettersOf(name: string): string {
  return `${name.charAt(0)} to ${name.charAt(1)}`.toUpperCase().replace('TO', 'to');
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
