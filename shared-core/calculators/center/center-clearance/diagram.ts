import type { Diagram } from '#core/calculators/diagram';
import { type CenterClearanceInput, patchOf } from './input';
import type { CenterClearanceDetails } from './work';
import { patchPart, patchReach } from './center-patch';

/** The patch with the hole in it. A seam line that leaves the patch has the tone of a warning. */
export function centerClearanceDiagram(
  input: CenterClearanceInput,
  details: CenterClearanceDetails,
): Diagram {
  const patch = patchOf(input);
  const off = Math.max(Math.abs(input.offsetAcross), Math.abs(input.offsetDown));
  const half = 1.1 * Math.max(patchReach(patch), off + details.seamRadius);
  const middle = { x: half, y: half };
  const center = { x: half + input.offsetAcross, y: half + input.offsetDown };
  const arm = details.cutRadius / 8;
  return {
    title: 'The center patch with the hole and its seam line',
    width: 2 * half,
    height: 2 * half,
    parts: [
      patchPart(patch, middle),
      {
        part: 'circle',
        center,
        radius: details.seamRadius,
        tone: details.staysInside ? 'seam' : 'warning',
      },
      { part: 'circle', center, radius: details.cutRadius, tone: 'cut' },
      {
        part: 'line',
        from: { x: center.x - arm, y: center.y },
        to: { x: center.x + arm, y: center.y },
        tone: 'mark',
      },
      {
        part: 'line',
        from: { x: center.x, y: center.y - arm },
        to: { x: center.x, y: center.y + arm },
        tone: 'mark',
      },
      {
        part: 'dimension',
        from: { x: center.x - details.cutRadius, y: center.y },
        to: { x: center.x + details.cutRadius, y: center.y },
        offset: details.cutRadius / 3,
        length: input.holeDiameter,
      },
    ],
  };
}
