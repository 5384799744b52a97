import { roundDownTo } from '#core/units/rounding';
import { smallestStep } from '../smallest-step';

/** A square to cut round and round into one strip. In 1/320 mm. */
interface BiasSquare {
  readonly side: number;
  readonly strip: number;
  /** Of both seams: the one that joins the halves and the one that makes the tube. */
  readonly seam: number;
}

/** The straight edge left between the seams: a - 2s. Zero or less when the seam allowances use up the square. */
export function seamedSide({ side, seam }: Pick<BiasSquare, 'side' | 'seam'>): number {
  return side - 2 * seam;
}

/**
 * Whole rows between the bias edges, which are (a - 2s)/√2 apart once the halves are sewn together corner on corner:
 *
 *      D_____C          cut A to C, then sew           ____C
 *      |   / |          edge AB of one half           /   /|
 *      | /   |          to edge DC of the other      /___/ |   rows run along the slanted edges,
 *      A_____B                                       |  /| /   the upright edges become the tube
 *                                                    |/__|/
 */
export function continuousBiasRows(square: BiasSquare): number {
  return Math.max(0, roundDownTo(seamedSide(square) / (square.strip * Math.SQRT2), 1));
}

/** Length of the whole strip along its middle, its ends still slanted: every row is (a - 2s)√2 long. */
export function continuousBiasLength(square: BiasSquare): number {
  const rows = continuousBiasRows(square);
  return rows === 0 ? 0 : rows * seamedSide(square) * Math.SQRT2;
}

/** The same with both ends cut square, which takes half a strip width at each end; 0 when there is no row. */
export function squaredBiasLength(square: BiasSquare): number {
  return Math.max(0, continuousBiasLength(square) - square.strip);
}

/** The rule of area, a²/w. It ignores the seams and the last, incomplete row. */
export function areaRuleLength({ side, strip }: Pick<BiasSquare, 'side' | 'strip'>): number {
  return (side * side) / strip;
}

interface ContinuousBiasNeed {
  /** With both ends cut square. */
  readonly needed: number;
  readonly strip: number;
  readonly seam: number;
  readonly squareStep: number;
  /** Side of the largest square possible, such as the width of the fabric. */
  readonly largest: number;
}

export interface ContinuousBiasPlan {
  /** As few equal squares as are enough. */
  readonly squares: number;
  readonly side: number;
  readonly rows: number;
  /** With both ends cut square and the strips of several squares joined on the diagonal. */
  readonly gives: number;
}

const MOST_SQUARES = 24;

/** Fewest squares first, then the smallest such square; null when 24 of the largest are not enough. */
export function planContinuousBias(need: ContinuousBiasNeed): ContinuousBiasPlan | null {
  const { needed, strip, seam, squareStep, largest } = need;
  const givenBy = (squares: number, side: number) =>
    squares * continuousBiasLength({ side, strip, seam }) - squares * strip;
  for (let squares = 1; squares <= MOST_SQUARES; squares += 1) {
    const side = smallestStep((size) => givenBy(squares, size) >= needed, squareStep, largest);
    if (side !== null) {
      const rows = continuousBiasRows({ side, strip, seam });
      return { squares, side, rows, gives: givenBy(squares, side) };
    }
  }
  return null;
}
