import type { Polygon } from '#core/geometry/polygon';
import type { Segment } from '#core/geometry/segment';

/** A patch as cut from fabric, x along the strip and y across it, at its exact size in 1/320 mm. */
export interface CutShape {
  readonly outline: Polygon;
  /** The patches it is cut into, before or after sewing, as they are once they are trimmed. */
  readonly patches: readonly ShapePatch[];
  /** Cuts inside the outline. */
  readonly cuts: readonly Segment[];
  /** A rectangle rounds each side by itself; any other shape keeps its angles and grows with the strip. */
  readonly isRectangle: boolean;
  /** How much of a strip the first one takes, and each one after it. */
  readonly first: number;
  readonly pitch: number;
}

export interface ShapePatch {
  readonly cut: Polygon;
  /** Its seam lines; null if they are the cut edges moved in by the seam. */
  readonly finished: Polygon | null;
}

type Corner = readonly [x: number, y: number];

export function polygonOf(...corners: readonly Corner[]): Polygon {
  return corners.map(([x, y]) => ({ x, y }));
}

export function rectangleAt(x: number, y: number, width: number, height: number): Polygon {
  return polygonOf([x, y], [x + width, y], [x + width, y + height], [x, y + height]);
}

/** A rectangle that is not cut any further. */
export function wholeShape(across: number, along: number): CutShape {
  const outline = rectangleAt(0, 0, along, across);
  return rectangular(outline, along, [outline], []);
}

/** A rectangle cut on one diagonal into two right triangles. */
export function halvedShape(across: number, along: number): CutShape {
  const triangles = [
    polygonOf([0, 0], [along, 0], [0, across]),
    polygonOf([along, across], [0, across], [along, 0]),
  ];
  const cut = segment([along, 0], [0, across]);
  return rectangular(rectangleAt(0, 0, along, across), along, triangles, [cut]);
}

/** A square cut on both diagonals into four triangles; their long sides are its edges. */
export function quarteredShape(side: number): CutShape {
  const middle: Corner = [side / 2, side / 2];
  const triangles = [
    polygonOf([0, 0], [side, 0], middle),
    polygonOf([side, 0], [side, side], middle),
    polygonOf([side, side], [0, side], middle),
    polygonOf([0, side], [0, 0], middle),
  ];
  return rectangular(rectangleAt(0, 0, side, side), side, triangles, diagonals(side));
}

/** A square cut on both diagonals and both midlines into eight triangles. */
export function eighthsShape(side: number): CutShape {
  const half = side / 2;
  const corners: readonly Corner[] = [
    [0, 0],
    [side, 0],
    [side, side],
    [0, side],
  ];
  const triangles = corners.flatMap(([x, y]) => [
    polygonOf([half, half], [half, y], [x, y]),
    polygonOf([half, half], [x, y], [x, half]),
  ]);
  const midlines = [segment([half, 0], [half, side]), segment([0, half], [side, half])];
  return rectangular(rectangleAt(0, 0, side, side), side, triangles, [...diagonals(side), ...midlines]);
}

/**
 * A corner square sewn on its diagonal and flipped. The kept patch is at the corner (0, 0), trimmed one seam past the stitching.
 * `leg` is the finished corner; the side of the square is `leg + 2s`.
 */
export function flippedCornerShape(leg: number, seam: number): CutShape {
  const side = leg + 2 * seam;
  const trimmed = seam * Math.SQRT2;
  const cut = polygonOf([0, 0], [side, 0], [side, trimmed], [trimmed, side], [0, side]);
  const finished = polygonOf([seam, seam], [seam + leg, seam], [seam, seam + leg]);
  const shape = rectangular(
    rectangleAt(0, 0, side, side),
    side,
    [cut],
    [segment([side, trimmed], [trimmed, side])],
  );
  return { ...shape, patches: [{ cut, finished }] };
}

/** A rectangle whose corners or ends are sewn and trimmed, which leaves `cut`. `finished` is null if its seam lines are one seam inside. */
export function trimmedShape(
  across: number,
  along: number,
  cut: Polygon,
  finished: Polygon | null,
): CutShape {
  return { ...rectangular(rectangleAt(0, 0, along, across), along, [cut], []), patches: [{ cut, finished }] };
}

/** Any shape repeated along the strip every `pitch`; the first one takes `first`. */
export function stripShape(outline: Polygon, first: number, pitch: number): CutShape {
  return { outline, patches: [{ cut: outline, finished: null }], cuts: [], isRectangle: false, first, pitch };
}

function rectangular(
  outline: Polygon,
  along: number,
  patches: readonly Polygon[],
  cuts: readonly Segment[],
): CutShape {
  return {
    outline,
    patches: patches.map((cut) => ({ cut, finished: null })),
    cuts,
    isRectangle: true,
    first: along,
    pitch: along,
  };
}

function diagonals(side: number): readonly Segment[] {
  return [segment([0, 0], [side, side]), segment([side, 0], [0, side])];
}

function segment([fromX, fromY]: Corner, [toX, toY]: Corner): Segment {
  return { from: { x: fromX, y: fromY }, to: { x: toX, y: toY } };
}
