import { assertNever } from '#core/assert-never';
import { roundNearest } from '#core/units/rounding';
import type { PriceLine } from '#core/domain/price-line';
import { type Length, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import type { LengthQuantity } from '../explanation';
import { outlineArea } from '../outline/outline-inset';
import { type OutlineBounds, outlineBounds } from '../outline/outline-measures';
import { lengthNearest, lengthUp } from '../quantities';
import { gramsOf } from '../weight-fields';
import type { LongarmPriceInput } from './input';

/** What is billed: the area of the bounding rectangle and the length around it. */
interface BilledSize {
  readonly squareInches: number;
  readonly edgeInches: number;
}

/** One line of the bill in minor units: `exact`, and `minor` rounded once. */
interface BilledLine {
  readonly name: string;
  readonly exact: number;
  readonly minor: number;
}

interface ChargedLine extends BilledLine {
  /** What a percentage on this line is of: the quilting, or everything above it. In minor units. */
  readonly percentOf: number;
}

export interface Bill {
  readonly quilting: BilledLine;
  readonly isAtMinimum: boolean;
  readonly lines: readonly ChargedLine[];
  /** The sum of the rounded lines, so that the printed bill adds up. */
  readonly totalMinor: number;
}

function makeBill(size: BilledSize, { rate, minimum, lines }: LongarmPriceInput): Bill {
  const byArea = rateTimes(rate, size.squareInches);
  const isAtMinimum = byArea < minimum;
  const quilting = billedLine('Quilting', isAtMinimum ? minimum : byArea);
  const others: ChargedLine[] = [];
  let totalMinor = quilting.minor;
  for (const line of lines) {
    const percentOf = line.by === 'percent' && line.of === 'quilting' ? quilting.minor : totalMinor;
    const billed = { ...billedLine(line.name, lineAmount(line, size, percentOf)), percentOf };
    others.push(billed);
    totalMinor += billed.minor;
  }
  return { quilting, isAtMinimum, lines: others, totalMinor };
}

function lineAmount(line: PriceLine, size: BilledSize, percentOf: number): number {
  switch (line.by) {
    case 'flat':
      return line.amount;
    case 'area':
      return rateTimes(line.rate, size.squareInches);
    case 'edge':
      return rateTimes(line.rate, size.edgeInches);
    case 'percent':
      return rateTimes(line.percent, percentOf) / 100;
    default:
      return assertNever(line);
  }
}

/**
 * Rates have up to six decimals. As whole millionths, their product with whole inches is exact, so a bill never differs by a cent
 * from the same sum done by hand: 0.2 × 9540 is 1908, not 1908.0000000000002.
 */
function rateTimes(rate: number, amount: number): number {
  return (roundNearest(rate * 1e6, 1) * amount) / 1e6;
}

function billedLine(name: string, exact: number): BilledLine {
  return { name, exact, minor: roundNearest(exact, 1) };
}

export interface LongarmPriceDetails extends Bill {
  /** Sides of the rectangle around the top as it is sent, and as they are billed, in 1/320 mm. */
  readonly sentWidth: number;
  readonly sentLength: number;
  readonly billedWidth: Length;
  readonly billedLength: Length;
  /** In grams, before rounding. */
  readonly topGrams: number;
  readonly backingGrams: number;
  readonly battingGrams: number;
  readonly packageGrams: number;
}

/** The bill for the rectangle around the top as it is sent, each side rounded as the quilter does, and what the package weighs. */
export function workOutPrice(input: LongarmPriceInput): LongarmPriceDetails {
  const sent = sentBounds(input);
  const billedWidth = billedSide(input, sent.width).rounded;
  const billedLength = billedSide(input, sent.length).rounded;
  const [width, length] = [billedWidth / UNITS_PER_INCH, billedLength / UNITS_PER_INCH];
  const bill = makeBill({ squareInches: width * length, edgeInches: 2 * (width + length) }, input);
  return {
    ...bill,
    sentWidth: sent.width,
    sentLength: sent.length,
    billedWidth,
    billedLength,
    ...packageWeight(input),
  };
}

/** The points of a hexagon move out farther than its sides; every other shape grows by the edge on all sides. */
function sentBounds({ outline, seamAllowance, trimming }: LongarmPriceInput): OutlineBounds {
  const more = 2 * (seamAllowance + trimming);
  if (outline.shape === 'hexagon') {
    return outlineBounds({ ...outline, acrossFlats: lengthFromUnits(outline.acrossFlats + more) });
  }
  const { width, length } = outlineBounds(outline);
  return { width: width + more, length: length + more };
}

export function billedSide({ roundsSides, measureUpTo }: LongarmPriceInput, exact: number): LengthQuantity {
  switch (roundsSides) {
    case 'up':
      return lengthUp(exact, measureUpTo);
    case 'to-the-nearest':
      return lengthNearest(exact, measureUpTo);
    case 'not-at-all':
      return lengthNearest(exact);
  }
}

function packageWeight(
  input: LongarmPriceInput,
): Pick<LongarmPriceDetails, 'topGrams' | 'backingGrams' | 'battingGrams' | 'packageGrams'> {
  const bounds = outlineBounds(input.outline);
  const sheet = (bounds.width + 2 * input.overhang) * (bounds.length + 2 * input.overhang);
  const topGrams =
    gramsOf(outlineArea(input.outline), input.fabricWeight) * (1 + input.seamExtraPercent / 100);
  const backingGrams = gramsOf(sheet, input.fabricWeight);
  const battingGrams = gramsOf(sheet, input.battingWeight);
  return {
    topGrams,
    backingGrams,
    battingGrams,
    packageGrams: topGrams + backingGrams + battingGrams + input.packing,
  };
}
