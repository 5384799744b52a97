import type { Polygon } from '#core/geometry/polygon';
import type { Diagram, DiagramPart, DiagramPoint } from '../diagram';
import { polygonOf } from '../patches/cut-shapes';
import type { WedgeRingInput } from './input';
import { arcPoints, wedgeParts } from './wedge-drawing';
import type { WedgeRingWork } from './work';

/** The finished ring, and to its right one wedge as cut with its seam lines. */
export function wedgeRingDiagram(input: WedgeRingInput, work: WedgeRingWork): Diagram {
  const { outerRadius, wedges } = input;
  const reach = outerRadius + work.beyondCircle;
  const margin = reach / 4;
  const center = { x: margin + reach, y: margin + reach };
  const wedgeAt = { x: 3 * margin + 2 * reach, y: margin };
  return {
    title: 'The finished ring, and one wedge as cut',
    width: wedgeAt.x + work.frame.long + 2 * margin,
    height: 2 * margin + Math.max(2 * reach, work.frame.height),
    parts: [
      ...ringParts(input, center),
      ...wedgeParts(input, work, wedgeAt),
      label(`${String(wedges)} wedges`, center),
    ],
  };
}

function label(text: string, at: DiagramPoint): DiagramPart {
  return { part: 'label', at, text, anchor: 'middle' };
}

function ringParts(
  { wedges, innerRadius, outerRadius, edge }: WedgeRingInput,
  center: DiagramPoint,
): readonly DiagramPart[] {
  const half = Math.PI / wedges;
  return Array.from({ length: wedges }, (_, index) => {
    const middle = 2 * half * (index + 1) - Math.PI / 2;
    const along = (radius: number) =>
      edgePoints({ edge, radius, half }).map(({ x, y }) => ({
        x: center.x - x * Math.sin(middle) - y * Math.cos(middle),
        y: center.y + x * Math.cos(middle) - y * Math.sin(middle),
      }));
    const points = [...along(outerRadius), ...along(innerRadius).toReversed()];
    return { part: 'polygon', points, tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate' };
  });
}

interface EdgeOfWedge {
  readonly edge: WedgeRingInput['edge'];
  readonly radius: number;
  /** In radians. */
  readonly half: number;
}

/** One edge of a finished wedge from the left to the right, for a ring around (0, 0) with this wedge on top. */
function edgePoints({ edge, radius, half }: EdgeOfWedge): Polygon {
  if (edge === 'straight') {
    const side = radius * Math.tan(half);
    return polygonOf([-side, -radius], [side, -radius]);
  }
  return arcPoints(radius, half);
}
