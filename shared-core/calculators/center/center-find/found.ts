import { failure, type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import type { Refusal } from '#core/calculators/calculator';
import type { Explanation, Figure, Note, Table } from '#core/calculators/explanation';
import type { Length } from '#core/units/length';
import { type Closure, closureOf, type Unevenness } from './closure';
import { fitNetwork, type Network, networkModel, pointsOf } from './network';

/** A measured length as a maker calls it, with its place in the input. */
export interface NamedLength {
  readonly words: string;
  readonly path: readonly (string | number)[];
  readonly measured: Length;
}

/** The distance of the center from one or more points on the edge that a maker can find again, named within a sentence. */
export interface Arc {
  readonly from: string;
  readonly distance: number;
}

export interface NamedPoint {
  readonly name: string;
  readonly point: Point;
}

/** What is drawn: the edge, lines across it, and the points that arcs are chalked from. In 1/320 mm, y down. */
interface Picture {
  readonly edge:
    | { readonly kind: 'polygon'; readonly points: readonly Point[] }
    | { readonly kind: 'circle'; readonly center: Point; readonly radius: number };
  /** Measured across the piece. */
  readonly lines: readonly (readonly [Point, Point])[];
  readonly folds?: readonly (readonly [Point, Point])[];
  /** Those whose arcs are drawn first; without a name where the place says which it is. */
  readonly named: readonly NamedPoint[];
  readonly center: Point;
  readonly motif: Point | null;
}

/** What one way of measuring finds. Lengths in 1/320 mm, not rounded. */
export interface Found {
  readonly lengths: readonly NamedLength[];
  /** The lengths changed as little as possible until they fit together, in the same order. */
  readonly fitted: readonly number[];
  readonly closure: Closure;
  /** From every named point, the best for chalking first. */
  readonly arcs: readonly Arc[];
  /** The best center and those found in other ways; empty where the lengths give distances only. */
  readonly centers: readonly NamedPoint[];
  /** What the shape shows besides, such as how far it is out of square. */
  readonly figures: readonly Figure[];
  readonly tables: readonly Table[];
  /** From the fitted lengths to the center. */
  readonly working: Explanation;
  /** How to measure in this way, and what the check cannot see. */
  readonly notes: readonly Note[];
  readonly picture: Picture;
}

/** Largest distance between the centers found in different ways. */
export function apartOf({ centers }: Found): number {
  return Math.max(
    0,
    ...centers.flatMap((one) => centers.map(({ point }) => pointDistance(one.point, point))),
  );
}

interface MeasuredNetwork extends Network {
  readonly lengths: readonly NamedLength[];
  readonly unevenness: Unevenness;
}

interface FittedNetwork {
  readonly points: readonly Point[];
  readonly fitted: readonly number[];
  readonly closure: Closure;
}

/** The points that the measured lengths fit best, and whether the lengths fit together. */
export function findPoints(
  { points, pairs, lengths, unevenness }: MeasuredNetwork,
  accuracy: number,
): FittedNetwork | null {
  const measured = lengths.map((one) => one.measured);
  const unknowns = fitNetwork({ points, pairs }, measured);
  if (unknowns === null) return null;
  const model = networkModel(pairs);
  return {
    points: pointsOf(unknowns),
    fitted: model.lengthsAt(unknowns),
    closure: closureOf({ model, measured, unknowns }, accuracy, unevenness),
  };
}

/** A refusal where no shape has the lengths; it names the length that is best to measure again. */
export function orRefused<Value>(
  value: Value | null,
  path: NamedLength['path'],
  says: string,
): Result<Value, Refusal> {
  if (value !== null) return success(value);
  return failure({ code: 'lengths-do-not-meet', field: ['measured', ...path], says, values: {} });
}

/** As a share of the squared size: twice the area of the triangle at a corner that counts as straight. */
const FLAT_CORNER = 1e-9;

/** Whether every corner turns clockwise, y down, so that the shape is convex and goes round once. */
export function goesRoundOnce(corners: readonly Point[]): boolean {
  const size = Math.max(...corners.map(({ x, y }) => Math.hypot(x, y)));
  return corners.every((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const after = corners[(index + 2) % corners.length] ?? corner;
    const turn = (next.x - corner.x) * (after.y - next.y) - (next.y - corner.y) * (after.x - next.x);
    return turn > FLAT_CORNER * size * size;
  });
}

/** The average of points. */
export function middleOf(points: readonly Point[]): Point {
  const share = 1 / points.length;
  return {
    x: points.reduce((sum, { x }) => sum + x * share, 0),
    y: points.reduce((sum, { y }) => sum + y * share, 0),
  };
}

export function arcsFrom(center: Point, named: readonly NamedPoint[]): readonly Arc[] {
  return named.map(({ name, point }) => ({ from: name, distance: pointDistance(center, point) }));
}
