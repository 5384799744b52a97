import { type Length, lengthFromExact } from '#core/units/length';
import { type HoleSizeInput, isMeasured, rulerRounding } from './input';

export interface HoleSizeDetails {
  /** Before rounding. */
  readonly exactDiameter: number;
  /** Rounded up to the ruler, so that it is never too small for the thing that goes through. */
  readonly diameter: Length;
  readonly seamLine: number;
}

export function workOutHole(input: HoleSizeInput): HoleSizeDetails {
  const across = input.from === 'around' ? input.measure / Math.PI : input.measure;
  const exactDiameter = isMeasured(input) ? across + input.ease : across;
  const { direction, step } = rulerRounding(input);
  const diameter = lengthFromExact(exactDiameter, direction, step);
  return { exactDiameter, diameter, seamLine: Math.PI * (diameter + 2 * input.seamAllowance) };
}
