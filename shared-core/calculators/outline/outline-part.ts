import type { Outline } from '#core/domain/outline';
import { growPolygon } from '#core/geometry/offset-polygon';
import { type Point, pointMove } from '#core/geometry/point';
import type { Polygon } from '#core/geometry/polygon';
import type { DiagramPart, Tone } from '../diagram';
import { cornerRadiusOf, outlineBounds, outlinePoints, roundedRectangle } from './outline-measures';

/** The outline as one part of a drawing, to scale around `center`. Curves are true circles and ellipses. */
export function outlinePart(outline: Outline, center: Point, tone: Tone): DiagramPart {
  const { width, length } = outlineBounds(outline);
  if (outline.shape === 'circle') return { part: 'circle', center, radius: width / 2, tone };
  if (outline.shape === 'ellipse') {
    return { part: 'ellipse', center, radiusX: width / 2, radiusY: length / 2, tone };
  }
  return { part: 'polygon', points: outlinePoints(outline).map((point) => pointMove(point, center)), tone };
}

/**
 * The line at a distance of `inset` inside the outline, as part of the same drawing. Nothing for a list of sides, which is only a
 * sketch. The caller makes sure that there is room for it.
 */
export function insetParts(outline: Outline, inset: number, center: Point): readonly DiagramPart[] {
  const tone = 'seam';
  switch (outline.shape) {
    case 'sides':
      return [];
    case 'circle':
      return [{ part: 'circle', center, radius: outline.diameter / 2 - inset, tone }];
    case 'ellipse': {
      const [radiusX, radiusY] = [outline.width / 2 - inset, outline.length / 2 - inset];
      return [{ part: 'ellipse', center, radiusX, radiusY, tone }];
    }
    case 'square':
    case 'rectangle':
    case 'rounded':
    case 'hexagon':
    case 'octagon': {
      const points = insetPoints(outline, inset).map((point) => pointMove(point, center));
      return [{ part: 'polygon', points, tone }];
    }
  }
}

function insetPoints(outline: Outline, inset: number): Polygon {
  if (outline.shape !== 'rounded') return growPolygon(outlinePoints(outline), -inset);
  const { width, length } = outline;
  return roundedRectangle(
    width - 2 * inset,
    length - 2 * inset,
    Math.max(0, cornerRadiusOf(outline) - inset),
  );
}
