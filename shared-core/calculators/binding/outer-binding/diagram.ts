import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import { outlineBounds } from '#core/calculators/outline/outline-measures';
import { insetParts, outlinePart } from '#core/calculators/outline/outline-part';
import type { OuterBindingInput } from './input';

/** The outline with its hole, slit and line of stitching, and its size. */
export function outerBindingDiagram(input: OuterBindingInput): Diagram {
  const { outline, hole, hasSlit } = input;
  const { width, length } = outlineBounds(outline);
  const center = { x: width / 2, y: length / 2 };
  const radius = hole === null ? 0 : hole.diameter / 2;
  const isInOne = hasSlit && input.slitBoundWith === 'outside-and-hole';
  const holePart: DiagramPart = { part: 'circle', center, radius, tone: isInOne ? 'cut' : 'plan' };
  const slitPart: DiagramPart = {
    part: 'line',
    from: width < length ? { x: center.x + radius, y: center.y } : { x: center.x, y: center.y + radius },
    to: width < length ? { x: width, y: center.y } : { x: center.x, y: length },
    tone: input.slitBoundWith === 'hole' ? 'plan' : 'cut',
  };
  return {
    title: 'The edge to bind, with its stitching',
    width,
    height: length,
    parts: [
      outlinePart(outline, center, 'fabric'),
      ...stitchingParts(input),
      ...(hole === null ? [] : [holePart]),
      ...(hole !== null && hasSlit ? [slitPart] : []),
      {
        part: 'dimension',
        from: { x: 0, y: length },
        to: { x: width, y: length },
        offset: -width / 12,
        length: width,
      },
      {
        part: 'dimension',
        from: { x: width, y: length },
        to: { x: width, y: 0 },
        offset: -width / 12,
        length,
      },
    ],
  };
}

/** Inside the edge by the seam allowance. Left out for a list of sides, which is only a sketch, and on a very small outline. */
function stitchingParts({ outline, seamAllowance: seam }: OuterBindingInput): readonly DiagramPart[] {
  const { width, length } = outlineBounds(outline);
  if (Math.min(width, length) < 6 * seam) return [];
  return insetParts(outline, seam, { x: width / 2, y: length / 2 });
}
