import { roundDownTo } from '#core/units/rounding';

/** Where the beginning of the strip lies, past the first corner, and how near any join then comes to any corner. */
interface Start {
  readonly start: number;
  readonly clearance: number;
}

interface AroundEdge {
  readonly perimeter: number;
  /** Along the edge from the first corner, each within the perimeter. Never empty. */
  readonly corners: readonly number[];
  /** Along the strip from its beginning. Never empty. */
  readonly joins: readonly number[];
}

/**
 * The start that keeps every join as far from every corner as can be. A start is bad where it puts a join on a corner; there is one
 * for each join and corner. The best start is the middle of the widest gap between two bad ones next to each other.
 */
export function bestStart(edge: AroundEdge): Start {
  const bad = badStarts(edge);
  const first = bad[0] ?? 0;
  let best: Start = { start: 0, clearance: -1 };
  bad.forEach((from, index) => {
    const to = bad[index + 1] ?? first + edge.perimeter;
    const clearance = (to - from) / 2;
    if (clearance > best.clearance) best = { start: within(from + clearance, edge.perimeter), clearance };
  });
  return best;
}

/** How near a join comes to a corner when the strip begins at `start`. */
export function clearanceAt(start: number, { perimeter, corners, joins }: AroundEdge): number {
  const distances = joins.flatMap((join) =>
    corners.map((corner) => {
      const apart = within(start + join - corner, perimeter);
      return Math.min(apart, perimeter - apart);
    }),
  );
  return Math.min(...distances);
}

function badStarts({ perimeter, corners, joins }: AroundEdge): readonly number[] {
  return joins
    .flatMap((join) => corners.map((corner) => within(corner - join, perimeter)))
    .sort((one, other) => one - other);
}

function within(at: number, perimeter: number): number {
  return at - roundDownTo(at, perimeter);
}
