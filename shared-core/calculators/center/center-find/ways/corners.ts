import { z } from 'zod';
import { failure, type Result, success } from '#core/result';
import { type Point, pointDistance, pointMidway } from '#core/geometry/point';
import { polygonCentroid, polygonIsSimple } from '#core/geometry/polygon';
import { roundUpTo } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { lengthNearest } from '#core/calculators/quantities';
import { derived } from '#core/calculators/working/terms';
import { arcsFrom, type Found, middleOf, type NamedPoint } from '../found';
import type { Whole } from './measure-fields';
import { MARK_PINS, measuredFromPins, pinLines, pinNames, pins, placePinned, pointRows } from './pinned';
import { unseenWhereNarrow } from './unseen';

/** Enough for any edge that is measured by hand: 24 corners. */
const MOST_BETWEEN = 7;

const between = (pin: string, next: string) =>
  pointRows(`Corner ${pin}`, { least: 0, most: MOST_BETWEEN }).meta({
    title: `Corners after pin ${pin}, before pin ${next}, each measured from the three pins`,
  });

export const corners = z
  .object({
    way: z.literal('corners'),
    ...pins,
    afterA: between('A', 'B'),
    afterB: between('B', 'C'),
    afterC: between('C', 'A'),
  })
  .readonly();
export type Corners = z.infer<typeof corners>;

/** The corners of an edge; of a triangle, the middle of its last side too, since three lengths cannot check one another. */
export function startingCorners(edge: readonly Point[], whole: Whole): Corners {
  const every = roundUpTo(edge.length / (3 * (MOST_BETWEEN + 1)), 1);
  const kept = edge.filter((_, index) => index % every === 0);
  const [first = O] = kept;
  const points = kept.length > 3 ? kept : [...kept, pointMidway(kept.at(-1) ?? O, first)];
  const { after, ...betweenPins } = measuredFromPins(points, whole);
  const [afterA = [], afterB = [], afterC = []] = after;
  return { way: 'corners', ...betweenPins, afterA, afterB, afterC };
}

const AFTER = [
  ['A', 'afterA'],
  ['B', 'afterB'],
  ['C', 'afterC'],
] as const;

const O: Point = { x: 0, y: 0 };

export function findInCorners(measured: Corners, accuracy: number): Result<Found, Refusal> {
  const others = AFTER.flatMap(([pin, list]) =>
    measured[list].map((row, index) => ({ name: `${pin} ${index + 1}`, path: [list, index], row })),
  );
  if (others.length === 0) return failure(UNCHECKED);
  const placed = placePinned({ ...measured, others }, accuracy);
  if (!placed.ok) return placed;
  const { named, ...fit } = placed.value;
  const around = inOrder(named);
  if (!polygonIsSimple(around)) return failure(CROSSED);
  const center = polygonCentroid(around) ?? middleOf(around);
  return success({
    ...fit,
    arcs: arcsFrom(center, pinNames(named)),
    centers: [{ name: 'where the shape balances', point: center }],
    figures: [],
    tables: [],
    working: [
      {
        label: 'From the center to pin A',
        formula: 'the point where the shape balances',
        terms: [],
        result: lengthNearest(pointDistance(center, named[0]?.point ?? center)),
        rule: derived('The shape is cut into triangles; the middle of each counts by its area.'),
      },
    ],
    notes: [MARK_PINS, BALANCES, UNSEEN],
    picture: {
      edge: { kind: 'polygon', points: around },
      lines: pinLines(named.map(({ point }) => point)),
      named,
      center,
      motif: null,
    },
  });
}

/** A, the corners after it, B, and so on; each name starts with the letter of the pin it follows. */
function inOrder(named: readonly NamedPoint[]): readonly Point[] {
  return AFTER.flatMap(([pin]) => named.filter(({ name }) => name.startsWith(pin))).map(({ point }) => point);
}

const UNCHECKED: Refusal = {
  code: 'no-length-to-check',
  field: ['measured', 'afterA'],
  says: 'Three lengths cannot check one another. Measure one more point from the three pins, such as the middle of a side.',
  values: {},
};

const CROSSED: Refusal = {
  code: 'edge-crosses-itself',
  field: ['measured', 'afterA'],
  says: 'In this order the edge would cross itself, or two corners are in one place. Give the corners in order around the edge, and each one once.',
  values: {},
};

const BALANCES: Note = {
  kind: 'tip',
  says: 'The center found is where the shape would balance on a finger. Leave no corner out: a shape with more than 24 corners is better folded in halves.',
  values: {},
};

const UNSEEN = unseenWhereNarrow('about 1.', '15, so measure each length there twice.');
