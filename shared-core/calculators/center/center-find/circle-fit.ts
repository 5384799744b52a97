import { type Point, pointDistance } from '#core/geometry/point';
import { solveLinear } from './solve-linear';

export interface Circle {
  readonly center: Point;
  readonly radius: number;
}

const MOST_ROUNDS = 50;
const SMALLEST_STEP = 1e-13;

/**
 * The circle nearest to three or more points: the squares of their distances from it add up to the least. Through three points it is
 * the one circle that goes through them. Null for points in a line.
 */
export function circleNearest(points: readonly Point[]): Circle | null {
  let circle = startingCircle(points);
  for (let round = 0; circle !== null && round < MOST_ROUNDS; round += 1) {
    const { center, radius }: Circle = circle;
    const rows = points.map((point) => {
      const away = pointDistance(center, point);
      return { slopes: [(center.x - point.x) / away, (center.y - point.y) / away, -1], off: radius - away };
    });
    const step = leastSquares(rows);
    if (step === null) return null;
    const [across = 0, down = 0, wider = 0] = step;
    circle = { center: { x: center.x + across, y: center.y + down }, radius: radius + wider };
    if (Math.max(...step.map(Math.abs)) <= SMALLEST_STEP * radius) break;
  }
  return circle !== null && Number.isFinite(circle.radius) ? circle : null;
}

/** The circle x² + y² = 2ax + 2by + c that fits best, around the middle of the points so that the numbers stay small. */
function startingCircle(points: readonly Point[]): Circle | null {
  const share = 1 / points.length;
  const middle = {
    x: points.reduce((sum, { x }) => sum + x * share, 0),
    y: points.reduce((sum, { y }) => sum + y * share, 0),
  };
  const reach = Math.max(...points.map((point) => pointDistance(middle, point)));
  const rows = points.map((point) => {
    const [x, y] = [(point.x - middle.x) / reach, (point.y - middle.y) / reach];
    return { slopes: [2 * x, 2 * y, 1], off: x * x + y * y };
  });
  const solved = leastSquares(rows);
  if (solved === null) return null;
  const [a = 0, b = 0, c = 0] = solved;
  const squared = a * a + b * b + c;
  if (!(squared > 0)) return null;
  return {
    center: { x: middle.x + a * reach, y: middle.y + b * reach },
    radius: reach * Math.sqrt(squared),
  };
}

interface Row {
  readonly slopes: readonly number[];
  readonly off: number;
}

function leastSquares(rows: readonly Row[]): readonly number[] | null {
  const columns = [0, 1, 2];
  const sumOver = (part: (row: Row) => number) => rows.reduce((sum, row) => sum + part(row), 0);
  const normal = columns.map((i) =>
    columns.map((j) => sumOver(({ slopes }) => (slopes[i] ?? 0) * (slopes[j] ?? 0))),
  );
  return solveLinear(
    normal,
    columns.map((i) => sumOver(({ slopes, off }) => (slopes[i] ?? 0) * off)),
  );
}
