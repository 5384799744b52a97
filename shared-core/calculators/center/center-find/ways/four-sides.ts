import { z } from 'zod';
import { flagField, lengthField } from '#core/domain/fields';
import { failure, type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import { polygonContainsPoint } from '#core/geometry/polygon';
import { lineCrossing, type Segment } from '#core/geometry/segment';
import type { Refusal } from '#core/calculators/calculator';
import type { Explanation, Figure, Note, Quantity, Table } from '#core/calculators/explanation';
import { degreesQuantity, fineLength, lengthNearest, wordsQuantity } from '#core/calculators/quantities';
import { derived } from '#core/calculators/working/terms';
import { unevenIn } from '../closure';
import { arcsFrom, findPoints, type Found, goesRoundOnce, middleOf, orRefused } from '../found';
import { type FromPins, type Pair, placeFromPins } from '../network';
import { measuredField, type Whole } from './measure-fields';
import { unseenWhereNarrow } from './unseen';

export const fourSides = z
  .object({
    way: z.literal('four-sides'),
    top: measuredField('Top side'),
    right: measuredField('Right side'),
    bottom: measuredField('Bottom side'),
    left: measuredField('Left side'),
    downToRight: measuredField('Diagonal from top left to bottom right'),
    upToRight: measuredField('Diagonal from bottom left to top right'),
    hasMotif: flagField({
      title: 'There is a motif in the middle',
      help: 'Then measure where its middle is.',
    }),
    motifFromLeft: lengthField({ title: 'Middle of the motif from the left side' }),
    motifFromTop: lengthField({ title: 'Middle of the motif from the top side' }),
  })
  .readonly();
export type FourSides = z.infer<typeof fourSides>;

/** A rectangle as it would measure; `whole` rounds to what a tape shows. */
export function startingFourSides(across: number, down: number, whole: Whole): FourSides {
  const [top, right] = [whole(across), whole(down)];
  const diagonal = whole(Math.hypot(top, right));
  return {
    way: 'four-sides',
    top,
    right,
    bottom: top,
    left: right,
    downToRight: diagonal,
    upToRight: diagonal,
    hasMotif: false,
    motifFromLeft: whole(across / 2),
    motifFromTop: whole(down / 2),
  };
}

/** Corners clockwise from the top left. */
const PAIRS: readonly Pair[] = [
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
  [0, 2],
  [1, 3],
];
const LENGTHS = [
  ['top', 'top side'],
  ['right', 'right side'],
  ['bottom', 'bottom side'],
  ['left', 'left side'],
  ['downToRight', 'diagonal from top left to bottom right'],
  ['upToRight', 'diagonal from bottom left to top right'],
] as const;
/** Opposite sides, and the diagonals. */
const uneven = unevenIn([
  [0, 2],
  [1, 3],
  [4, 5],
]);
const CORNERS = ['top left', 'top right', 'bottom right', 'bottom left'];

export function findInFourSides(measured: FourSides, accuracy: number): Result<Found, Refusal> {
  const { top, right, bottom, left, downToRight, upToRight } = measured;
  const pins: FromPins = [top, right, downToRight];
  const points = placeFromPins(pins, [[left, upToRight, bottom]]);
  const lengths = LENGTHS.map(([name, words]) => ({ words, path: [name], measured: measured[name] }));
  const found =
    points === null ? null : findPoints({ points, pairs: PAIRS, lengths, unevenness: uneven }, accuracy);
  const isShape = found !== null && goesRoundOnce(found.points);
  const shape = orRefused(isShape ? found : null, ['downToRight'], NO_SUCH_SHAPE);
  if (!shape.ok) return shape;

  const [a = O, b = O, c = O, d = O] = shape.value.points;
  const best = middleOf([a, b, c, d]);
  const cross = lineCrossing({ from: a, to: c }, { from: b, to: d }) ?? best;
  const motif = measured.hasMotif ? motifPoint(measured, d) : null;
  if (motif !== null && !polygonContainsPoint([a, b, c, d], motif)) return failure(MOTIF_OUTSIDE);
  const named = [a, b, c, d].map((point, index) => ({ name: CORNERS[index] ?? '', point }));
  const corners = cornersOf([a, b, c, d]);
  return success({
    ...shape.value,
    lengths,
    arcs: arcsFrom(
      best,
      named.map(({ name, point }) => ({ name: `the ${name} corner`, point })),
    ),
    centers: [
      { name: 'midlines cross (the best center)', point: best },
      { name: 'diagonals cross', point: cross },
      ...(motif === null ? [] : [{ name: 'the middle of the motif', point: motif }]),
    ],
    figures: [
      { label: 'Out of square by', quantity: fineLength(outOfSquare(corners), 'nearest') },
      ...moveFigures(best, motif),
    ],
    working: workingOf({ best, cross, corner: a, outOfSquare: outOfSquare(corners) }),
    tables: [sidesTable([a, b, c, d], best), cornersTable(corners)],
    notes: [...motifNotes(best, motif, accuracy), LAY_FLAT, UNSEEN],
    picture: {
      edge: { kind: 'polygon', points: [a, b, c, d] },
      lines: [
        [a, c],
        [b, d],
      ],
      named: named.map(({ point }) => ({ name: '', point })),
      center: best,
      motif,
    },
  });
}

const O: Point = { x: 0, y: 0 };

const NO_SUCH_SHAPE =
  'No four-sided project has these six lengths, so one of them is wrong. Measure both diagonals again.';

const MOTIF_OUTSIDE: Refusal = {
  code: 'motif-outside',
  field: ['measured', 'motifFromLeft'],
  says: 'The middle of the motif would be outside the project. Measure it from the left side and the top side.',
  values: {},
};

/** Measured at right angles to the top (y = 0) and to the left side, which runs from the top left corner to `bottomLeft`. */
function motifPoint({ motifFromLeft, motifFromTop }: FourSides, bottomLeft: Point): Point {
  const size = Math.hypot(bottomLeft.x, bottomLeft.y);
  const normal = { x: bottomLeft.y / size, y: -bottomLeft.x / size };
  return { x: (motifFromLeft - normal.y * motifFromTop) / normal.x, y: motifFromTop };
}

/** To the best center: right and down are positive. */
function moveFigures(best: Point, motif: Point | null): readonly Figure[] {
  if (motif === null) return [];
  const [across, down] = [best.x - motif.x, best.y - motif.y];
  return [
    {
      label: `From the middle of the motif, move ${across < 0 ? 'left' : 'right'}`,
      quantity: lengthNearest(Math.abs(across)),
    },
    { label: `and ${down < 0 ? 'up' : 'down'}`, quantity: lengthNearest(Math.abs(down)) },
  ];
}

interface Worked {
  readonly best: Point;
  readonly cross: Point;
  /** Top left. */
  readonly corner: Point;
  readonly outOfSquare: number;
}

function workingOf({ best, cross, corner, outOfSquare: out }: Worked): Explanation {
  return [
    {
      label: 'From the top left corner to the best center',
      formula: '(A + B + C + D) ÷ 4',
      terms: [],
      result: lengthNearest(pointDistance(best, corner)),
      rule: derived(
        'The lines between the middles of opposite sides cross at the average of the corners. The result is its distance from the top left corner.',
      ),
    },
    {
      label: 'From the best center to where the diagonals cross',
      formula: '|X − M|',
      terms: [],
      result: fineLength(pointDistance(best, cross), 'nearest'),
      rule: derived('In a true rectangle both are the same point.'),
    },
    {
      label: 'Out of square',
      formula: 'shorter side · |cos α|, at the worst corner',
      terms: [],
      result: fineLength(out, 'nearest'),
      rule: derived(
        'How far the end of the shorter side at a corner is from where a right angle would put it.',
      ),
    },
  ];
}

interface Corner {
  readonly name: string;
  readonly degrees: number;
  /** How far the end of the shorter side at this corner is from where a right angle would put it. */
  readonly outBy: number;
}

function cornersOf(corners: readonly Point[]): readonly Corner[] {
  return corners.map((corner, index): Corner => {
    const before = corners[(index + 3) % 4] ?? corner;
    const after = corners[(index + 1) % 4] ?? corner;
    const [one, other] = [pointDistance(corner, before), pointDistance(corner, after)];
    const cosine =
      ((before.x - corner.x) * (after.x - corner.x) + (before.y - corner.y) * (after.y - corner.y)) /
      (one * other);
    return {
      name: CORNERS[index] ?? '',
      degrees: (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI,
      outBy: Math.min(one, other) * Math.abs(cosine),
    };
  });
}

function outOfSquare(corners: readonly Corner[]): number {
  return Math.max(...corners.map(({ outBy }) => outBy));
}

function sidesTable(corners: readonly Point[], center: Point): Table {
  const names = ['top side', 'right side', 'bottom side', 'left side'];
  return {
    title: 'The center from the sides, at right angles',
    columns: ['From the', 'Distance'],
    rows: names.map((name, index): readonly Quantity[] => {
      const from = corners[index] ?? O;
      const to = corners[(index + 1) % 4] ?? O;
      return [wordsQuantity(name), lengthNearest(distanceToLine(center, { from, to }))];
    }),
  };
}

function distanceToLine(point: Point, { from, to }: Segment): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return Math.abs(dx * (point.y - from.y) - dy * (point.x - from.x)) / Math.hypot(dx, dy);
}

function cornersTable(corners: readonly Corner[]): Table {
  return {
    title: 'Corners',
    columns: ['Corner', 'Angle', 'Off a right angle', 'Off by'],
    rows: corners.map(({ name, degrees, outBy }): readonly Quantity[] => [
      wordsQuantity(name),
      degreesQuantity(degrees),
      degreesQuantity(degrees - 90),
      fineLength(outBy, 'nearest'),
    ]),
  };
}

function motifNotes(best: Point, motif: Point | null, accuracy: number): readonly Note[] {
  if (motif === null || pointDistance(best, motif) <= accuracy) return [];
  return [
    {
      kind: 'tip',
      says: 'The middle of the motif is not the middle of the project. The eye compares a hole close to the motif with the motif, and a hole far from it with the edge.',
      values: {},
    },
  ];
}

const LAY_FLAT: Note = {
  kind: 'tip',
  says: 'Lay the project flat and measure from corner to corner of the finished edge, all four alike, without pulling. Then fold it in four and check that the folds meet at your mark.',
  values: {},
};

/** The check is blind to an error that bends the shape without breaking it. */
const UNSEEN = unseenWhereNarrow('fewer than 1.', '15, mostly in the short sides, so measure those twice.');
