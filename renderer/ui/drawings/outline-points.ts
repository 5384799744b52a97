import type { Outline } from '#core/domain/outline';

/** A point of the finished edge, in 1/320 mm from the middle of the piece; y runs down. */
export interface EdgePoint {
  readonly x: number;
  readonly y: number;
}

export interface DrawnOutline {
  /** The edge from its topmost middle, clockwise, not closed. */
  readonly points: readonly EdgePoint[];
  readonly width: number;
  readonly height: number;
}

const CURVE_POINTS = 180;

/**
 * The edge of a piece for drawing. A list of sides has no angles, so it is drawn as a polygon on an ellipse of its width and
 * length, each side its share of the round: near enough to know the piece by, not to cut by.
 */
export function outlinePoints(outline: Outline): DrawnOutline {
  switch (outline.shape) {
    case 'square':
      return rectangle(outline.side, outline.side);
    case 'rectangle':
      return rectangle(outline.width, outline.length);
    case 'circle':
      return ellipse(outline.diameter, outline.diameter);
    case 'ellipse':
      return ellipse(outline.width, outline.length);
    case 'hexagon':
      return regular(6, outline.acrossFlats);
    case 'octagon':
      return regular(8, outline.acrossFlats);
    case 'sides':
      return fromSides(outline.sides, outline.width, outline.length);
  }
}

function rectangle(width: number, height: number): DrawnOutline {
  const [x, y] = [width / 2, height / 2];
  const corners = [
    { x: 0, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
    { x: -x, y: -y },
  ];
  return { points: corners, width, height };
}

function ellipse(width: number, height: number): DrawnOutline {
  const points = Array.from({ length: CURVE_POINTS }, (_, index) =>
    onEllipse(width, height, (index / CURVE_POINTS) * 2 * Math.PI),
  );
  return { points, width, height };
}

/** A flat side lies at the top. */
function regular(sides: number, acrossFlats: number): DrawnOutline {
  const radius = acrossFlats / 2 / Math.cos(Math.PI / sides);
  const corners = Array.from({ length: sides }, (_, index) =>
    onEllipse(2 * radius, 2 * radius, ((2 * index + 1) * Math.PI) / sides),
  );
  const xs = corners.map((corner) => corner.x);
  return {
    points: [{ x: 0, y: -acrossFlats / 2 }, ...corners],
    width: Math.max(...xs) - Math.min(...xs),
    height: acrossFlats,
  };
}

function fromSides(sides: readonly number[], width: number, height: number): DrawnOutline {
  const total = sides.reduce((sum, side) => sum + side, 0);
  let walked = -(sides[0] ?? 0) / 2;
  const corners = sides.map((side) => {
    walked += side;
    return onEllipse(width, height, (walked / total) * 2 * Math.PI);
  });
  const first = corners[0] ?? { x: 0, y: 0 };
  const last = corners.at(-1) ?? first;
  return { points: [{ x: (first.x + last.x) / 2, y: (first.y + last.y) / 2 }, ...corners], width, height };
}

/** `turn` in radians, clockwise from the top. */
function onEllipse(width: number, height: number, turn: number): EdgePoint {
  return { x: (width / 2) * Math.sin(turn), y: (-height / 2) * Math.cos(turn) };
}

/** The closed edge cut into `count` arcs of one length each, in order; each has its own run of points. */
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
