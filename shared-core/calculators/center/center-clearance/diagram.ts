import type { Diagram } from '#core/calculators/diagram';
import { type CenterClearanceDetails, type CenterClearanceInput, patchOf } from './input';
import { patchPart, patchReach } from './center-patch';

/** The patch with the hole in it; a seam line that leaves the patch is drawn as a warning. */
export function centerClearanceDiagram(
  asked: CenterClearanceInput,
  details: CenterClearanceDetails,
): Diagram {
  const patch = patchOf(asked);
  const off = Math.max(Math.abs(asked.offsetAcross), Math.abs(asked.offsetDown));
  const half = 1.1 * Math.max(patchReach(patch), off + details.seamRadius);
  const middle = { x: half, y: half };
  const center = { x: half + asked.offsetAcross, y: half + asked.offsetDown };
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
        length: asked.holeDiameter,
      },
    ],
  };
}
