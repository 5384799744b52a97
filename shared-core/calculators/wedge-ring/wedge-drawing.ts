import { type Point, pointMove } from '#core/geometry/point';
import type { Polygon } from '#core/geometry/polygon';
import type { DiagramPart, DiagramPoint } from '../diagram';
import type { Arc } from './arc-wedge';
import type { WedgeRingInput } from './input';
import { wedgePolygon, type WedgeRingWork } from './work';

const STRETCHES = 12;

/** From `half` left to `half` right of the top of a circle around (0, 0). */
export function arcPoints(radius: number, half: number): Polygon {
  return Array.from({ length: STRETCHES + 1 }, (_, index) => {
    const angle = half * ((2 * index) / STRETCHES - 1);
    return { x: radius * Math.sin(angle), y: -radius * Math.cos(angle) };
  });
}

/** One wedge as cut, its seam lines and the seams between its bands, with the upper left corner of its frame at a point. */
export function wedgeParts(
  input: WedgeRingInput,
  work: WedgeRingWork,
  at: DiagramPoint,
): readonly DiagramPart[] {
  const { frame } = work;
  const bottom = at.y + frame.height;
  const { cut, seam, corner } = shapesOf(input, work, at);
  const offset = input.outerRadius / 12;
  const middle = at.x + frame.long / 2;
  const top = {
    from: { x: middle - corner.half, y: corner.y },
    to: { x: middle + corner.half, y: corner.y },
  };
  return [
    { part: 'polygon', points: cut, tone: 'fabric' },
    ...bandLines(input, work, at),
    { part: 'polygon', points: seam, tone: 'seam' },
    { part: 'dimension', ...top, offset, length: 2 * corner.half },
    {
      part: 'dimension',
      from: { x: middle + frame.short / 2, y: bottom },
      to: { x: middle - frame.short / 2, y: bottom },
      offset,
      length: frame.short,
    },
    {
      part: 'dimension',
      from: { x: at.x + frame.long, y: at.y },
      to: { x: at.x + frame.long, y: bottom },
      offset,
      length: frame.height,
    },
  ];
}

interface WedgeShapes {
  readonly cut: Polygon;
  readonly seam: Polygon;
  /** Of the outer cut edge: half the way between its corners, and their height. */
  readonly corner: { readonly half: number; readonly y: number };
}

function shapesOf(
  input: WedgeRingInput,
  { arcs, cut, finished }: WedgeRingWork,
  at: DiagramPoint,
): WedgeShapes {
  const moved = (polygon: Polygon, by: Point) => polygon.map((point) => pointMove(point, by));
  if (arcs === null) {
    const inside = { x: at.x + (cut.long - finished.long) / 2, y: at.y + input.seamAllowance };
    return {
      cut: moved(wedgePolygon(cut), at),
      seam: moved(wedgePolygon(finished), inside),
      corner: { half: cut.long / 2, y: at.y },
    };
  }
  const { outer } = arcs.cut;
  const center = { x: at.x + cut.long / 2, y: at.y + outer.radius };
  const between = (edges: typeof arcs.cut) => [
    ...arcPoints(edges.outer.radius, halfAngle(edges.outer)),
    ...arcPoints(edges.inner.radius, halfAngle(edges.inner)).toReversed(),
  ];
  return {
    cut: moved(between(arcs.cut), center),
    seam: moved(between(arcs.finished), center),
    corner: { half: outer.chord / 2, y: at.y + outer.sagitta },
  };
}

function halfAngle({ radius, chord }: Arc): number {
  return Math.asin(chord / 2 / radius);
}

/** The seams between the bands from leg to leg, counted from the inner edge. */
function bandLines(
  { seamAllowance: seam }: WedgeRingInput,
  { set, frame }: WedgeRingWork,
  at: DiagramPoint,
): readonly DiagramPart[] {
  if (set === null) return [];
  const middle = at.x + frame.long / 2;
  const slope = (frame.long - frame.short) / 2 / frame.height;
  return set.bands.slice(0, -1).map((_, index) => {
    const upTo = set.bands.slice(0, index + 1).reduce<number>((sum, { cut }) => sum + cut - 2 * seam, seam);
    const half = frame.short / 2 + slope * upTo;
    const y = at.y + frame.height - upTo;
    return { part: 'line', from: { x: middle - half, y }, to: { x: middle + half, y }, tone: 'seam' };
  });
}
