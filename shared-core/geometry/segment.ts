import { type Point, pointDistance } from './point';

/** The straight stretch from `from` to `to`. Where a function treats it as a line, it goes on in both directions. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** Sine of an angle: lines that meet at less than this count as parallel. A few times the rounding error of a double. */
const PARALLEL = 1e-12;

/** Where the lines through two segments cross; undefined if they are parallel or a segment has no length. */
export function lineCrossing(first: Segment, second: Segment): Point | undefined {
  const [ax, ay] = [first.to.x - first.from.x, first.to.y - first.from.y];
  const [bx, by] = [second.to.x - second.from.x, second.to.y - second.from.y];
  const cross = ax * by - ay * bx;
  if (Math.abs(cross) <= PARALLEL * Math.hypot(ax, ay) * Math.hypot(bx, by)) return undefined;
  const along = ((second.from.x - first.from.x) * by - (second.from.y - first.from.y) * bx) / cross;
  return { x: first.from.x + along * ax, y: first.from.y + along * ay };
}

/** The point whose squared distances from these lines add up to the least; undefined if all are parallel or one has no length. */
export function nearestToLines(lines: readonly Segment[]): Point | undefined {
  let [xx, xy, yy, x, y] = [0, 0, 0, 0, 0];
  for (const { from, to } of lines) {
    const length = pointDistance(from, to);
    const [across, down] = [-(to.y - from.y) / length, (to.x - from.x) / length];
    const away = across * from.x + down * from.y;
    [xx, xy, yy] = [xx + across * across, xy + across * down, yy + down * down];
    [x, y] = [x + across * away, y + down * away];
  }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > PARALLEL)) return undefined;
  return { x: (yy * x - xy * y) / determinant, y: (xx * y - xy * x) / determinant };
}

/** Shortest distance from a point to a segment, ends included. A segment without length counts as its one point. */
export function pointToSegmentDistance(point: Point, { from, to }: Segment): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const squared = dx * dx + dy * dy;
  if (squared === 0) return pointDistance(point, from);
  const along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / squared;
  const onSegment = Math.min(1, Math.max(0, along));
  return pointDistance(point, { x: from.x + onSegment * dx, y: from.y + onSegment * dy });
}

/** Whether two segments share a point, touching ends included. */
export function segmentsMeet(first: Segment, second: Segment): boolean {
  const sides = [
    turn(first.from, first.to, second.from),
    turn(first.from, first.to, second.to),
    turn(second.from, second.to, first.from),
    turn(second.from, second.to, first.to),
  ] as const;
  if (sides[0] * sides[1] < 0 && sides[2] * sides[3] < 0) return true;
  return (
    (sides[0] === 0 && isWithinBox(second.from, first)) ||
    (sides[1] === 0 && isWithinBox(second.to, first)) ||
    (sides[2] === 0 && isWithinBox(first.from, second)) ||
    (sides[3] === 0 && isWithinBox(first.to, second))
  );
}

/** 1 if c is to the left of the line from a to b (y up), −1 if to the right, 0 if on it. */
function turn(a: Point, b: Point, c: Point): number {
  return Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
}

function isWithinBox(point: Point, { from, to }: Segment): boolean {
  return (
    Math.min(from.x, to.x) <= point.x &&
    point.x <= Math.max(from.x, to.x) &&
    Math.min(from.y, to.y) <= point.y &&
    point.y <= Math.max(from.y, to.y)
  );
}
