import { type Length, KILOMETER_UNITS } from '#core/units/length';
import type { LengthQuantity } from '../explanation';
import { yardageUp } from '../quantities';
import type { FabricWidthInput } from './input';
import { ONE_WAY_UNITS, chartLength } from './width-chart';

export interface FabricWidthDetails {
  /** By the published chart for garments, in 1/320 mm, only to compare; null when it has no such entry. */
  readonly byChart: number | null;
  /** By area, before rounding. */
  readonly byArea: number;
  readonly toBuy: Length;
}

/**
 * The amounts before they are rounded; null when the length would be over 1 km. The area leads: patches fill the fabric as pieces of
 * a garment do not, and the chart gives less area than is asked for in half of its entries.
 */
export function workOutWidth(
  input: FabricWidthInput,
): (Pick<FabricWidthDetails, 'byChart' | 'byArea'> & { readonly exact: number }) | null {
  const byArea = (input.length * input.fromWidth) / input.toWidth;
  if (byArea + ONE_WAY_UNITS + input.yardageStep > KILOMETER_UNITS) return null;
  const byChart = chartLength(input.length, input.fromWidth, input.toWidth);
  const exact = byArea + (input.isOneWay ? ONE_WAY_UNITS : 0);
  return { byChart, byArea, exact };
}

/** Rounded up to what shops cut. */
export function bought({ yardageStep }: FabricWidthInput, exact: number): LengthQuantity {
  return yardageUp(exact, yardageStep);
}
