import { lengthFromExact } from '#core/units/length';
import type { Diagram, DiagramPart } from '../diagram';
import { rectangleAt } from '../patches/cut-shapes';
import type { AccuracyDetails } from './work';
import type { AccuracyInput } from './input';

/** One block as sewn, with the widths to measure after each seam; a dimension line for the first six. */
export function accuracyDiagram(input: AccuracyInput, { checks }: AccuracyDetails): Diagram {
  const { blockSize, patchesAcross, seamAllowance } = input;
  const whole = blockSize + 2 * seamAllowance;
  const edge = whole / 6;
  const shown = checks.slice(0, Math.min(patchesAcross, 6));
  const top = edge * shown.length;
  const patch = blockSize / patchesAcross;
  const tones = ['fabric', 'fabric-alternate'] as const;
  const patches = Array.from({ length: patchesAcross }, (_, index): DiagramPart => {
    const start = index === 0 ? 0 : seamAllowance + index * patch;
    const end = index === patchesAcross - 1 ? whole : seamAllowance + (index + 1) * patch;
    const points = rectangleAt(edge + start, top, end - start, whole);
    return { part: 'polygon', points, tone: tones[index % 2 === 0 ? 0 : 1] };
  });
  const seamLine = rectangleAt(edge + seamAllowance, top + seamAllowance, blockSize, blockSize);
  const outerSeams: DiagramPart = { part: 'polygon', points: seamLine, tone: 'seam' };
  const dimensions = shown.map(({ size }, index): DiagramPart => {
    return {
      part: 'dimension',
      from: { x: edge, y: top },
      to: { x: edge + size, y: top },
      offset: (edge * (2 * index + 1)) / 2,
      length: lengthFromExact(size, 'nearest'),
    };
  });
  return {
    title: 'One block as sewn, and what to measure after each seam',
    width: whole + 2 * edge,
    height: top + whole + edge,
    parts: [...patches, outerSeams, ...dimensions],
  };
}
