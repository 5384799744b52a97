import type { Outline } from '#core/domain/outline';
import { type Point, pointMove } from '#core/geometry/point';
import type { DiagramPart, Tone } from '../diagram';
import { outlineBounds, outlinePoints } from './outline-measures';

/** The outline as one part of a drawing, to scale around `center`. Curves are true circles and ellipses. */
export function outlinePart(outline: Outline, center: Point, tone: Tone): DiagramPart {
  const { width, length } = outlineBounds(outline);
  if (outline.shape === 'circle') return { part: 'circle', center, radius: width / 2, tone };
  if (outline.shape === 'ellipse') {
    return { part: 'ellipse', center, radiusX: width / 2, radiusY: length / 2, tone };
  }
  return { part: 'polygon', points: outlinePoints(outline).map((point) => pointMove(point, center)), tone };
}
