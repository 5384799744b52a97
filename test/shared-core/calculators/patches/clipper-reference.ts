import ClipperLib from 'clipper-lib';
import type { Polygon } from '#core/geometry/polygon';

/** Clipper works on whole numbers: a unit is cut into ten thousand, far below a millionth of an inch. */
const GRID = 1e4;

function toPath(polygon: Polygon): ClipperLib.Path {
  return polygon.map(({ x, y }) => ({ X: Math.round(x * GRID), Y: Math.round(y * GRID) }));
}

function fromPath(path: ClipperLib.Path): Polygon {
  return path.map(({ X, Y }) => ({ x: X / GRID, y: Y / GRID }));
}

/** The polygon with every side moved out (in, if negative) by `distance`; corners mitered to their point, or rounded. */
export function offsetByClipper(
  polygon: Polygon,
  distance: number,
  corners: 'miter' | 'round' = 'miter',
): Polygon {
  const join = corners === 'miter' ? ClipperLib.JoinType.jtMiter : ClipperLib.JoinType.jtRound;
  const offset = new ClipperLib.ClipperOffset(1e6, GRID);
  const path = toPath(polygon);
  if (!ClipperLib.Clipper.Orientation(path)) path.reverse();
  offset.AddPath(path, join, ClipperLib.EndType.etClosedPolygon);
  const rings: ClipperLib.Paths = [];
  offset.Execute(rings, distance * GRID);
  if (rings.length !== 1) throw new Error(`Offset gives ${String(rings.length)} rings`);
  // A side that shrinks to nothing leaves two corners within a rounding of each other.
  return fromPath(ClipperLib.Clipper.CleanPolygon(rings[0]!, 20));
}

/** Area in one set of polygons (a union) and not in the other. */
export function areaOnlyIn(covered: readonly Polygon[], by: readonly Polygon[]): number {
  return combinedArea(covered, by, ClipperLib.ClipType.ctDifference);
}

function combinedArea(
  subject: readonly Polygon[],
  clip: readonly Polygon[],
  type: ClipperLib.ClipType,
): number {
  const clipper = new ClipperLib.Clipper();
  const oriented = (polygon: Polygon) => {
    const path = toPath(polygon);
    return ClipperLib.Clipper.Orientation(path) ? path : path.reverse();
  };
  clipper.AddPaths(subject.map(oriented), ClipperLib.PolyType.ptSubject, true);
  clipper.AddPaths(clip.map(oriented), ClipperLib.PolyType.ptClip, true);
  const rings: ClipperLib.Paths = [];
  const { pftNonZero } = ClipperLib.PolyFillType;
  clipper.Execute(type, rings, pftNonZero, pftNonZero);
  return rings.reduce((sum, ring) => sum + ClipperLib.Clipper.Area(ring), 0) / GRID ** 2;
}
