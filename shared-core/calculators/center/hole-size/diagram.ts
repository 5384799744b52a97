import type { Diagram } from '#core/calculators/diagram';
import type { HoleSizeInput } from './input';
import type { HoleSizeDetails } from './work';

export function holeDiagram(input: HoleSizeInput, details: HoleSizeDetails): Diagram {
  const cut = details.diameter / 2;
  const half = 1.1 * (cut + input.seamAllowance);
  const center = { x: half, y: half };
  const { through } = details;
  return {
    title: 'The hole, its seam line, its bound edge, and the thing that goes through it',
    width: 2 * half,
    height: 2 * half,
    parts: [
      { part: 'circle', center, radius: cut + input.seamAllowance, tone: 'seam' },
      { part: 'circle', center, radius: cut, tone: 'cut' },
      ...(details.bound < details.diameter
        ? [{ part: 'circle', center, radius: details.bound / 2, tone: 'fold' } as const]
        : []),
      ...(through === null ? [] : [{ part: 'circle', center, radius: through / 2, tone: 'plan' } as const]),
      {
        part: 'dimension',
        from: { x: half - cut, y: half },
        to: { x: half + cut, y: half },
        offset: half / 8,
        length: details.diameter,
      },
    ],
  };
}
