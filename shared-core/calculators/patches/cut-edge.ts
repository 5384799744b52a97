import { UNITS_PER_INCH } from '#core/units/length';

/** One side of a cut patch: the exact formula beside the one makers carry in their heads. All in 1/320 mm. */
export interface CutEdge {
  readonly formula: string;
  readonly exact: number;
  /** What stands for each letter of the formula; the seam `s` is added where it is explained. */
  readonly terms: readonly EdgeTerm[];
  /** The setting of the trade for this side; null where there is none or the seam is not the one it was made for. */
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

/** A side without a setting of its own. */
export function exactEdge(formula: string, exact: number, terms: readonly EdgeTerm[]): CutEdge {
  return { formula, exact, terms, customary: null };
}

/** A side of a square or rectangle: a seam at both ends. */
export function plainEdge(finished: EdgeTerm, seam: number): CutEdge {
  return exactEdge(`${finished.symbol} + 2s`, finished.exact + 2 * seam, [finished]);
}

/** The short side of a right triangle with two equal sides, which is the side of the square it is cut from. */
export function halfSquareEdge(leg: EdgeTerm, seam: number): CutEdge {
  return {
    formula: `${leg.symbol} + s(2 + √2)`,
    exact: leg.exact + seam * (2 + Math.SQRT2),
    terms: [leg],
    customary: atQuarterInch(seam, `${leg.symbol} + 7/8 in`, leg.exact + (7 / 8) * UNITS_PER_INCH),
  };
}

/** The long side of such a triangle, which is the side of the square that gives four. */
export function quarterSquareEdge(longSide: EdgeTerm, seam: number): CutEdge {
  return {
    formula: `${longSide.symbol} + s(2 + 2√2)`,
    exact: longSide.exact + seam * (2 + 2 * Math.SQRT2),
    terms: [longSide],
    customary: atQuarterInch(seam, `${longSide.symbol} + 1 1/4 in`, longSide.exact + 1.25 * UNITS_PER_INCH),
  };
}

/** 7/8 in and 1 1/4 in are the exact figures of a quarter-inch seam rounded up to an eighth: with another seam they are wrong. */
export function atQuarterInch(seam: number, formula: string, exact: number): CustomaryEdge | null {
  return seam === QUARTER_INCH ? { formula, exact } : null;
}
