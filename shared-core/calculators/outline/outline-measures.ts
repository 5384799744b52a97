import { assertNever } from '#core/assert-never';
import type { Hole, Outline } from '#core/domain/outline';
import { circlePerimeter } from '#core/geometry/circle';
import { ellipsePerimeter } from '#core/geometry/ellipse';
import type { Point } from '#core/geometry/point';
import { type Polygon, polygonSides } from '#core/geometry/polygon';
import {
  regularPolygonCorners,
  regularPolygonFromInradius,
  regularPolygonPerimeter,
} from '#core/geometry/regular-polygon';

/** The rectangle around an outline, with horizontal and vertical sides; in 1/320 mm, not rounded. */
export interface OutlineBounds {
  readonly width: number;
  readonly length: number;
}

/** Length of the finished edge in 1/320 mm, not rounded. */
export function outlinePerimeter(outline: Outline): number {
  switch (outline.shape) {
    case 'square':
      return 4 * outline.side;
    case 'rectangle':
      return 2 * (outline.width + outline.length);
    case 'rounded':
      return 2 * (outline.width + outline.length) - (8 - 2 * Math.PI) * cornerRadiusOf(outline);
    case 'circle':
      return circlePerimeter(outline.diameter / 2);
    case 'ellipse':
      return ellipsePerimeter(outline.width / 2, outline.length / 2);
    case 'hexagon':
      return regularPolygonPerimeter(regularPolygonFromInradius(6, outline.acrossFlats / 2));
    case 'octagon':
      return regularPolygonPerimeter(regularPolygonFromInradius(8, outline.acrossFlats / 2));
    case 'sides':
      return outline.sides.reduce<number>((sum, side) => sum + side, 0);
    default:
      return assertNever(outline);
  }
}

/** A hexagon has sides at its top and bottom, so it is wider than long; an octagon fits a square. */
export function outlineBounds(outline: Outline): OutlineBounds {
  switch (outline.shape) {
    case 'square':
      return { width: outline.side, length: outline.side };
    case 'circle':
      return { width: outline.diameter, length: outline.diameter };
    case 'hexagon':
      return { width: (2 * outline.acrossFlats) / Math.sqrt(3), length: outline.acrossFlats };
    case 'octagon':
      return { width: outline.acrossFlats, length: outline.acrossFlats };
    case 'rectangle':
    case 'rounded':
    case 'ellipse':
    case 'sides':
      return { width: outline.width, length: outline.length };
    default:
      return assertNever(outline);
  }
}

/** Inner angles of the corners in degrees; empty for a curve, and for a list of sides, which has no angles. */
export function outlineCornerAngles(outline: Outline): readonly number[] {
  switch (outline.shape) {
    case 'square':
    case 'rectangle':
      return [90, 90, 90, 90];
    case 'hexagon':
      return Array.from({ length: 6 }, () => 120);
    case 'octagon':
      return Array.from({ length: 8 }, () => 135);
    case 'rounded':
    case 'circle':
    case 'ellipse':
    case 'sides':
      return [];
    default:
      return assertNever(outline);
  }
}

/** Radius of the tightest curve of the edge (an ellipse has it at the ends of its long axis); null if the sides are straight. */
export function outlineTightestRadius(outline: Outline): number | null {
  if (outline.shape === 'circle') return outline.diameter / 2;
  if (outline.shape === 'rounded') return cornerRadiusOf(outline);
  if (outline.shape !== 'ellipse') return null;
  const [short, long] = [outline.width, outline.length].sort((a, b) => a - b).map((axis) => axis / 2);
  return short === undefined || long === undefined ? null : (short * short) / long;
}

type RoundedOutline = Extract<Outline, { readonly shape: 'rounded' }>;

/** The radius of rounded corners, at most half of the shorter side: the edge is then round at both ends. */
export function cornerRadiusOf({ cornerRadius, width, length }: RoundedOutline): number {
  return Math.min(cornerRadius, width / 2, length / 2);
}

