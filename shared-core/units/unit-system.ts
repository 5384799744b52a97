import { type Length, lengthFromUnits, UNITS_PER_INCH, UNITS_PER_MILLIMETER } from './length';

export type UnitSystem = 'inch' | 'metric';

/** Denominator of the finest inch fraction shown: 8 means eighths. Each of these fractions is a whole number of base units. */
export type InchStep = 4 | 8 | 16 | 32 | 64;

export const INCH_STEPS: readonly InchStep[] = [4, 8, 16, 32, 64];

/** How a project wants its lengths written. */
export interface LengthDisplay {
  readonly system: UnitSystem;
  readonly inchStep: InchStep;
}

/** The step to which a size for the ruler is rounded: the inch fraction, or one millimeter. */
export function displayStep(display: LengthDisplay): Length {
  return lengthFromUnits(
    display.system === 'inch' ? UNITS_PER_INCH / display.inchStep : UNITS_PER_MILLIMETER,
  );
}
