import type { Diagram, DiagramPart } from '../diagram';
import { outlinePart } from '../outline/outline-part';
import type { CoverSizeInput } from './input';
import type { CoveredThing, CoverSize } from './work';

/** The cover laid flat as it is in place, with the edges of what it goes over; the head of a bed is on top. */
export function coverSizeDiagram({ drop }: CoverSizeInput, over: CoveredThing, size: CoverSize): Diagram {
  const { width, length } = size;
  const margin = Math.max(width, length) / 12;
  const center = { x: margin + width / 2, y: margin + length / 2 };
  const cover = over.over === 'round' ? ({ shape: 'circle', diameter: width } as const) : rectangle(size);
  return {
    title: over.over === 'bed' ? 'On the bed, from above' : 'On the table, from above',
    width: width + 2 * margin,
    height: length + 2 * margin,
    parts: [
      outlinePart(cover, center, 'fabric'),
      edgeOf(over, { x: margin + drop, y: margin }, { drop, center }),
      {
        part: 'dimension',
        from: { x: margin, y: margin + length },
        to: { x: margin + width, y: margin + length },
        offset: -margin / 2,
        length: width,
      },
    ],
  };
}

const rectangle = ({ width, length }: CoverSize) => ({ shape: 'rectangle', width, length }) as const;

/** Where the cover bends down: around the table, or at both sides and the foot of the mattress, below the fold for the pillows. */
function edgeOf(
  over: CoveredThing,
  { x, y }: { readonly x: number; readonly y: number },
  { drop, center }: { readonly drop: number; readonly center: { readonly x: number; readonly y: number } },
): DiagramPart {
  if (over.over === 'round') return { part: 'circle', center, radius: over.diameter / 2, tone: 'fold' };
  const top = y + (over.over === 'bed' ? over.pillowFold : drop);
  const points = [
    { x, y: top },
    { x: x + over.width, y: top },
    { x: x + over.width, y: top + over.length },
    { x, y: top + over.length },
  ];
  return { part: 'polygon', points, tone: 'fold' };
}
