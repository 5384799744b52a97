import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { type Length, lengthFromInches, lengthFromMillimeters, lengthFromUnits } from '#core/units/length';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  safetyExtraField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '#core/calculators/shared-fields';

const inches = lengthFromInches;

export const prairiePointsInput = z
  .object({
    outline: outlineSchema,
    height: lengthField({
      title: 'Finished height of a point',
      help: 'From the seam to the tip.',
      minimum: inches(1 / 4),
      maximum: inches(12),
    }),
    overlap: lengthField({
      title: 'Least overlap at the seam',
      help: 'How far each point tucks into the next. With none they just meet at the seam.',
      minimum: lengthFromUnits(0),
      maximum: inches(12),
    }),
    seamAllowance: seamField('That sews the points to the edge.'),
    fabricWidth: fabricWidthField(),
    safetyExtra: safetyExtraField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type PrairiePointsInput = z.infer<typeof prairiePointsInput>;

export function prairiePointsFromProject({ outline, settings }: Measurements): PrairiePointsInput {
  const isInch = settings.unitSystem === 'inch';
  const usual = (inInches: number, inMillimeters: number): Length =>
    isInch ? inches(inInches) : lengthFromMillimeters(inMillimeters);
  return {
    outline,
    height: usual(1.5, 40),
    overlap: usual(1 / 2, 12),
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    safetyExtra: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
