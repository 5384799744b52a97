import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import { outlineBounds, outlinePoints } from '#core/calculators/outline/outline-measures';
import { outlinePart } from '#core/calculators/outline/outline-part';
import { pointAlong } from '#core/calculators/outline/point-along';
import { pointMove } from '#core/geometry/point';
import type { ScrappyBindingInput } from './input';
import type { ScrappyBindingDetails } from './work';

/** The edge with a dot at every join, as the strips lie when they begin at the start that is named. */
export function scrappyBindingDiagram(
  { outline }: ScrappyBindingInput,
  { edge, joins, start }: ScrappyBindingDetails,
): Diagram {
  const { width, length } = outlineBounds(outline);
  const center = { x: width / 2, y: length / 2 };
  const path = outlinePoints(outline);
  const dot = Math.max(width, length) / 80;
  const begins = start?.along ?? 0;
  const dots = joins.map((join): DiagramPart => {
    const at = pointMove(pointAlong(path, (begins + join) / edge), center);
    return { part: 'circle', center: at, radius: dot, tone: 'seam' };
  });
  const across = { part: 'dimension', offset: -width / 12 } as const;
  return {
    title: joins.length === 0 ? 'The edge to bind' : 'The edge to bind, with a dot at every join',
    width,
    height: length,
    parts: [
      outlinePart(outline, center, 'fabric'),
      ...dots,
      { ...across, from: { x: 0, y: length }, to: { x: width, y: length }, length: width },
      { ...across, from: { x: width, y: length }, to: { x: width, y: 0 }, length },
    ],
  };
}
