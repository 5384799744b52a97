import { assertNever } from '#core/assert-never';
import { clearanceOfPoint } from '#core/geometry/clearance-of-point';
import { type Point, pointDistance, pointMove } from '#core/geometry/point';
import { type Polygon, polygonSides } from '#core/geometry/polygon';
import { regularPolygonCorners, regularPolygonFromInradius } from '#core/geometry/regular-polygon';
import { pointToSegmentDistance } from '#core/geometry/segment';
import type { DiagramPart } from '#core/calculators/diagram';
import type { OnePatch } from './input';

/**
 * The patch in the middle of the project, around its own center (0, 0). `across` is the side of a square, the diameter of a
 * circle, or twice the distance from the middle of a regular polygon to its sides. A polygon has a side at the bottom.
 */
export interface CenterPatch {
  readonly shape: 'square' | 'circle' | 'polygon';
  readonly across: number;
  readonly sides: number;
}

/** The patch in the form the geometry takes. */
export function patchOf({ patchShape, patchAcross, patchSides }: OnePatch): CenterPatch {
  return { shape: patchShape, across: patchAcross, sides: patchSides };
}

/** Corners of the patch; none for a circle. */
export function patchCorners({ shape, across, sides }: CenterPatch): Polygon {
  const half = across / 2;
  switch (shape) {
    case 'square':
      return [
        { x: -half, y: -half },
        { x: half, y: -half },
        { x: half, y: half },
        { x: -half, y: half },
      ];
    case 'polygon':
      return regularPolygonCorners(
        regularPolygonFromInradius(sides, half),
        { x: 0, y: 0 },
        Math.PI / 2 - Math.PI / sides,
      );
    case 'circle':
      return [];
    default:
      return assertNever(shape);
  }
}

/** How far the patch reaches from its middle, across or down, whichever is farther. */
export function patchReach(patch: CenterPatch): number {
  const reaches = patchCorners(patch).flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]);
  return Math.max(patch.across / 2, ...reaches);
}

/** From a point to the nearest seam around the patch: positive inside, negative outside. */
export function distanceToPatchEdge(patch: CenterPatch, point: Point): number {
  return patch.shape === 'circle'
    ? patch.across / 2 - pointDistance(point, { x: 0, y: 0 })
    : clearanceOfPoint(patchCorners(patch), point);
}

/** How many of the seams around the patch are at least partly inside a circle. A round patch has one seam. */
export function seamsCrossed(patch: CenterPatch, center: Point, radius: number): number {
  if (patch.shape === 'circle') {
    const off = pointDistance(center, { x: 0, y: 0 });
    return Math.abs(patch.across / 2 - off) < radius ? 1 : 0;
  }
  return polygonSides(patchCorners(patch)).filter((side) => pointToSegmentDistance(center, side) < radius)
    .length;
}

/** The patch as one part of a drawing, with its center at `at`. */
export function patchPart(patch: CenterPatch, at: Point): DiagramPart {
  return patch.shape === 'circle'
    ? { part: 'circle', center: at, radius: patch.across / 2, tone: 'fabric' }
    : {
        part: 'polygon',
        points: patchCorners(patch).map((corner) => pointMove(corner, at)),
        tone: 'fabric',
      };
}
