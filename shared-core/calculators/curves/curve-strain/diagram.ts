import { foldReach } from '#core/calculators/binding/strip-width';
import type { Diagram } from '#core/calculators/diagram';
import type { CurveStrainInput } from './input';
import type { CurveStrainDetails } from './work';

/** The arc around its center: cut edge, stitching and fold. */
export function curveStrainDiagram(input: CurveStrainInput, details: CurveStrainDetails): Diagram {
  const reach = foldReach(input.fold, input.stripWidth, input.seamAllowance);
  const fold = details.seamRadius + (input.side === 'inside' ? reach : -reach);
  const half = 1.1 * Math.max(input.radius, fold);
  const center = { x: half, y: half };
  const arc = { part: 'arc', center, fromDegrees: 0, toDegrees: input.arc } as const;
  return {
    title: 'The curve: cut edge, stitching, and fold while you sew',
    width: 2 * half,
    height: 2 * half,
    parts: [
      { ...arc, radius: input.radius, tone: 'cut' },
      { ...arc, radius: details.seamRadius, tone: 'seam' },
      ...(fold > 0 ? [{ ...arc, radius: fold, tone: 'fold' } as const] : []),
      {
        part: 'dimension',
        from: center,
        to: { x: half + input.radius, y: half },
        offset: half / 10,
        length: input.radius,
      },
    ],
  };
}
