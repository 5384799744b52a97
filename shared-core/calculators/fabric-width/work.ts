import { type Length, MAX_LENGTH_UNITS } from '#core/units/length';
import type { LengthQuantity } from '../explanation';
import { yardageUp } from '../quantities';
import type { FabricWidthInput } from './input';
import { CHART_SPREAD_UNITS, chartLength } from './width-chart';

export interface FabricWidthDetails {
  /** By the published chart, in 1/320 mm; null when it has no such entry. */
  readonly byChart: number | null;
  /** By area, before rounding. */
  readonly byArea: number;
  readonly toBuy: Length;
}

/** The amounts before they are rounded; null when the length would be over 1 km. */
export function workOutWidth(
  input: FabricWidthInput,
): (Pick<FabricWidthDetails, 'byChart' | 'byArea'> & { readonly exact: number }) | null {
  const byArea = (input.length * input.fromWidth) / input.toWidth;
  if (byArea + CHART_SPREAD_UNITS + input.yardageStep > MAX_LENGTH_UNITS) return null;
  const byChart = chartLength(input.length, input.fromWidth, input.toWidth);
  const exact = (byChart ?? byArea) + (input.isOneWay ? CHART_SPREAD_UNITS : 0);
  return { byChart, byArea, exact };
}

/** Rounded up to what shops cut. */
export function bought({ yardageStep }: FabricWidthInput, exact: number): LengthQuantity {
  return yardageUp(exact, yardageStep);
}
