import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import type { InnerBindingInput } from './input';
import { foldReach } from '#core/calculators/binding/strip-width';

/** The hole from above: cut edge, stitching, and the fold of the strip while you sew. A slit opens downward. */
export function ringDiagram(input: InnerBindingInput): Diagram {
  const cut = input.holeDiameter / 2;
  const stitched = cut + input.seamAllowance;
  const fold = stitched + foldReach(input.fold, input.stripWidth, input.seamAllowance);
  const half = fold * 1.25;
  const center = { x: half, y: half };
  const slit: readonly DiagramPart[] = input.hasSlit
    ? [{ part: 'line', from: { x: half, y: half + cut }, to: { x: half, y: 2 * half }, tone: 'cut' }]
    : [];
  return {
    title: 'The ring: cut edge, stitching, and fold while you sew',
    width: 2 * half,
    height: 2 * half,
    parts: [
      {
        part: 'polygon',
        points: [
          { x: 0, y: 0 },
          { x: 2 * half, y: 0 },
          { x: 2 * half, y: 2 * half },
          { x: 0, y: 2 * half },
        ],
        tone: 'fabric',
      },
      { part: 'circle', center, radius: fold, tone: 'fold' },
      { part: 'circle', center, radius: stitched, tone: 'seam' },
      { part: 'circle', center, radius: cut, tone: 'cut' },
      ...slit,
      {
        part: 'line',
        from: { x: half - cut / 8, y: half },
        to: { x: half + cut / 8, y: half },
        tone: 'mark',
      },
      {
        part: 'line',
        from: { x: half, y: half - cut / 8 },
        to: { x: half, y: half + cut / 8 },
        tone: 'mark',
      },
      {
        part: 'dimension',
        from: { x: half - cut, y: half },
        to: { x: half + cut, y: half },
        offset: cut / 3,
        length: input.holeDiameter,
      },
    ],
  };
}
