import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import type { RuffleInput } from './input';
import type { RuffleDetails } from './work';

/** So many pleats are drawn at most. */
const MOST_DRAWN = 4;

/** The beginning of the flat strip: where pleats are folded, or the two rows of long stitches that are drawn up. */
export function ruffleDiagram(input: RuffleInput, { pleats, flat, cutWidth }: RuffleDetails): Diagram {
  const onePleat = pleats === null ? 0 : flat / pleats.count;
  const width =
    pleats === null ? Math.min(flat, 4 * cutWidth) : Math.min(MOST_DRAWN, pleats.count) * onePleat;
  const across = (y: number, tone: 'mark' | 'seam' | 'fold'): DiagramPart => ({
    part: 'line',
    from: { x: 0, y },
    to: { x: width, y },
    tone,
  });
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: cutWidth },
    { x: 0, y: cutWidth },
  ];
  const seam = input.seamAllowance;
  const gathers = [across(seam * 0.75, 'mark'), across(seam * 1.25, 'mark')];
  const size: DiagramPart = {
    part: 'dimension',
    from: { x: width, y: cutWidth },
    to: { x: width, y: 0 },
    offset: (0 - cutWidth) / 8,
    length: cutWidth,
  };
  return {
    title:
      pleats === null
        ? 'The flat strip with its gathering stitches'
        : 'The flat strip with the folds of its pleats',
    width,
    height: cutWidth,
    parts: [
      { part: 'polygon', points: corners, tone: 'fabric' },
      ...(input.layers === 'folded' ? [across(cutWidth / 2, 'fold')] : []),
      ...(pleats === null ? gathers : foldLines(pleats, onePleat, { width, cutWidth })),
      across(seam, 'seam'),
      size,
    ],
  };
}

/** Each pleat begins with what is seen of it; then come its folds, a depth apart. */
function foldLines(
  { depth, folds, pitch }: NonNullable<RuffleDetails['pleats']>,
  onePleat: number,
  { width, cutWidth }: { readonly width: number; readonly cutWidth: number },
): readonly DiagramPart[] {
  const drawn = Array.from({ length: MOST_DRAWN }, (_, index) => index * onePleat).filter((at) => at < width);
  return drawn.flatMap((at) =>
    Array.from({ length: folds }, (_, fold): DiagramPart => {
      const x = at + pitch + fold * depth;
      return { part: 'line', from: { x, y: 0 }, to: { x, y: cutWidth }, tone: 'mark' };
    }),
  );
}
