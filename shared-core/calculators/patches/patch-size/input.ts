import { z } from 'zod';
import { choiceField, countField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '#core/calculators/shared-fields';
import { unitWithFabricsField } from './unit-fabrics';

export const roundingField = choiceField(['customary', 'exact'], {
  title: 'Add-ons',
  help:
    'Customary: 7/8 in and 1 1/4 in, as usual with a 1/4 in seam. Exact: the true size. ' +
    'Both are rounded up to your step.',
});

export const patchSizeInput = z
  .object({
    unit: unitWithFabricsField.meta({ title: 'Patch or unit' }),
    sizesAre: choiceField(['finished', 'cut'], {
      title: 'The sizes above are',
      help: 'Finished: you get the cut sizes. Cut: you have a precut or an odd square, and get its finished size.',
    }),
    count: countField({ title: 'How many', minimum: 1, maximum: 5_000 }),
    seamAllowance: seamField(),
    fabricWidth: fabricWidthField(),
    rounding: roundingField,
    cutStep: cutStepField(),
    pieceWidth: lengthField({
      title: 'Width of a piece you have',
      help: 'To see how many patches you can cut from it.',
    }),
    pieceLength: lengthField({ title: 'Length of a piece you have' }),
    yardageStep: yardageStepField(),
  })
  .readonly();

export type PatchSizeInput = z.infer<typeof patchSizeInput>;

/** Starts with a plain square and a fat quarter, which shops with metric units cut as 50 by 55 cm. */
export function patchSizeFromProject({ settings }: Measurements): PatchSizeInput {
  const isInch = settings.unitSystem === 'inch';
  return {
    unit: { unit: 'square', side: isInch ? lengthFromInches(3) : lengthFromMillimeters(75), firstFabric: '' },
    sizesAre: 'finished',
    count: 1,
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    rounding: isInch ? 'customary' : 'exact',
    cutStep: cutStepOfSettings(settings),
    pieceWidth: isInch ? lengthFromInches(22) : lengthFromMillimeters(550),
    pieceLength: isInch ? lengthFromInches(18) : lengthFromMillimeters(500),
    yardageStep: yardageStepOfSettings(settings),
  };
}