/** From the middle of the nearest edge to the hole at the center. 0 or negative if the hole is too wide for the outline. */
export function outlineSlit(outline: Outline, hole: Hole): number {
  const { width, length } = outlineBounds(outline);
  return (Math.min(width, length) - hole.diameter) / 2;
}

const CURVE_POINTS = 180;
const CORNER_POINTS = 45;

/**
 * The corners of the edge around (0, 0), clockwise with y down: exact for straight sides, 180 points for a curve. A list of
 * sides has no angles, so its corners are only a sketch: they are on the ellipse of its width and length, spaced by the
 * lengths of the sides.
 */
export function outlinePoints(outline: Outline): Polygon {
  const { width, length } = outlineBounds(outline);
  switch (outline.shape) {
    case 'square':
    case 'rectangle':
      return [
        { x: -width / 2, y: -length / 2 },
        { x: width / 2, y: -length / 2 },
        { x: width / 2, y: length / 2 },
        { x: -width / 2, y: length / 2 },
      ];
    case 'hexagon':
      return regularPolygonCorners(regularPolygonFromInradius(6, outline.acrossFlats / 2));
    case 'octagon':
      return regularPolygonCorners(
        regularPolygonFromInradius(8, outline.acrossFlats / 2),
        { x: 0, y: 0 },
        Math.PI / 8,
      );
    case 'rounded':
      return roundedRectangle(width, length, cornerRadiusOf(outline));
    case 'circle':
    case 'ellipse':
      return Array.from({ length: CURVE_POINTS }, (_, index) =>
        onEllipse(width, length, (2 * Math.PI * index) / CURVE_POINTS),
      );
    case 'sides':
      return pointsOfSides(outline.sides, width, length);
    default:
      return assertNever(outline);
  }
}

/** A rectangle around (0, 0) with rounded corners, clockwise from its top right one; 45 points for each corner. */
export function roundedRectangle(width: number, length: number, radius: number): Polygon {
  const corners = [
    { x: 1, y: -1 },
    { x: 1, y: 1 },
    { x: -1, y: 1 },
    { x: -1, y: -1 },
  ];
  return corners.flatMap(({ x, y }, corner) =>
    Array.from({ length: CORNER_POINTS }, (_, index) => {
      const angle = (Math.PI / 2) * (corner - 1 + index / (CORNER_POINTS - 1));
      return {
        x: x * (width / 2 - radius) + radius * Math.cos(angle),
        y: y * (length / 2 - radius) + radius * Math.sin(angle),
      };
    }),
  );
}

/** The middle of the first side is at the top. */
function pointsOfSides(sides: readonly number[], width: number, length: number): Polygon {
  const around = sides.reduce((sum, side) => sum + side, 0);
  const top = -Math.PI / 2;
  let before = -(sides[0] ?? 0) / 2;
  return sides.map((side) => {
    const point = onEllipse(width, length, top + (2 * Math.PI * before) / around);
    before += side;
    return point;
  });
}

/**
 * The same corners in the same order, starting with the middle of the top edge, which is added where it is not a corner:
 * the path along which a drawing follows the edge.
 */
export function outlineFromTop(outline: Outline): Polygon {
  const corners = outlinePoints(outline);
  const top = polygonSides(corners).findIndex(
    ({ from, to }) => from.y < 0 && from.x <= NO_WIDTH && to.x > NO_WIDTH,
  );
  const [from, to] = [corners[top], corners[(top + 1) % corners.length]];
  if (from === undefined || to === undefined) return corners;
  const after = [...corners.slice(top + 1), ...corners.slice(0, top)];
  if (Math.abs(from.x) <= NO_WIDTH) return [from, ...after];
  const middle = { x: 0, y: from.y + ((to.y - from.y) * -from.x) / (to.x - from.x) };
  return [middle, ...after, from];
}

/** Far below one unit: a corner this close to the vertical middle line counts as on it. */
const NO_WIDTH = 1e-6;

function onEllipse(width: number, length: number, angle: number): Point {
  return { x: (width / 2) * Math.cos(angle), y: (length / 2) * Math.sin(angle) };
}
