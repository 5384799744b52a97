import type { Diagram, DiagramPart, DiagramPoint } from '../diagram';
import type { LieFlatInput } from './input';
import type { LieFlatWork } from './work';

/** The half ring on its line as it is or would be tested, and under it the ring from the side. Both to one scale. */
export function lieFlatDiagram(input: LieFlatInput, work: LieFlatWork): Diagram {
  const reach = work.legEnd;
  const margin = reach / 6;
  const turned = halfTurn(work);
  const center = { x: margin + reach, y: margin + reach };
  const below = turned > Math.PI ? reach : gapOf(work);
  const side = sideView(input, work, { x: center.x, y: center.y + below + 2 * margin });
  return {
    title: 'The half ring on a straight line, and the ring from the side',
    width: 2 * (margin + reach),
    height: center.y + below + 2 * margin + side.height + margin,
    parts: [...halfParts(input, work, center), ...side.parts],
  };
}

/** The angle that the half fills. */
function halfTurn(work: LieFlatWork): number {
  return rightTurn(work) - halfMissing(work);
}

function rightTurn({ half, halfWedges }: LieFlatWork): number {
  return 2 * half * halfWedges;
}

function halfMissing({ halfMeasured, halfExpected }: LieFlatWork): number {
  return halfMeasured ?? halfExpected;
}

function gapOf(work: LieFlatWork): number {
  return work.legEnd * Math.sin(Math.min(Math.PI / 2, Math.abs(halfMissing(work))));
}

/** From the right-hand end of the line, upward. */
function pointAt(center: DiagramPoint, radius: number, angle: number): DiagramPoint {
  return { x: center.x + radius * Math.cos(angle), y: center.y - radius * Math.sin(angle) };
}

function halfParts(input: LieFlatInput, work: LieFlatWork, center: DiagramPoint): readonly DiagramPart[] {
  const each = halfTurn(work) / work.halfWedges;
  const wedges = Array.from({ length: work.halfWedges }, (_, index): DiagramPart => {
    const corners = [index, index + 1].map((leg) =>
      [input.innerRadius, input.outerRadius].map((radius) =>
        pointAt(center, radius / Math.cos(work.half), leg * each),
      ),
    );
    const [first = [], second = []] = corners;
    const points = [...first, ...second.toReversed()];
    return { part: 'polygon', points, tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate' };
  });
  return [...wedges, ...lineParts(work, center)];
}

/** The line from the middle to both sides, and how far the second leg is from it. */
function lineParts(work: LieFlatWork, center: DiagramPoint): readonly DiagramPart[] {
  const off = halfMissing(work);
  const lines = [0, rightTurn(work)].map((angle): DiagramPart => ({
    part: 'line',
    from: center,
    to: pointAt(center, work.legEnd, angle),
    tone: 'mark',
  }));
  if (Math.abs(off) >= Math.PI / 2 || gapOf(work) < 1) return lines;
  const legEnd = pointAt(center, work.legEnd, halfTurn(work));
  const foot = pointAt(center, work.legEnd * Math.cos(off), rightTurn(work));
  return [...lines, { part: 'dimension', from: legEnd, to: foot, offset: 0, length: gapOf(work) }];
}

interface SideView {
  readonly parts: readonly DiagramPart[];
  readonly height: number;
}

/** `at` is the middle of the upper edge. */
function sideView(
  { innerRadius, outerRadius }: LieFlatInput,
  { flatness }: LieFlatWork,
  at: DiagramPoint,
): SideView {
  switch (flatness.shape) {
    case 'flat':
      return {
        parts: [line({ x: at.x - outerRadius, y: at.y }, { x: at.x + outerRadius, y: at.y })],
        height: 0,
      };
    case 'cup':
      return cupView({ innerRadius, outerRadius, rise: flatness.middle }, at);
    case 'ruffle':
      return waveView(outerRadius, flatness.waves[0]?.height ?? 0, at);
  }
}

function line(from: DiagramPoint, to: DiagramPoint): DiagramPart {
  return { part: 'line', from, to, tone: 'seam' };
}

/** The two slopes of the cone from its outer to its inner edge, over the table. */
function cupView(
  cone: { readonly innerRadius: number; readonly outerRadius: number; readonly rise: number },
  at: DiagramPoint,
): SideView {
  const { innerRadius, outerRadius, rise } = cone;
  const foot = Math.sqrt(outerRadius ** 2 - rise ** 2);
  const part = innerRadius / outerRadius;
  const slope = (side: number) =>
    line({ x: at.x + side * foot, y: at.y + rise }, { x: at.x + side * foot * part, y: at.y + rise * part });
  const middle = { x: at.x, y: at.y + rise };
  return {
    parts: [
      {
        part: 'line',
        from: { x: at.x - foot, y: at.y + rise },
        to: { x: at.x + foot, y: at.y + rise },
        tone: 'mark',
      },
      slope(-1),
      slope(1),
      { part: 'dimension', from: middle, to: at, offset: 0, length: rise },
    ],
    height: rise,
  };
}

const STRETCHES = 48;

/** The outer edge in two waves, seen level from outside and laid out over the width of the ring. */
function waveView(radius: number, height: number, at: DiagramPoint): SideView {
  const points = Array.from({ length: STRETCHES + 1 }, (_, index): DiagramPoint => {
    const share = index / STRETCHES;
    return {
      x: at.x + radius * (2 * share - 1),
      y: at.y + (height / 2) * (1 + Math.sin(4 * Math.PI * share)),
    };
  });
  const right = at.x + radius;
  return {
    parts: [
      ...points.slice(1).map((point, index) => line(points[index] ?? point, point)),
      {
        part: 'dimension',
        from: { x: right, y: at.y + height },
        to: { x: right, y: at.y },
        offset: 0,
        length: height,
      },
    ],
    height,
  };
}
