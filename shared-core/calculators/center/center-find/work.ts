import { failure, type Result, success } from '#core/result';
import { type Point, pointDistance } from '#core/geometry/point';
import { polygonContainsPoint } from '#core/geometry/polygon';
import { lineCrossing, type Segment } from '#core/geometry/segment';
import type { Refusal } from '#core/calculators/calculator';
import type { CenterFindInput } from './input';
import { type Closure, closureOf, type SoleChange, suspectsOf } from './closure';
import { fitQuad, type Quad } from './quad-fit';

interface CornerReport {
  readonly name: string;
  readonly degrees: number;
  /** How far the end of the shorter side at this corner is from where a right angle would put it. */
  readonly outBy: number;
}

/** x runs from the top left corner along the top, y runs down; lengths in 1/320 mm, not rounded. */
export interface CenterFindDetails {
  readonly corners: Quad;
  /** The average of the corners, where the midlines cross. Its sum of squared distances to the corners is the smallest. */
  readonly best: Point;
  readonly diagonalsCross: Point;
  readonly motif: Point | null;
  /** From the best center at right angles to the top, right, bottom and left side, and to the corners clockwise from the top left. */
  readonly fromSides: readonly number[];
  readonly fromCorners: readonly number[];
  /** Largest distance between the centers found by different methods. */
  readonly apart: number;
  /** Fitted minus measured length, in the order of the input, and their root mean square. */
  readonly residuals: readonly number[];
  readonly rootMeanSquare: number;
  /** The smallest change of one length alone that makes the six fit together, and what each would have to be. */
  readonly misfit: number;
  readonly soleChanges: Closure['soleChanges'];
  /** The lengths to measure again first. */
  readonly suspects: readonly SoleChange[];
  readonly cornerReports: readonly CornerReport[];
  readonly outOfSquare: number;
  /** From the middle of the motif to the best center: right and down are positive. */
  readonly move: Point | null;
}

export function workOutCenterFind(input: CenterFindInput): Result<CenterFindDetails, Refusal> {
  const fit = fitQuad(input);
  if (fit === null) return failure(NO_SUCH_SHAPE);
  const { corners, residuals } = fit;
  const closure = closureOf(input);
  if (closure.error === null) return failure(NO_SUCH_SHAPE);
  const [a, b, c, d] = corners;
  const diagonalsCross = lineCrossing({ from: a, to: c }, { from: b, to: d });
  if (diagonalsCross === undefined) return failure(NO_SUCH_SHAPE);

  const best = { x: (a.x + b.x + c.x + d.x) / 4, y: (a.y + b.y + c.y + d.y) / 4 };
  const motif = input.hasMotif ? motifPoint(input, d) : null;
  if (motif !== null && !polygonContainsPoint(corners, motif)) return failure(MOTIF_OUTSIDE);
  const centers = [best, diagonalsCross, ...(motif === null ? [] : [motif])];
  const sides: readonly Segment[] = [
    { from: a, to: b },
    { from: b, to: c },
    { from: c, to: d },
    { from: d, to: a },
  ];
  const cornerReports = cornerReportsOf(corners);
  return success({
    corners,
    best,
    diagonalsCross,
    motif,
    fromSides: sides.map((side) => distanceToLine(best, side)),
    fromCorners: corners.map((corner) => pointDistance(best, corner)),
    apart: Math.max(...centers.flatMap((one) => centers.map((other) => pointDistance(one, other)))),
    residuals,
    rootMeanSquare: Math.hypot(...residuals) / Math.sqrt(residuals.length),
    misfit: closure.error,
    soleChanges: closure.soleChanges,
    suspects: suspectsOf(closure, input.accuracy),
    cornerReports,
    outOfSquare: Math.max(...cornerReports.map(({ outBy }) => outBy)),
    move: motif === null ? null : { x: best.x - motif.x, y: best.y - motif.y },
  });
}

const NO_SUCH_SHAPE: Refusal = {
  code: 'lengths-do-not-meet',
  field: ['downToRight'],
  says: 'No four-sided project has these six lengths, so one of them is wrong. Measure both diagonals again.',
  values: {},
};

const MOTIF_OUTSIDE: Refusal = {
  code: 'motif-outside',
  field: ['motifFromLeft'],
  says: 'The middle of the motif would be outside the project. Measure it from the left side and the top side.',
  values: {},
};

/** Measured at right angles to the top (y = 0) and to the left side, which runs from the top left corner to `bottomLeft`. */
function motifPoint({ motifFromLeft, motifFromTop }: CenterFindInput, bottomLeft: Point): Point {
  const size = Math.hypot(bottomLeft.x, bottomLeft.y);
  const normal = { x: bottomLeft.y / size, y: -bottomLeft.x / size };
  return { x: (motifFromLeft - normal.y * motifFromTop) / normal.x, y: motifFromTop };
}

function distanceToLine(point: Point, { from, to }: Segment): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return Math.abs(dx * (point.y - from.y) - dy * (point.x - from.x)) / Math.hypot(dx, dy);
}

const CORNER_NAMES = ['top left', 'top right', 'bottom right', 'bottom left'] as const;

function cornerReportsOf(corners: Quad): readonly CornerReport[] {
  return corners.map((corner, index): CornerReport => {
    const before = corners[(index + 3) % 4] ?? corner;
    const after = corners[(index + 1) % 4] ?? corner;
    const [one, other] = [pointDistance(corner, before), pointDistance(corner, after)];
    const cosine =
      ((before.x - corner.x) * (after.x - corner.x) + (before.y - corner.y) * (after.y - corner.y)) /
      (one * other);
    return {
      name: CORNER_NAMES[index] ?? '',
      degrees: (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI,
      outBy: Math.min(one, other) * Math.abs(cosine),
    };
  });
}
