import { type Point, pointMidway, pointMove } from '#core/geometry/point';
import type { Diagram, DiagramPart, Tone } from '#core/calculators/diagram';
import { quadMap } from './quad-fit';
import type { CenterFindDetails } from './work';

/** The project with its diagonals, midlines and centers. */
export function centerFindDiagram({ corners, best, diagonalsCross, motif }: CenterFindDetails): Diagram {
  const shift = {
    x: -Math.min(...corners.map(({ x }) => x)),
    y: -Math.min(...corners.map(({ y }) => y)),
  };
  const points = quadMap(corners, (corner) => pointMove(corner, shift));
  const [a, b, c, d] = points;
  const width = Math.max(...points.map(({ x }) => x));
  const height = Math.max(...points.map(({ y }) => y));
  const line = (from: Point, to: Point, tone: Tone): DiagramPart => ({ part: 'line', from, to, tone });
  const spot = (point: Point, radius: number, tone: Tone): DiagramPart => ({
    part: 'circle',
    center: pointMove(point, shift),
    radius,
    tone,
  });
  const size = Math.min(width, height);
  return {
    title: 'The project with its diagonals, midlines and centers',
    width,
    height,
    parts: [
      { part: 'polygon', points, tone: 'fabric' },
      line(a, c, 'plan'),
      line(b, d, 'plan'),
      line(pointMidway(a, b), pointMidway(c, d), 'mark'),
      line(pointMidway(b, c), pointMidway(d, a), 'mark'),
      spot(diagonalsCross, size / 60, 'plan'),
      ...(motif === null ? [] : [spot(motif, size / 40, 'warning')]),
      spot(best, size / 100, 'mark'),
    ],
  };
}
