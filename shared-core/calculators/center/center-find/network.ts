import { type Point, pointDistance } from '#core/geometry/point';
import { fitLengths, type LengthModel } from './fit-lengths';

/** Two points of a list, by their places in it. */
export type Pair = readonly [number, number];

/** Points and the distances measured between them. */
export interface Network {
  readonly points: readonly Point[];
  readonly pairs: readonly Pair[];
}

/**
 * Distances between points whose places are unknown. The first point stays at (0, 0) and the second on the x axis; the unknowns are
 * the x of the second and the x and y of each further point.
 */
export function networkModel(pairs: readonly Pair[]): LengthModel {
  const between = (unknowns: readonly number[]) => {
    const points = pointsOf(unknowns);
    return pairs.map(([from, to]) => [points[from] ?? ORIGIN, points[to] ?? ORIGIN] as const);
  };
  return {
    lengthsAt: (unknowns) => between(unknowns).map(([from, to]) => pointDistance(from, to)),
    slopesAt: (unknowns) =>
      between(unknowns).map(([from, to], index) => {
        const [first, second] = pairs[index] ?? [0, 0];
        const length = pointDistance(from, to);
        const [across, down] = [(to.x - from.x) / length, (to.y - from.y) / length];
        return [...slopesOf(second, across, down), ...slopesOf(first, -across, -down)];
      }),
  };
}

const ORIGIN: Point = { x: 0, y: 0 };

function slopesOf(point: number, across: number, down: number) {
  if (point === 0) return [];
  if (point === 1) return [{ unknown: 0, slope: across }];
  return [
    { unknown: 2 * point - 3, slope: across },
    { unknown: 2 * point - 2, slope: down },
  ];
}

export function pointsOf([second = 0, ...rest]: readonly number[]): readonly Point[] {
  const further = Array.from({ length: rest.length / 2 }, (_, index) => ({
    x: rest[2 * index] ?? 0,
    y: rest[2 * index + 1] ?? 0,
  }));
  return [ORIGIN, { x: second, y: 0 }, ...further];
}

/** The unknowns of points that are placed as the model places them. */
export function unknownsOf([, second = ORIGIN, ...further]: readonly Point[]): readonly number[] {
  return [second.x, ...further.flatMap(({ x, y }) => [x, y])];
}

/** The same points turned and moved so that the first is at (0, 0) and the second on the x axis, to its right. */
export function atOrigin(points: readonly Point[]): readonly Point[] {
  const [first = ORIGIN, second = ORIGIN] = points;
  const length = pointDistance(first, second);
  const [cosine, sine] = [(second.x - first.x) / length, (second.y - first.y) / length];
  return points.map(({ x, y }) => {
    const [across, down] = [x - first.x, y - first.y];
    return { x: across * cosine + down * sine, y: down * cosine - across * sine };
  });
}

/** As a share of the longest length. A length that has to change by more than this is a mistake, not a measurement. */
const MOST_CHANGE = 0.1;

/** The points that change the measured lengths as little as possible. Null if a length would have to change by a tenth or more. */
export function fitNetwork(
  { points, pairs }: Network,
  measured: readonly number[],
): readonly number[] | null {
  const model = networkModel(pairs);
  const unknowns = fitLengths(model, measured, unknownsOf(points));
  if (unknowns === null) return null;
  const most = MOST_CHANGE * Math.max(...measured);
  const isClose = model
    .lengthsAt(unknowns)
    .every((length, index) => Math.abs(length - (measured[index] ?? 0)) < most);
  return isClose ? unknowns : null;
}

/** Distances of a point from three others. */
export type FromPins = readonly [number, number, number];

/**
 * Points by their distances from three pins: A at (0, 0), B to its right, C below their line, then the others. Null if the pins have
 * no such triangle.
 */
export function placeFromPins([ab, bc, ca]: FromPins, others: readonly FromPins[]): readonly Point[] | null {
  const x = (ca ** 2 - bc ** 2 + ab ** 2) / (2 * ab);
  const squared = ca ** 2 - x ** 2;
  if (!(squared > 0)) return null;
  const third = { x, y: Math.sqrt(squared) };
  const placed = others.map(([fromA, fromB, fromC]) => {
    const across = (fromA ** 2 - fromB ** 2 + ab ** 2) / (2 * ab);
    const down = Math.sqrt(Math.max(0, fromA ** 2 - across ** 2));
    const [below, above] = [
      { x: across, y: down },
      { x: across, y: -down },
    ];
    const off = (point: Point) => Math.abs(pointDistance(point, third) - fromC);
    return off(below) <= off(above) ? below : above;
  });
  return [ORIGIN, { x: ab, y: 0 }, third, ...placed];
}
