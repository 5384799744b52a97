/** A point of the finished edge, in 1/320 mm from the middle of the project; y runs down. */
export interface EdgePoint {
  readonly x: number;
  readonly y: number;
}

/** The closed edge split into `count` arcs of equal length, in order, each as a run of points. */
export function splitEdge(
  edge: readonly EdgePoint[],
  count: number,
  gap: number,
): readonly (readonly EdgePoint[])[] {
  const closed = [...edge, edge[0] ?? { x: 0, y: 0 }];
  const marks = distancesAlong(closed);
  const total = marks.at(-1) ?? 0;
  const share = total / count;
  return Array.from({ length: count }, (_, index) => {
    const from = index * share + gap / 2;
    const to = Math.max((index + 1) * share - gap / 2, from);
    const between = closed.filter((_point, place) => (marks[place] ?? 0) > from && (marks[place] ?? 0) < to);
    return [pointAlong(closed, marks, from), ...between, pointAlong(closed, marks, to)];
  });
}

/** The point halfway along a run of points, and the direction of the run there in radians. */
export function middleOf(run: readonly EdgePoint[]): EdgePoint & { readonly turn: number } {
  const marks = distancesAlong(run);
  const half = (marks.at(-1) ?? 0) / 2;
  const here = pointAlong(run, marks, half);
  const ahead = pointAlong(run, marks, half + (marks.at(-1) ?? 0) * 0.02);
  return { ...here, turn: Math.atan2(ahead.y - here.y, ahead.x - here.x) };
}

/** The part of a run from its start to `share` (0 to 1) of its length. */
export function runUpTo(run: readonly EdgePoint[], share: number): readonly EdgePoint[] {
  const marks = distancesAlong(run);
  const end = (marks.at(-1) ?? 0) * share;
  return [...run.filter((_, index) => (marks[index] ?? 0) < end), pointAlong(run, marks, end)];
}

function distancesAlong(points: readonly EdgePoint[]): readonly number[] {
  let walked = 0;
  return points.map((point, index) => {
    const before = points[index - 1];
    if (before !== undefined) walked += Math.hypot(point.x - before.x, point.y - before.y);
    return walked;
  });
}

function pointAlong(points: readonly EdgePoint[], marks: readonly number[], distance: number): EdgePoint {
  const after = Math.max(
    1,
    marks.findIndex((mark) => mark >= distance) === -1
      ? points.length - 1
      : marks.findIndex((mark) => mark >= distance),
  );
  const [from, to] = [points[after - 1], points[after]];
  if (from === undefined || to === undefined) return points[0] ?? { x: 0, y: 0 };
  const [start, end] = [marks[after - 1] ?? 0, marks[after] ?? 0];
  const share = end === start ? 0 : (distance - start) / (end - start);
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
