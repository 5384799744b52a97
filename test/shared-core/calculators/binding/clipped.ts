import ClipperLib from 'clipper-lib';
import type { Polygon } from '#core/geometry/polygon';
import { polygonArea, polygonPerimeter } from '#core/geometry/polygon';

/**
 * The library counts in whole numbers, so it is given 64 to a unit; its exact arithmetic reaches 47 million, 90 in from (0, 0).
 * A corner is then at most 1/90 unit off its place.
 */
const GRID = 64;

/** An independent polygon library, on the grid it works on: in its own words a point is { X, Y }. */
const toPath = (polygon: Polygon) =>
  polygon.map(({ x, y }) => ({ X: Math.round(x * GRID), Y: Math.round(y * GRID) }));
const toPolygon = (path: readonly { readonly X: number; readonly Y: number }[]): Polygon =>
  path.map(({ X, Y }) => ({ x: X / GRID, y: Y / GRID }));

/**
 * Edge of the polygon moved in by `inward` with pointed corners. The edge of a convex polygon changes by at most 2π × how far its
 * corners stray; they stray twice, on the way in and on the way out, so this is within 4π ÷ 90 = 0.14 units of the truth.
 */
export function perimeterMovedIn(polygon: Polygon, inward: number): number {
  const offset = new ClipperLib.ClipperOffset(1_000, 0.25);
  offset.AddPath(toPath(polygon), ClipperLib.JoinType.jtMiter, ClipperLib.EndType.etClosedPolygon);
  const solution: { X: number; Y: number }[][] = [];
  offset.Execute(solution, -inward * GRID);
  return solution.reduce((sum, path) => sum + polygonPerimeter(toPolygon(path)), 0);
}

/** Area that the polygons cover together within `whole`, each spot counted once. */
export function areaCovered(whole: Polygon, polygons: readonly Polygon[]): number {
  const clipper = new ClipperLib.Clipper();
  clipper.AddPaths(polygons.map(toPath), ClipperLib.PolyType.ptSubject, true);
  clipper.AddPath(toPath(whole), ClipperLib.PolyType.ptClip, true);
  const solution: { X: number; Y: number }[][] = [];
  clipper.Execute(
    ClipperLib.ClipType.ctIntersection,
    solution,
    ClipperLib.PolyFillType.pftNonZero,
    ClipperLib.PolyFillType.pftNonZero,
  );
  return solution.reduce((sum, path) => sum + polygonArea(toPolygon(path)), 0);
}
