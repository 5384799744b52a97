import { type Point, pointDistance } from '#core/geometry/point';
import { solveLinear } from './solve-linear';

/** The six lengths of a four-sided shape, clockwise from the top left corner; all in one unit. */
export interface SixLengths {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
  /** From top left to bottom right. */
  readonly downToRight: number;
  /** From bottom left to top right. */
  readonly upToRight: number;
}

/** Corners clockwise from the top left: the top side is on y = 0, and y runs down. */
export type Quad = readonly [Point, Point, Point, Point];

export function quadMap([a, b, c, d]: Quad, change: (corner: Point) => Point): Quad {
  return [change(a), change(b), change(c), change(d)];
}

export interface QuadFit {
  readonly corners: Quad;
  /** Fitted minus measured length, in the order of SixLengths. */
  readonly residuals: readonly number[];
}

/** As a share of the longest length. A length that has to change by more than this is a mistake, not a measurement. */
const MOST_CHANGE = 0.1;

/** The search converges in a few rounds; the limit only guards against a shape that does not converge. */
const MOST_ROUNDS = 50;

/** As a share of the longest length: a step this small is rounding error. */
const SMALLEST_STEP = 1e-15;

/** Keeps the equations solvable for a shape that is almost flat, without a visible effect on the result. */
const DAMPING = 1e-12;

/** Twice the area of the triangle at a corner, as a share of the squared longest length: below this the corner is straight. */
const FLAT_CORNER = 1e-9;

type CornerIndex = 0 | 1 | 2 | 3;

const PAIRS: readonly (readonly [CornerIndex, CornerIndex])[] = [
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
  [0, 2],
  [1, 3],
];

/**
 * Six lengths are one too many for a shape with five unknowns, so the method of least squares changes them as little as possible
 * until they fit (Gauss-Newton with slight damping). Returns null if no four-sided shape is near these lengths: a side is longer
 * than the other three, the corners do not go round once, or a length has to change by more than a tenth.
 */
export function fitQuad(lengths: SixLengths): QuadFit | null {
  const scale = Math.max(...listOf(lengths));
  const measured = listOf(lengths).map((length) => length / scale);
  let unknowns = startOf(measured);
  if (unknowns === null) return null;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const step = gaussNewtonStep(unknowns, measured);
    if (step === null) return null;
    unknowns = unknowns.map((value, index) => value + (step[index] ?? 0));
    if (Math.hypot(...step) < SMALLEST_STEP) break;
  }
  const corners = cornersOf(unknowns);
  const residuals = residualsOf(unknowns, measured);
  const isClose = residuals.every((residual) => Math.abs(residual) < MOST_CHANGE);
  if (!isClose || !goesRoundOnce(corners)) return null;
  const scaled = quadMap(corners, ({ x, y }) => ({ x: x * scale, y: y * scale }));
  return { corners: scaled, residuals: residuals.map((value) => value * scale) };
}

function listOf({ top, right, bottom, left, downToRight, upToRight }: SixLengths): readonly number[] {
  return [top, right, bottom, left, downToRight, upToRight];
}

/** The start of the search: two triangles on the top side, with the measured lengths. */
function startOf(measured: readonly number[]): readonly number[] | null {
  const [top = 0, right = 0, , left = 0, downToRight = 0, upToRight = 0] = measured;
  const below = (fromLeft: number, fromRight: number): Point | null => {
    const x = (fromLeft ** 2 - fromRight ** 2 + top ** 2) / (2 * top);
    const squared = fromLeft ** 2 - x ** 2;
    return squared > 0 ? { x, y: Math.sqrt(squared) } : null;
  };
  const [third, fourth] = [below(downToRight, right), below(left, upToRight)];
  return third === null || fourth === null ? null : [top, third.x, third.y, fourth.x, fourth.y];
}

function cornersOf(unknowns: readonly number[]): Quad {
  const [topRight = 0, thirdX = 0, thirdY = 0, fourthX = 0, fourthY = 0] = unknowns;
  return [
    { x: 0, y: 0 },
    { x: topRight, y: 0 },
    { x: thirdX, y: thirdY },
    { x: fourthX, y: fourthY },
  ];
}

function residualsOf(unknowns: readonly number[], measured: readonly number[]): readonly number[] {
  const corners = cornersOf(unknowns);
  return PAIRS.map(([from, to], index) => pointDistance(corners[from], corners[to]) - (measured[index] ?? 0));
}

/** The corner and the coordinate that each unknown stands for. */
const UNKNOWNS: readonly (readonly [CornerIndex, 'x' | 'y'])[] = [
  [1, 'x'],
  [2, 'x'],
  [2, 'y'],
  [3, 'x'],
  [3, 'y'],
];

function gaussNewtonStep(unknowns: readonly number[], measured: readonly number[]): readonly number[] | null {
  const corners = cornersOf(unknowns);
  const residuals = residualsOf(unknowns, measured);
  const slopes = PAIRS.map(([from, to]) =>
    UNKNOWNS.map(([corner, axis]) => {
      if (corner !== from && corner !== to) return 0;
      const [moved, fixed] = corner === to ? [corners[to], corners[from]] : [corners[from], corners[to]];
      return (moved[axis] - fixed[axis]) / pointDistance(moved, fixed);
    }),
  );
  const sumOver = (part: (row: readonly number[], index: number) => number) =>
    slopes.reduce((sum, row, index) => sum + part(row, index), 0);
  const normal = UNKNOWNS.map((_, i) =>
    UNKNOWNS.map((__, j) => sumOver((row) => (row[i] ?? 0) * (row[j] ?? 0)) + (i === j ? DAMPING : 0)),
  );
  const descent = UNKNOWNS.map((_, i) => -sumOver((row, index) => (row[i] ?? 0) * (residuals[index] ?? 0)));
  return solveLinear(normal, descent);
}

/** Whether every corner turns the same way, so that the shape is convex and its diagonals cross inside it. */
function goesRoundOnce(corners: Quad): boolean {
  return corners.every((corner, index) => {
    const next = corners[(index + 1) % 4] ?? corner;
    const after = corners[(index + 2) % 4] ?? corner;
    return (next.x - corner.x) * (after.y - next.y) - (next.y - corner.y) * (after.x - next.x) > FLAT_CORNER;
  });
}
