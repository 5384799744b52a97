import { decimalText } from './decimal-text';
import {
  type Length,
  lengthFromUnits,
  UNITS_PER_INCH,
  UNITS_PER_METER,
  UNITS_PER_MILLIMETER,
  UNITS_PER_YARD,
} from './length';
import { type RoundingDirection, roundTo, roundUpTo } from './rounding';
import { type InchStep, INCH_STEPS, type LengthDisplay } from './unit-system';

/** A length in the parts that are written: `value = sign (whole + numerator/denominator) unit`, the fraction reduced. */
export interface LengthParts {
  readonly sign: '' | '−';
  readonly whole: number;
  /** 0 if there is no fraction; the denominator is then 1. */
  readonly numerator: number;
  readonly denominator: number;
  /** Metric only: the number as it is written, such as `24.1`. */
  readonly decimal?: string;
  readonly unit: 'in' | 'mm' | 'cm';
  /** False if rounding to the display's step changed the length. */
  readonly isExact: boolean;
}

/** Below this a metric length is written in steps of half a millimeter, so that a 7.5 mm seam is not shown as 0.8 cm. */
const SMALL_METRIC_UNITS = 20 * UNITS_PER_MILLIMETER;
const UNITS_PER_CENTIMETER = 10 * UNITS_PER_MILLIMETER;

/** Rounds to the display's step (an inch fraction; 1 mm, or 0.5 mm below 2 cm) and splits the result into parts. */
export function lengthParts(
  length: Length,
  display: LengthDisplay,
  rounding: RoundingDirection = 'nearest',
): LengthParts {
  return display.system === 'inch'
    ? inchParts(length, display.inchStep, rounding)
    : metricParts(length, rounding);
}

/** `9½ in`, `9 13/16 in`, `7.5 mm`, `24.1 cm`: rounded to the display's step in the given direction. */
export function formatLength(
  length: Length,
  display: LengthDisplay,
  rounding: RoundingDirection = 'nearest',
): string {
  const parts = lengthParts(length, display, rounding);
  return `${parts.sign}${parts.decimal ?? mixedNumber(parts)} ${parts.unit}`;
}

/**
 * A small difference or an exact mark, in finer steps than the display's: `7/64 in`, `2.4 mm`, `24.13 cm`, to 1/64 in or 0.1 mm
 * in the given direction.
 */
export function formatFineLength(
  length: Length,
  display: LengthDisplay,
  rounding: RoundingDirection = 'nearest',
): string {
  if (display.system === 'inch') return formatLength(length, { system: 'inch', inchStep: 64 }, rounding);
  const rounded = roundTo(length, UNITS_PER_MILLIMETER / 10, rounding);
  const size = Math.abs(rounded);
  return Math.abs(length) < SMALL_METRIC_UNITS
    ? `${signOf(rounded)}${decimalText(size / UNITS_PER_MILLIMETER, 1)} mm`
    : `${signOf(rounded)}${decimalText(size / UNITS_PER_CENTIMETER, 2)} cm`;
}

/** The value that `formatLength` or `formatFineLength` shows for a length, in units. */
export function shownLength(
  length: Length,
  display: LengthDisplay,
  { rounding, isFine }: { readonly rounding: RoundingDirection; readonly isFine: boolean },
): number {
  if (display.system === 'inch')
    return roundTo(length, UNITS_PER_INCH / (isFine ? 64 : display.inchStep), rounding);
  if (isFine) return roundTo(length, UNITS_PER_MILLIMETER / 10, rounding);
  const isSmall = Math.abs(length) < SMALL_METRIC_UNITS;
  return roundTo(length, isSmall ? UNITS_PER_MILLIMETER / 2 : UNITS_PER_MILLIMETER, rounding);
}

/** Text for an input field, in plain characters. It always reads back as exactly this length, no matter how fine. */
export function formatLengthForEditing(length: Length, display: LengthDisplay): string {
  const sign = length < 0 ? '-' : '';
  const size = Math.abs(length);
  if (display.system === 'inch') {
    const step = [display.inchStep, ...INCH_STEPS].find(
      (candidate) => size % (UNITS_PER_INCH / candidate) === 0,
    );
    if (step !== undefined)
      return `${sign}${plainMixedNumber(inchParts(lengthFromUnits(size), step, 'nearest'))} in`;
    return `${sign}${shortestDecimal(size, UNITS_PER_MILLIMETER)} mm`;
  }
  return size < SMALL_METRIC_UNITS
    ? `${sign}${shortestDecimal(size, UNITS_PER_MILLIMETER)} mm`
    : `${sign}${shortestDecimal(size, UNITS_PER_CENTIMETER)} cm`;
}

