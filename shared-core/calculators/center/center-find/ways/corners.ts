import { z } from 'zod';
import { type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import { polygonCentroid } from '#core/geometry/polygon';
import { roundUpTo } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { lengthNearest } from '#core/calculators/quantities';
import { derived } from '#core/calculators/working/terms';
import { arcsFrom, type Found, middleOf } from '../found';
import type { Whole } from './measure-fields';
import {
  MARK_PINS,
  measuredFromPins,
  MOST_OTHERS,
  otherPoints,
  pinLines,
  pinNames,
  pins,
  placePinned,
} from './pinned';
import { unseenWhereNarrow } from './unseen';

export const corners = z
  .object({
    way: z.literal('corners'),
    ...pins,
    others: otherPoints('Point', 'All other corners, each measured from the three pins'),
  })
  .readonly();
export type Corners = z.infer<typeof corners>;

/** The corners of an edge; of a triangle, the middle of its first side too, since three lengths cannot check one another. */
export function startingCorners(around: readonly Point[], whole: Whole): Corners {
  const every = roundUpTo(around.length / (MOST_OTHERS + 3), 1);
  const kept = around.filter((_, index) => index % every === 0);
  const [first = O, second = O, ...rest] = kept;
  const points = kept.length > 3 ? kept : [first, second, ...rest, middleOf([first, ...rest])];
  return { way: 'corners', ...measuredFromPins(points, whole) };
}

const O: Point = { x: 0, y: 0 };

export function findInCorners(measured: Corners, accuracy: number): Result<Found, Refusal> {
  const placed = placePinned(measured, accuracy);
  if (!placed.ok) return placed;
  const { named, around, ...fit } = placed.value;
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

const BALANCES: Note = {
  kind: 'tip',
  says: 'The center found is where the shape would balance on a finger. Leave no corner out: a shape with more than twelve corners is better folded in halves.',
  values: {},
};

const UNSEEN = unseenWhereNarrow('about 1.', '15, so measure each length there twice.');
