import { z } from 'zod';
import { choiceField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Length, LENGTH_ZERO, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { holeOfProject } from '#core/calculators/curves/inner-binding/input';
import { seamField } from '#core/calculators/shared-fields';

export const holeSizeInput = z
  .object({
    from: choiceField(['around', 'across', 'ruler', 'wish'], {
      title: 'The hole comes from',
      help: 'A stand, trunk or pole measured around or across, a size of your circle ruler, or your own wish.',
    }),
    measure: lengthField({
      title: 'Measured or wished for',
      help: 'Around where you measured around, else across.',
    }),
    ease: lengthField({
      title: 'Ease',
      help: 'Added to a measured diameter so that the piece goes on and lies flat; half of it on each side.',
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(24),
    }),
    rulerStep: lengthField({
      title: 'Your circle ruler goes in steps of',
      help: 'Of the diameter. A ruler that turns on its center goes in twice the step of its holes.',
      minimum: lengthFromMillimeters(1),
      maximum: lengthFromInches(4),
    }),
    seamAllowance: seamField('From the cut edge to the stitching of the inner binding.'),
  })
  .readonly();
export type HoleSizeInput = z.infer<typeof holeSizeInput>;

export interface HoleSizeDetails {
  /** Across the hole before rounding, and rounded up to the ruler so that it is never too small for what goes through. */
  readonly exactDiameter: number;
  readonly diameter: Length;
  readonly seamLine: number;
}

/** The project’s own hole, as a wish, until something is measured. */
export function holeSizeFromProject(measurements: Measurements): HoleSizeInput {
  const isInch = measurements.settings.unitSystem === 'inch';
  return {
    from: 'wish',
    measure: holeOfProject(measurements),
    ease: isInch ? lengthFromInches(1 / 2) : lengthFromMillimeters(10),
    rulerStep: isInch ? lengthFromInches(1 / 2) : lengthFromMillimeters(10),
    seamAllowance: measurements.settings.seamAllowance,
  };
}

/** A measured thing gets ease and goes up to the next ruler size; a ruler size or a wish is taken as it is. */
export function isMeasured({ from }: Pick<HoleSizeInput, 'from'>): boolean {
  return from === 'around' || from === 'across';
}

/** How the hole is rounded: up to the ruler where it was measured, not at all where it was given. */
export function rulerRounding(asked: HoleSizeInput) {
  return { direction: 'up', step: isMeasured(asked) ? asked.rulerStep : 1 } as const;
}
