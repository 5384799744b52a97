import { z } from 'zod';
import { choiceField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { LENGTH_ZERO, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { holeOfProject } from '#core/calculators/curves/inner-binding/input';
import { seamField } from '#core/calculators/shared-fields';

export const holeSizeInput = z
  .object({
    from: choiceField(['around', 'across', 'ruler', 'wish'], {
      title: 'The hole comes from',
      help: 'A stand, trunk or pole measured around or across, a size of your circle ruler, or any size you want.',
    }),
    measure: lengthField({
      title: 'Size',
      help: 'The distance around if you measured around; otherwise the diameter.',
    }),
    ease: lengthField({
      title: 'Ease',
      help: 'Added to a measured diameter so that the project goes on easily and lies flat. Half of it is on each side. Start with 1/4 in (6 mm) for a pole, and 1/2 in (13 mm) or more for a trunk.',
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(24),
    }),
    rulerStep: lengthField({
      title: 'Step of your circle ruler',
      help: 'By diameter. If your ruler turns on a pin, that is twice the step of its holes.',
      minimum: lengthFromMillimeters(1),
      maximum: lengthFromInches(4),
    }),
    seamAllowance: seamField('From the cut edge to the stitching of the inner binding.'),
  })
  .readonly();
export type HoleSizeInput = z.infer<typeof holeSizeInput>;

/** The hole of the project, until something is measured. */
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

/** A measured size gets ease and is rounded up to the next ruler size; any other size is taken as it is. */
export function isMeasured({ from }: Pick<HoleSizeInput, 'from'>): boolean {
  return from === 'around' || from === 'across';
}

/** Up to the step of the ruler for a measured size; only to a whole unit for a given one. */
export function rulerRounding(input: HoleSizeInput) {
  return { direction: 'up', step: isMeasured(input) ? input.rulerStep : 1 } as const;
}
