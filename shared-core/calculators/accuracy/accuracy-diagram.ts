import { lengthFromExact } from '#core/units/length';
import type { Diagram, DiagramPart } from '../diagram';
import { rectangleAt } from '../patches/cut-shapes';
import type { AccuracyDetails } from './accuracy-work';
import type { AccuracyInput } from './accuracy-input';

/** One block as sewn, to scale, with the widths to measure after each seam. */
export function accuracyDiagram(input: AccuracyInput, { checks }: AccuracyDetails): Diagram {
  const { blockSize, patchesAcross, seamAllowance } = input;
  const whole = blockSize + 2 * seamAllowance;
  const edge = whole / 6;
  const shown = checks.slice(0, Math.min(patchesAcross, 6));
  const top = edge * shown.length;
  const patch = blockSize / patchesAcross;
  const patches = Array.from({ length: patchesAcross }, (_, index): DiagramPart => {
    const left = edge + seamAllowance + index * patch;
    return {
      part: 'polygon',
      points: rectangleAt(left, top + seamAllowance, patch, blockSize),
      tone: index % 2 === 0 ? 'cloth' : 'cloth-alternate',
    };
  });
  const dimensions = shown.map(({ size }, index): DiagramPart => {
    return {
      part: 'dimension',
      from: { x: edge, y: top },
      to: { x: edge + size, y: top },
      offset: (edge * (2 * index + 1)) / 2,
      length: lengthFromExact(size, 'nearest'),
    };
  });
  const allowance: DiagramPart = {
    part: 'polygon',
    points: rectangleAt(edge, top, whole, whole),
    tone: 'leftover',
  };
  return {
    title: 'One block as sewn, and what to measure after each seam',
    width: whole + 2 * edge,
    height: top + whole + edge,
    parts: [allowance, ...patches, ...dimensions],
  };
}
