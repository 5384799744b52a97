import { z } from 'zod';
import { type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { fineLength, lengthNearest } from '#core/calculators/quantities';
import { derived } from '#core/calculators/working/terms';
import { type Circle, circleNearest } from '../circle-fit';
import type { Unevenness } from '../closure';
import { pointsOf } from '../network';
import { arcsFrom, type Found, orRefused } from '../found';
import type { Whole } from './measure-fields';
import {
  MARK_PINS,
  measuredFromPins,
  NO_SUCH_POINTS,
  pinLines,
  pinNames,
  pins,
  placePinned,
  pointRows,
} from './pinned';
import { unseenNote } from './unseen';

export const edgePoints = z
  .object({
    way: z.literal('edge-points'),
    ...pins,
    others: pointRows('Point', { least: 1, most: 9 }).meta({
      title: 'More points on the edge, each measured from the three pins',
    }),
  })
  .readonly();
export type EdgePoints = z.infer<typeof edgePoints>;

/** Six points of a circle. */
export function startingEdgePoints(across: number, whole: Whole): EdgePoints {
  const around = Array.from({ length: 6 }, (_, index) => ({
    x: (across / 2) * Math.cos((index * Math.PI) / 3),
    y: (across / 2) * Math.sin((index * Math.PI) / 3),
  }));
  const { after, ...between } = measuredFromPins(around, whole);
  return { way: 'edge-points', ...between, others: after.flat() };
}

/** How far the points are from one circle. */
const outOfRoundOf: Unevenness = (_lengths, unknowns) => {
  const points = pointsOf(unknowns);
  const circle = circleNearest(points);
  return circle === null ? Infinity : farthestOff(points, circle);
};

function farthestOff(points: readonly Point[], { center, radius }: Circle): number {
  return Math.max(...points.map((point) => Math.abs(pointDistance(center, point) - radius)));
}

export function findOnRoundEdge(measured: EdgePoints, accuracy: number): Result<Found, Refusal> {
  const others = measured.others.map((row, index) => ({
    name: String(index + 1),
    path: ['others', index],
    row,
  }));
  const placed = placePinned({ ...measured, others }, accuracy, outOfRoundOf);
  if (!placed.ok) return placed;
  const { named, ...fit } = placed.value;
  const points = named.map(({ point }) => point);
  const round = orRefused(circleNearest(points), ['pinsAB'], NO_SUCH_POINTS);
  if (!round.ok) return round;
  const { center, radius } = round.value;
  const out = farthestOff(points, round.value);
  return success({
    ...fit,
    arcs: arcsFrom(center, pinNames(named)),
    centers: [{ name: 'the circle nearest to the points', point: center }],
    figures: [
      { label: 'Radius', quantity: lengthNearest(radius) },
      { label: 'Out of round by', quantity: fineLength(out, 'nearest') },
    ],
    tables: [],
    working: [
      {
        label: 'From the center to pin A',
        formula: 'the center of the circle nearest to the points',
        terms: [],
        result: lengthNearest(pointDistance(center, points[0] ?? center)),
        rule: derived('The squares of the distances of the points from this circle add up to the least.'),
      },
    ],
    notes: [...roundNotes({ points, center, outOfRound: out }, accuracy), MARK_PINS, UNSEEN],
    picture: {
      edge: { kind: 'circle', center, radius },
      lines: pinLines(points),
      named,
      center,
      motif: null,
    },
  });
}

interface RoundShape {
  readonly points: readonly Point[];
  readonly center: Point;
  readonly outOfRound: number;
}

/** How many times the accuracy an edge may be out of round before it is said. */
const ROUND_ENOUGH = 2;

function roundNotes({ points, center, outOfRound }: RoundShape, accuracy: number): readonly Note[] {
  const notes: Note[] = [];
  if (widestGap(points, center) >= Math.PI) {
    notes.push({
      kind: 'warning',
      says: 'All your points lie on one half of the edge, so that small errors move the center a lot. Measure points on the other half too.',
      values: {},
    });
  }
  if (outOfRound > ROUND_ENOUGH * accuracy) {
    notes.push({
      kind: 'warning',
      says: 'The edge is out of round by {off}, or a length is wrong. If the piece is oval, fold it in halves instead.',
      values: { off: fineLength(outOfRound, 'nearest') },
    });
  }
  return notes;
}

/** The widest angle between two neighboring points, seen from the center; in radians. */
function widestGap(points: readonly Point[], center: Point): number {
  const angles = points.map(({ x, y }) => Math.atan2(y - center.y, x - center.x)).sort((a, b) => a - b);
  return Math.max(
    ...angles.map((angle, index) => (angles[index + 1] ?? (angles[0] ?? 0) + 2 * Math.PI) - angle),
  );
}

const UNSEEN = unseenNote('fewer than 1, with points all the way round.');
