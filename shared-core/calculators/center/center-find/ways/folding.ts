import { z } from 'zod';
import { type Result, success } from '#core/result';
import { type Point, pointDistance, pointMidway } from '#core/geometry/point';
import { lineCrossing } from '#core/geometry/segment';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { degreesQuantity, lengthNearest } from '#core/calculators/quantities';
import { derived } from '#core/calculators/working/terms';
import { unevenIn } from '../closure';
import { arcsFrom, findPoints, type Found, goesRoundOnce, orRefused } from '../found';
import { type FromPins, type Pair, placeFromPins } from '../network';
import { alikeLengths, measuredField, type Whole } from './measure-fields';
import { unseenWhereNarrow } from './unseen';

export const folding = z
  .object({
    way: z.literal('folding'),
    lengthwise: measuredField(
      'Lengthwise crease, top end to bottom end',
      'Fold left edge on right edge and pinch the fold; open it and measure along it.',
    ),
    crosswise: measuredField(
      'Crosswise crease, left end to right end',
      'Fold top edge on bottom edge and pinch the fold; open it and measure along it.',
    ),
    topToRight: measuredField('From the top end to the right end'),
    rightToBottom: measuredField('From the right end to the bottom end'),
    bottomToLeft: measuredField('From the bottom end to the left end'),
    leftToTop: measuredField('From the left end to the top end'),
  })
  .readonly();
export type Folding = z.infer<typeof folding>;

/** The creases of a shape that is alike on both sides of each, as they would measure. */
export function startingFolding(across: number, down: number, whole: Whole): Folding {
  const [lengthwise, crosswise] = [whole(down), whole(across)];
  const between = alikeLengths(Math.hypot(lengthwise, crosswise) / 2, ENDS.length, whole);
  const [
    topToRight = lengthwise,
    rightToBottom = topToRight,
    bottomToLeft = topToRight,
    leftToTop = topToRight,
  ] = between;
  return {
    way: 'folding',
    lengthwise,
    crosswise,
    topToRight,
    rightToBottom,
    bottomToLeft,
    leftToTop,
  };
}

/** The ends of the creases clockwise from the top. */
const PAIRS: readonly Pair[] = [
  [0, 2],
  [3, 1],
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
];
const LENGTHS = [
  ['lengthwise', 'lengthwise crease'],
  ['crosswise', 'crosswise crease'],
  ['topToRight', 'top end to right end'],
  ['rightToBottom', 'right end to bottom end'],
  ['bottomToLeft', 'bottom end to left end'],
  ['leftToTop', 'left end to top end'],
] as const;
/** From end to end around the piece. */
const uneven = unevenIn([[2, 3, 4, 5]]);
const ENDS = ['top', 'right', 'bottom', 'left'];

export function findByFolding(measured: Folding, accuracy: number): Result<Found, Refusal> {
  const { lengthwise, crosswise, topToRight, rightToBottom, bottomToLeft, leftToTop } = measured;
  const pins: FromPins = [topToRight, rightToBottom, lengthwise];
  const points = placeFromPins(pins, [[leftToTop, crosswise, bottomToLeft]]);
  const lengths = LENGTHS.map(([name, words]) => ({ words, path: [name], measured: measured[name] }));
  const found =
    points === null ? null : findPoints({ points, pairs: PAIRS, lengths, unevenness: uneven }, accuracy);
  const isShape = found !== null && goesRoundOnce(found.points);
  const shape = orRefused(isShape ? found : null, ['lengthwise'], NO_SUCH_CREASES);
  if (!shape.ok) return shape;

  const [top = O, right = O, bottom = O, left = O] = upright(shape.value.points);
  const best = lineCrossing({ from: top, to: bottom }, { from: left, to: right }) ?? O;
  const named = [top, right, bottom, left].map((point, index) => ({
    name: `the ${ENDS[index] ?? ''} end of the crease`,
    point,
  }));
  return success({
    ...shape.value,
    lengths,
    arcs: arcsFrom(best, named),
    centers: [
      { name: 'creases cross (the best center)', point: best },
      { name: 'the middle of the lengthwise crease', point: pointMidway(top, bottom) },
      { name: 'the middle of the crosswise crease', point: pointMidway(left, right) },
    ],
    figures: [{ label: 'The creases cross at', quantity: degreesQuantity(angleAt(best, top, right)) }],
    tables: [],
    working: [
      {
        label: 'From the top end of the crease to the center',
        formula: 'where the creases cross',
        terms: [],
        result: lengthNearest(pointDistance(top, best)),
        rule: derived('A crease halves the piece, so the center is on both.'),
      },
    ],
    notes: [HOW_TO, UNSEEN],
    picture: {
      edge: { kind: 'polygon', points: aroundCreases({ top, right, bottom, left }, best) },
      folds: [
        [top, bottom],
        [left, right],
      ],
      lines: [
        [top, right],
        [right, bottom],
        [bottom, left],
        [left, top],
      ],
      named: named.map(({ point }) => ({ name: '', point })),
      center: best,
      motif: null,
    },
  });
}

const O: Point = { x: 0, y: 0 };

type Ends = Readonly<Record<'top' | 'right' | 'bottom' | 'left', Point>>;

/** Turned so that the lengthwise crease runs straight down. */
function upright(ends: readonly Point[]): readonly Point[] {
  const [top = O, , bottom = O] = ends;
  const length = pointDistance(top, bottom);
  const [cosine, sine] = [(bottom.y - top.y) / length, (bottom.x - top.x) / length];
  return ends.map(({ x, y }) => ({
    x: (x - top.x) * cosine - (y - top.y) * sine,
    y: (x - top.x) * sine + (y - top.y) * cosine,
  }));
}

/** What is folded has any shape; it is drawn with an edge through each end along the other crease. */
function aroundCreases({ top, right, bottom, left }: Ends, center: Point): readonly Point[] {
  const corner = (one: Point, other: Point) => ({
    x: one.x + other.x - center.x,
    y: one.y + other.y - center.y,
  });
  return [corner(left, top), corner(top, right), corner(right, bottom), corner(bottom, left)];
}

function angleAt(center: Point, one: Point, other: Point): number {
  const angle =
    Math.atan2(other.y - center.y, other.x - center.x) - Math.atan2(one.y - center.y, one.x - center.x);
  return ((angle + 2 * Math.PI) % (2 * Math.PI)) * (180 / Math.PI);
}

const NO_SUCH_CREASES =
  'No two creases have ends this far from each other, so one of the six lengths is wrong. Measure both creases again.';

const HOW_TO: Note = {
  kind: 'tip',
  says: 'Fold edge on edge without pulling, smooth the quilt toward the fold and mark both ends of each crease with a pin. Then lay it flat and measure between the pins. A shape that is not alike on both sides of a crease has no middle that folding can find: choose “Any shape: corners from three pins”.',
  values: {},
};

const UNSEEN = unseenWhereNarrow('fewer than 1.', '7, all in the short crease, so measure that twice.');
