import type { Outline } from '#core/domain/outline';
import { UNITS_PER_INCH } from '#core/units/length';
import type { Diagram, DiagramPart } from '../diagram';
import { outlinePart } from '../outline/outline-part';
import type { BackingDetails, PanelWay } from './work';

const MARGIN = 6 * UNITS_PER_INCH;

/** The finished backing: panels with their seams, the top lying on it, and both measures. */
export function backingDiagram(piece: Outline, { width, length }: BackingDetails, way: PanelWay): Diagram {
  const left = MARGIN;
  const top = MARGIN;
  const center = { x: left + width / 2, y: top + length / 2 };
  const parts: readonly DiagramPart[] = [
    ...panelParts(way, left, top, width, length),
    outlinePart(piece, center, 'plan'),
    {
      part: 'dimension',
      from: { x: left, y: top + length },
      to: { x: left + width, y: top + length },
      offset: -MARGIN / 2,
      length: width,
    },
    {
      part: 'dimension',
      from: { x: left, y: top },
      to: { x: left, y: top + length },
      offset: -MARGIN / 2,
      length,
    },
  ];
  return {
    title: 'The backing and its panels',
    width: width + 2 * MARGIN,
    height: length + 2 * MARGIN,
    parts,
  };
}

/** Seen pressed open: every panel from seam to seam. A panel joined from strips shows its joins too. */
function panelParts(
  way: PanelWay,
  left: number,
  top: number,
  width: number,
  length: number,
): readonly DiagramPart[] {
  const isUp = way.panelsRun === 'up';
  const [span, along] = isUp ? [width, length] : [length, width];
  const point = (a: number, b: number) => (isUp ? { x: left + a, y: top + b } : { x: left + b, y: top + a });
  const step = way.fabric.width - 2 * way.fabric.seam;
  /** The first seam lies one seam in from the first panel's edge; the last panel runs to the far edge. */
  const seams = Array.from({ length: way.panels - 1 }, (_, index) => (index + 1) * step + way.fabric.seam);
  const panels = [0, ...seams].map((from, index): DiagramPart => {
    const to = seams[index] ?? span;
    const points = [point(from, 0), point(to, 0), point(to, along), point(from, along)];
    return { part: 'polygon', points, tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate' };
  });
  const pieceStep = way.lastPieceLength - 2 * way.fabric.seam;
  const joins = Array.from(
    { length: way.lastPieces - 1 },
    (_, index) => (index + 1) * pieceStep + way.fabric.seam,
  );
  return [
    ...panels,
    ...seams.map((at): DiagramPart => ({
      part: 'line',
      from: point(at, 0),
      to: point(at, along),
      tone: 'seam',
    })),
    ...joins.map((at): DiagramPart => {
      return { part: 'line', from: point(seams.at(-1) ?? 0, at), to: point(span, at), tone: 'seam' };
    }),
  ];
}
