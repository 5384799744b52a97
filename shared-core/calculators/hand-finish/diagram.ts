import { growPolygon } from '#core/geometry/offset-polygon';
import { type Point, pointMove } from '#core/geometry/point';
import type { Diagram, DiagramPart } from '../diagram';
import { outlineBounds, outlinePoints } from '../outline/outline-measures';
import { outlinePart } from '../outline/outline-part';
import type { HandFinishInput } from './input';

/** The back of the quilt with the line to sew. A list of sides is only a sketch, so it gets no line inside. */
export function handDiagram(input: HandFinishInput): Diagram {
  const { width, length } = outlineBounds(input.outline);
  const margin = Math.max(width, length) / 12;
  const center = { x: margin + width / 2, y: margin + length / 2 };
  const inset = input.seam + input.backCover;
  return {
    title: 'The line sewn by hand, seen from the back',
    width: width + 2 * margin,
    height: length + 2 * margin,
    parts: [
      outlinePart(input.outline, center, 'fabric'),
      ...outerLine(input, center, inset),
      ...holeParts(input, center, inset, length / 2),
    ],
  };
}

function outerLine({ outline }: HandFinishInput, center: Point, inset: number): readonly DiagramPart[] {
  if (outline.shape === 'sides') return [];
  if (outline.shape === 'circle') {
    return [{ part: 'circle', center, radius: outline.diameter / 2 - inset, tone: 'seam' }];
  }
  if (outline.shape === 'ellipse') {
    const [radiusX, radiusY] = [outline.width / 2 - inset, outline.length / 2 - inset];
    return [{ part: 'ellipse', center, radiusX, radiusY, tone: 'seam' }];
  }
  const points = growPolygon(outlinePoints(outline), -inset).map((point) => pointMove(point, center));
  return [{ part: 'polygon', points, tone: 'seam' }];
}

function holeParts(
  { hole, hasSlit }: HandFinishInput,
  center: Point,
  inset: number,
  toEdge: number,
): readonly DiagramPart[] {
  if (hole === null) return [];
  const radius = hole.diameter / 2;
  const slit: DiagramPart = {
    part: 'line',
    from: { x: center.x, y: center.y + radius },
    to: { x: center.x, y: center.y + toEdge },
    tone: 'cut',
  };
  return [
    { part: 'circle', center, radius, tone: 'cut' },
    { part: 'circle', center, radius: radius + inset, tone: 'seam' },
    ...(hasSlit ? [slit] : []),
  ];
}
