import type { Polygon } from '#core/geometry/polygon';
import type { Segment } from '#core/geometry/segment';

/** A patch as cut from fabric, x along the strip and y across it, at its exact size in 1/320 mm. */
export interface CutShape {
  readonly outline: Polygon;
  /** What it is cut into, before or after sewing; trimmed to the seam where it is trimmed. */
  readonly pieces: readonly ShapePiece[];
  /** Cuts inside the outline. */
  readonly cuts: readonly Segment[];
  /** Rectangles are rounded side by side; other shapes keep their angles and grow with the strip. */
  readonly isRectangle: boolean;
  /** How much of a strip the first takes, and each that follows. */
  readonly first: number;
  readonly pitch: number;
}

export interface ShapePiece {
  readonly cut: Polygon;
  /** Its seam lines, where they are not simply the cut edges moved in by the seam; null where they are. */
  readonly finished: Polygon | null;
}

type Corner = readonly [x: number, y: number];

export function polygonOf(...corners: readonly Corner[]): Polygon {
  return corners.map(([x, y]) => ({ x, y }));
}

export function rectangleAt(x: number, y: number, width: number, height: number): Polygon {
  return polygonOf([x, y], [x + width, y], [x + width, y + height], [x, y + height]);
}

/** A rectangle used whole. */
export function wholeShape(across: number, along: number): CutShape {
  const outline = rectangleAt(0, 0, along, across);
  return rectangular(outline, along, [outline], []);
}

/** A rectangle cut on one diagonal into two right triangles. */
export function halvedShape(across: number, along: number): CutShape {
  const pieces = [
    polygonOf([0, 0], [along, 0], [0, across]),
    polygonOf([along, across], [0, across], [along, 0]),
  ];
  const cut = segment([along, 0], [0, across]);
  return rectangular(rectangleAt(0, 0, along, across), along, pieces, [cut]);
}

/** A square cut on both diagonals into four triangles with their long sides on the edge. */
export function quarteredShape(side: number): CutShape {
  const middle: Corner = [side / 2, side / 2];
  const pieces = [
    polygonOf([0, 0], [side, 0], middle),
    polygonOf([side, 0], [side, side], middle),
    polygonOf([side, side], [0, side], middle),
    polygonOf([0, side], [0, 0], middle),
  ];
  return rectangular(rectangleAt(0, 0, side, side), side, pieces, diagonals(side));
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
  const pieces = corners.flatMap(([x, y]) => [
    polygonOf([half, half], [half, y], [x, y]),
    polygonOf([half, half], [x, y], [x, half]),
  ]);
  const midlines = [segment([half, 0], [half, side]), segment([0, half], [side, half])];
  return rectangular(rectangleAt(0, 0, side, side), side, pieces, [...diagonals(side), ...midlines]);
}

/**
 * A corner square sewn on its diagonal and flipped: what is kept lies toward the corner (0, 0), trimmed one seam past the
 * stitching. `leg` is the finished corner, the square's side `leg + 2s`.
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
  return { ...shape, pieces: [{ cut, finished }] };
}

/**
 * A rectangle of which `cut` is kept once its corners or ends were sewn and trimmed; `finished` are its seam lines where
 * they are not simply one seam inside.
 */
export function trimmedShape(
  across: number,
  along: number,
  cut: Polygon,
  finished: Polygon | null,
): CutShape {
  return { ...rectangular(rectangleAt(0, 0, along, across), along, [cut], []), pieces: [{ cut, finished }] };
}

/** Any shape that follows its neighbor along the strip every `pitch`; the first takes `first`. */
export function stripShape(outline: Polygon, first: number, pitch: number): CutShape {
  return { outline, pieces: [{ cut: outline, finished: null }], cuts: [], isRectangle: false, first, pitch };
}

function rectangular(
  outline: Polygon,
  along: number,
  pieces: readonly Polygon[],
  cuts: readonly Segment[],
): CutShape {
  return {
    outline,
    pieces: pieces.map((cut) => ({ cut, finished: null })),
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
