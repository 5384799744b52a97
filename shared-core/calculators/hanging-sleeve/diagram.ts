import type { Diagram, DiagramPart } from '../diagram';
import { outlineBounds } from '../outline/outline-measures';
import { outlinePart } from '../outline/outline-part';
import type { HangingSleeveInput } from './input';
import type { HangingSleeveDetails } from './work';

/** The back of the quilt with its sleeves. */
export function hangingSleeveDiagram(input: HangingSleeveInput, details: HangingSleeveDetails): Diagram {
  const { width, length } = outlineBounds(input.outline);
  const left = (width - details.span) / 2;
  const [top, bottom] = [input.down, input.down + details.sewnApart];
  const sleeves = Array.from({ length: input.sleeves }, (_, index): DiagramPart => {
    const from = left + index * (details.length + input.gap);
    const to = from + details.length;
    const points = [
      { x: from, y: top },
      { x: to, y: top },
      { x: to, y: bottom },
      { x: from, y: bottom },
    ];
    return { part: 'polygon', points, tone: 'fabric-alternate' };
  });
  return {
    title: 'The sleeve on the back',
    width,
    height: length,
    parts: [
      outlinePart(input.outline, { x: width / 2, y: length / 2 }, 'fabric'),
      ...sleeves,
      {
        part: 'dimension',
        from: { x: left, y: top },
        to: { x: left + details.span, y: top },
        offset: width / 24,
        length: details.span,
      },
    ],
  };
}
