import type { Point } from '#core/geometry/point';
import type { Diagram, DiagramPart, Tone } from '#core/calculators/diagram';
import type { CenterClearanceInput, OnePatch } from './input';
import type { HoleCircles, PatchClearance, SeamsClearance } from './work';
import { patchOf, patchPart, patchReach } from './center-patch';

/** The patch with the hole in it. A seam line that leaves the patch has the tone of a warning. */
export function patchDiagram(input: CenterClearanceInput, asked: OnePatch, details: PatchClearance): Diagram {
  const patch = patchOf(asked);
  const off = Math.max(Math.abs(asked.offsetAcross), Math.abs(asked.offsetDown));
  const half = 1.1 * Math.max(patchReach(patch), off + details.seamRadius);
  const center = { x: half + asked.offsetAcross, y: half + asked.offsetDown };
  return {
    title: 'The center patch with the hole and its seam line',
    width: 2 * half,
    height: 2 * half,
    parts: [
      patchPart(patch, { x: half, y: half }),
      ...holeParts(input, details, { center, seamTone: details.staysInside ? 'seam' : 'warning' }),
    ],
  };
}

/** How much of the top is drawn around the hole, as a multiple of the radius of the seam line. */
const DRAWN_AROUND = 2;

/** The middle of the top with the seams that meet there, the first upward. */
export function seamsDiagram(input: CenterClearanceInput, details: SeamsClearance): Diagram {
  const radius = DRAWN_AROUND * details.seamRadius;
  const half = 1.1 * radius;
  const center = { x: half, y: half };
  const seams = Array.from({ length: details.seamsCrossed }, (_, index): DiagramPart => {
    const angle = (2 * Math.PI * index) / details.seamsCrossed - Math.PI / 2;
    const to = { x: half + radius * Math.cos(angle), y: half + radius * Math.sin(angle) };
    return { part: 'line', from: center, to, tone: 'plan' };
  });
  return {
    title: 'The middle of the top with the seams that the hole crosses',
    width: 2 * half,
    height: 2 * half,
    parts: [
      { part: 'circle', center, radius, tone: 'fabric' },
      ...seams,
      ...holeParts(input, details, { center, seamTone: 'seam' }),
    ],
  };
}

interface HolePlace {
  readonly center: Point;
  readonly seamTone: Tone;
}

function holeParts(
  { holeDiameter }: CenterClearanceInput,
  { cutRadius, seamRadius }: HoleCircles,
  { center, seamTone }: HolePlace,
): readonly DiagramPart[] {
  const arm = cutRadius / 8;
  const line = (x: number, y: number): DiagramPart => ({
    part: 'line',
    from: { x: center.x - x, y: center.y - y },
    to: { x: center.x + x, y: center.y + y },
    tone: 'mark',
  });
  return [
    { part: 'circle', center, radius: seamRadius, tone: seamTone },
    { part: 'circle', center, radius: cutRadius, tone: 'cut' },
    line(arm, 0),
    line(0, arm),
    {
      part: 'dimension',
      from: { x: center.x - cutRadius, y: center.y },
      to: { x: center.x + cutRadius, y: center.y },
      offset: cutRadius / 3,
      length: holeDiameter,
    },
  ];
}
