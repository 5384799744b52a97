import { assertNever } from '#core/assert-never';
import type { Outline } from '#core/domain/outline';
import { circleArea } from '#core/geometry/circle';
import { ellipseArea } from '#core/geometry/ellipse';
import { regularPolygonArea, regularPolygonFromInradius } from '#core/geometry/regular-polygon';
import {
  cornerRadiusOf,
  outlineBounds,
  outlineCornerAngles,
  outlinePerimeter,
  outlineTightestRadius,
} from './outline-measures';

/**
 * Length of the line at a distance of `inset` inside the finished edge, in 1/320 mm. A curve is shorter there by 2π × inset, a
 * corner with inner angle a by 2 × inset ÷ tan(a/2). A list of sides has no angles, so it stays at full length and is never too
 * short. null if the line would cross itself: the project is too small, or an ellipse curves too tightly.
 */
export function outlineInsetPerimeter(outline: Outline, inset: number): number | null {
  const { width, length } = outlineBounds(outline);
  if (inset * 2 >= Math.min(width, length)) return null;
  const perimeter = outlinePerimeter(outline);
  if (outline.shape === 'rounded') return roundedInset(perimeter, cornerRadiusOf(outline), inset);
  const tightest = outlineTightestRadius(outline);
  if (tightest !== null) return inset >= tightest ? null : perimeter - 2 * Math.PI * inset;
  const lost = outlineCornerAngles(outline).reduce(
    (sum, angle) => sum + 2 / Math.tan((angle * Math.PI) / 360),
    0,
  );
  return perimeter - inset * lost;
}

/** Rounded corners are sharp on a line further inside than their radius. */
function roundedInset(perimeter: number, radius: number, inset: number): number {
  return perimeter - 2 * Math.PI * Math.min(inset, radius) - 8 * Math.max(0, inset - radius);
}

/** In (1/320 mm)². A list of sides has no angles, so it counts as its bounding rectangle, which is never too small. */
export function outlineArea(outline: Outline): number {
  switch (outline.shape) {
    case 'circle':
      return circleArea(outline.diameter / 2);
    case 'rounded':
      return outline.width * outline.length - (4 - Math.PI) * cornerRadiusOf(outline) ** 2;
    case 'ellipse':
      return ellipseArea(outline.width / 2, outline.length / 2);
    case 'hexagon':
      return regularPolygonArea(regularPolygonFromInradius(6, outline.acrossFlats / 2));
    case 'octagon':
      return regularPolygonArea(regularPolygonFromInradius(8, outline.acrossFlats / 2));
    case 'square':
    case 'rectangle':
    case 'sides': {
      const { width, length } = outlineBounds(outline);
      return width * length;
    }
    default:
      return assertNever(outline);
  }
}
