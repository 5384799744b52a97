import { UNITS_PER_INCH } from '#core/units/length';

/** One side of a cut patch: the exact formula and the customary one. All in 1/320 mm. */
export interface CutEdge {
  readonly formula: string;
  readonly exact: number;
  /** The value of each letter of the formula except the seam `s`, which the explanation adds. */
  readonly terms: readonly EdgeTerm[];
  /** The customary size of this side; null if there is none, or if the seam is not the one it is for. */
  readonly customary: CustomaryEdge | null;
}

export interface EdgeTerm {
  readonly symbol: string;
  readonly means: string;
  /** 1/320 mm, or degrees for an angle. */
  readonly exact: number;
  readonly isAngle: boolean;
}

export interface CustomaryEdge {
  readonly formula: string;
  readonly exact: number;
}

const QUARTER_INCH = UNITS_PER_INCH / 4;

export function edgeTerm(symbol: string, means: string, exact: number): EdgeTerm {
  return { symbol, means, exact, isAngle: false };
}

export function angleTerm(symbol: string, means: string, degrees: number): EdgeTerm {
  return { symbol, means, exact: degrees, isAngle: true };
}

/** A side without a customary size. */
export function exactEdge(formula: string, exact: number, terms: readonly EdgeTerm[]): CutEdge {
  return { formula, exact, terms, customary: null };
}

/** A side of a square or rectangle: one seam at each end. */
export function plainEdge(finished: EdgeTerm, seam: number): CutEdge {
  return exactEdge(`${finished.symbol} + 2s`, finished.exact + 2 * seam, [finished]);
}

/** The short side of a half-square triangle, which is the side of the square it is cut from. */
export function halfSquareEdge(leg: EdgeTerm, seam: number): CutEdge {
  return {
    formula: `${leg.symbol} + s(2 + √2)`,
    exact: leg.exact + seam * (2 + Math.SQRT2),
    terms: [leg],
    customary: atQuarterInch(seam, `${leg.symbol} + 7/8 in`, leg.exact + (7 / 8) * UNITS_PER_INCH),
  };
}

/** The long side of a quarter-square triangle, which is the side of the square it is cut from. */
export function quarterSquareEdge(longSide: EdgeTerm, seam: number): CutEdge {
  return {
    formula: `${longSide.symbol} + s(2 + 2√2)`,
    exact: longSide.exact + seam * (2 + 2 * Math.SQRT2),
    terms: [longSide],
    customary: atQuarterInch(seam, `${longSide.symbol} + 1 1/4 in`, longSide.exact + 1.25 * UNITS_PER_INCH),
  };
}

/** 7/8 in and 1 1/4 in are the exact add-ons for a quarter-inch seam, rounded up to an eighth. With any other seam they are wrong. */
export function atQuarterInch(seam: number, formula: string, exact: number): CustomaryEdge | null {
  return seam === QUARTER_INCH ? { formula, exact } : null;
}