/** The step in which fabric is sold: an eighth of a yard, or 5 cm. */
export function yardageStep(display: LengthDisplay): Length {
  return lengthFromUnits(display.system === 'inch' ? UNITS_PER_YARD / 8 : UNITS_PER_METER / 20);
}

/** `1⅜ yd` or `1.25 m`: always rounded up to the step in which fabric is sold, so that it is enough. */
export function formatYardage(length: Length, display: LengthDisplay): string {
  const bought = roundUpTo(length, yardageStep(display));
  const sign = bought < 0 ? '−' : '';
  const size = Math.abs(bought);
  return display.system === 'inch'
    ? `${sign}${mixedNumber(mixedFromEighths(size / yardageStep(display)))} yd`
    : `${sign}${(size / UNITS_PER_METER).toFixed(2)} m`;
}

/** A computed length before rounding, for explanations: `12.0711 in` or `30.661 cm`. Throws RangeError unless finite. */
export function formatExactLength(units: number, display: LengthDisplay): string {
  const text =
    display.system === 'inch'
      ? `${decimalText(units / UNITS_PER_INCH, 4)} in`
      : Math.abs(units) < SMALL_METRIC_UNITS
        ? `${decimalText(units / UNITS_PER_MILLIMETER, 2)} mm`
        : `${decimalText(units / UNITS_PER_CENTIMETER, 3)} cm`;
  return text.replace('-', '−');
}

type Mixed = Pick<LengthParts, 'whole' | 'numerator' | 'denominator'>;

function inchParts(length: Length, step: InchStep, rounding: RoundingDirection): LengthParts {
  const rounded = roundTo(length, UNITS_PER_INCH / step, rounding);
  const steps = Math.abs(rounded) / (UNITS_PER_INCH / step);
  return { sign: signOf(rounded), ...reduced(steps, step), unit: 'in', isExact: rounded === length };
}

function metricParts(length: Length, rounding: RoundingDirection): LengthParts {
  const isSmall = Math.abs(length) < SMALL_METRIC_UNITS;
  const perUnit = isSmall ? UNITS_PER_MILLIMETER : UNITS_PER_CENTIMETER;
  const stepsPerUnit = isSmall ? 2 : 10;
  const rounded = roundTo(length, perUnit / stepsPerUnit, rounding);
  const steps = Math.abs(rounded) / (perUnit / stepsPerUnit);
  return {
    sign: signOf(rounded),
    ...reduced(steps, stepsPerUnit),
    decimal: decimalText(steps / stepsPerUnit, 1),
    unit: isSmall ? 'mm' : 'cm',
    isExact: rounded === length,
  };
}

function signOf(units: number): '' | '−' {
  return units < 0 ? '−' : '';
}

function mixedFromEighths(eighths: number): Mixed {
  return reduced(eighths, 8);
}

function reduced(steps: number, stepsPerUnit: number): Mixed {
  let numerator = steps % stepsPerUnit;
  let denominator = stepsPerUnit;
  const whole = (steps - numerator) / stepsPerUnit;
  if (numerator === 0) return { whole, numerator: 0, denominator: 1 };
  while (numerator % 2 === 0 && denominator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return { whole, numerator, denominator };
}

const FRACTION_CHARACTERS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

function mixedNumber(mixed: Mixed): string {
  const character = FRACTION_CHARACTERS[`${mixed.numerator}/${mixed.denominator}`];
  if (character === undefined) return plainMixedNumber(mixed);
  return mixed.whole === 0 ? character : `${mixed.whole}${character}`;
}

function plainMixedNumber({ whole, numerator, denominator }: Mixed): string {
  if (numerator === 0) return String(whole);
  return whole === 0 ? `${numerator}/${denominator}` : `${whole} ${numerator}/${denominator}`;
}

/** The fewest decimals that still round back to `units`. Four are always enough: a ten-thousandth of a cm is 0.32 units. */
function shortestDecimal(units: number, perUnit: number): string {
  const places =
    [0, 1, 2, 3].find((few) => Math.round(Number((units / perUnit).toFixed(few)) * perUnit) === units) ?? 4;
  return decimalText(units / perUnit, places);
}
