import { z } from 'zod';
import { countField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  safetyExtraField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '#core/calculators/shared-fields';
import { joinField, overlapField, stripWidthField } from '../binding-fields';

const stripsOfOneLength = z
  .object({
    length: lengthField({ title: 'Length', help: 'From end to end, as it lies there.' }),
    count: countField({ title: 'How many', minimum: 1, maximum: 100 }),
  })
  .readonly()
  .meta({ title: 'Strips' });

export const scrappyBindingInput = z
  .object({
    outline: outlineSchema,
    strips: z
      .array(stripsOfOneLength)
      .min(1)
      .max(30)
      .readonly()
      .meta({
        title: 'Strips you have',
        description: 'In the order in which you want to join them.',
        examples: [{ length: lengthFromInches(18), count: 1 }],
      }),
    stripWidth: stripWidthField(),
    join: joinField(),
    seamAllowance: seamField('For the joins between strips.'),
    overlap: overlapField(),
    fabricWidth: fabricWidthField(),
    safetyExtra: safetyExtraField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type ScrappyBindingInput = z.infer<typeof scrappyBindingInput>;

/** Starts with the seven strips that a fat quarter gives. */
export function scrappyBindingFromProject({ outline, settings }: Measurements): ScrappyBindingInput {
  const isInch = settings.unitSystem === 'inch';
  return {
    outline,
    strips: [{ length: isInch ? lengthFromInches(22) : lengthFromMillimeters(550), count: 7 }],
    stripWidth: settings.bindingStripWidth,
    join: 'diagonal',
    seamAllowance: settings.seamAllowance,
    overlap: settings.bindingOverlap,
    fabricWidth: settings.fabricWidth,
    safetyExtra: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
