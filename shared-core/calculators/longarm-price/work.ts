import { assertNever } from '#core/assert-never';
import { roundNearest } from '#core/units/rounding';
import type { PriceLine } from '#core/domain/price-line';
import type { LongarmPriceInput } from './input';

/** What is billed: square inches of the bounding rectangle and inches round it. */
export interface BilledSize {
  readonly squareInches: number;
  readonly edgeInches: number;
}

/** One line of the bill; `exact` in minor units before it was rounded, once, to `minor`. */
export interface BilledLine {
  readonly name: string;
  readonly exact: number;
  readonly minor: number;
}

export interface Bill {
  readonly quilting: BilledLine;
  readonly isAtMinimum: boolean;
  readonly lines: readonly BilledLine[];
  /** The sum of the rounded lines, so that what is printed adds up. */
  readonly totalMinor: number;
}

export function makeBill(size: BilledSize, { rate, minimum, lines }: LongarmPriceInput): Bill {
  const byArea = rateTimes(rate, size.squareInches);
  const isAtMinimum = byArea < minimum;
  const quilting = billedLine('Quilting', isAtMinimum ? minimum : byArea);
  const others = lines.map((line) => billedLine(line.name, lineAmount(line, size, quilting.minor)));
  const totalMinor = others.reduce((sum, { minor }) => sum + minor, quilting.minor);
  return { quilting, isAtMinimum, lines: others, totalMinor };
}

function lineAmount(line: PriceLine, size: BilledSize, quiltingMinor: number): number {
  switch (line.by) {
    case 'flat':
      return line.amount;
    case 'area':
      return rateTimes(line.rate, size.squareInches);
    case 'edge':
      return rateTimes(line.rate, size.edgeInches);
    case 'percent':
      return rateTimes(line.percent, quiltingMinor) / 100;
    default:
      return assertNever(line);
  }
}

/**
 * Rates carry up to six decimals: as whole millionths their product with whole inches is exact, so that a bill never
 * differs by a cent from the same sum done by hand (0.2 × 9540 is 1908, not 1908.0000000000002).
 */
function rateTimes(rate: number, amount: number): number {
  return (roundNearest(rate * 1e6, 1) * amount) / 1e6;
}

function billedLine(name: string, exact: number): BilledLine {
  return { name, exact, minor: roundNearest(exact, 1) };
}

export interface LongarmPriceDetails extends Bill {
  /** Sides of the bounding rectangle as billed, in 1/320 mm. */
  readonly billedWidth: number;
  readonly billedLength: number;
  /** Grams, each before rounding. */
  readonly topGrams: number;
  readonly backingGrams: number;
  readonly battingGrams: number;
  readonly packageGrams: number;
}
