import type { Point } from '#core/geometry/point';
import type { Diagram, DiagramPart } from '../diagram';
import { outlineBounds } from '../outline/outline-measures';
import { insetParts, outlinePart } from '../outline/outline-part';
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
      ...insetParts(input.outline, inset, center),
      ...holeParts(input, center, inset, length / 2),
    ],
  };
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
