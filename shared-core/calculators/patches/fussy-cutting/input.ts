import { z } from 'zod';
import { countField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { lengthFromInches } from '#core/units/length';
import {
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '#core/calculators/shared-fields';

const inches = lengthFromInches;
const REPEAT = { minimum: inches(1 / 4), maximum: inches(60) };
const WINDOW = { minimum: inches(1 / 4), maximum: inches(60) };

export const fussyCuttingInput = z
  .object({
    windowWidth: lengthField({ title: 'Window across the fabric', help: 'The finished patch.', ...WINDOW }),
    windowLength: lengthField({ title: 'Window along the fabric', help: 'The finished patch.', ...WINDOW }),
    seam: seamField('On every side of the window.'),
    repeatAcross: lengthField({
      title: 'Print repeat across the fabric',
      help: 'From one figure to the next one like it, from selvage to selvage.',
      ...REPEAT,
    }),
    repeatAlong: lengthField({
      title: 'Print repeat along the fabric',
      help: 'From one figure to the next one like it, parallel to the selvages.',
      ...REPEAT,
    }),
    count: countField({ title: 'Patches', minimum: 1, maximum: 300 }),
    atHand: lengthField({ title: 'Length at hand', help: 'A length whose patches you want to know.' }),
    fabricWidth: fabricWidthField(),
    yardageStep: yardageStepField(),
  })
  .readonly();

export type FussyCuttingInput = z.infer<typeof fussyCuttingInput>;

export function fussyCuttingFromProject({ settings }: Measurements): FussyCuttingInput {
  return {
    windowWidth: inches(4),
    windowLength: inches(4),
    seam: settings.seamAllowance,
    repeatAcross: inches(6),
    repeatAlong: inches(6),
    count: 12,
    atHand: inches(36),
    fabricWidth: settings.fabricWidth,
    yardageStep: yardageStepOfSettings(settings),
  };
}
