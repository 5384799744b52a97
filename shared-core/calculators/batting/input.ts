import { z } from 'zod';
import { lengthField, percentField, textField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { lengthFromInches } from '#core/units/length';
import { cutStepField, cutStepOfSettings, yardageStepField, yardageStepOfSettings } from '../shared-fields';

const inches = lengthFromInches;
const widest = inches(390);

const battingPackage = z
  .object({
    name: textField({ title: 'Name', minimum: 1, maximum: 60 }),
    width: lengthField({ title: 'Width', maximum: widest }),
    length: lengthField({ title: 'Length', maximum: widest }),
  })
  .readonly();

const battingRoll = z
  .object({
    name: textField({ title: 'Name', minimum: 1, maximum: 60 }),
    width: lengthField({ title: 'Width', minimum: inches(4), maximum: widest }),
  })
  .readonly();

export const battingInput = z
  .object({
    outline: outlineSchema,
    overhang: lengthField({
      title: 'Overhang',
      help: 'How far the batting reaches past the top on every side.',
      minimum: inches(0),
      maximum: inches(24),
    }),
    packages: z.array(battingPackage).max(60).readonly().meta({
      title: 'Packages',
      description:
        'The sizes your shop sells. There is no standard; the list starts with common sizes. Change it to match your shop.',
    }),
    rolls: z
      .array(battingRoll)
      .max(30)
      .readonly()
      .meta({ title: 'Rolls', description: 'Batting sold by the yard, and the width of each roll.' }),
    sizesFrom: textField({
      title: 'Where the sizes come from',
      help: 'A shop, a label or a price list. Fill it in when you change packages or rolls.',
      maximum: 120,
    }),
    safetyExtraPercent: percentField({
      title: 'Safety extra',
      help: 'Added to a length bought by the yard, not to a package.',
      minimum: 0,
      maximum: 100,
    }),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();

export type BattingInput = z.infer<typeof battingInput>;

const inchPackage = (name: string, width: number, length: number) => ({
  name,
  width: inches(width),
  length: inches(length),
});

/**
 * Common practice: sizes found on many packages. There is no standard. A new notebook's kinds of batting have the same sizes.
 */
export const COMMON_PACKAGES: BattingInput['packages'] = [
  inchPackage('Crib', 45, 60),
  inchPackage('Throw', 60, 60),
  inchPackage('Twin', 72, 93),
  inchPackage('Full', 81, 96),
  inchPackage('Queen', 90, 108),
  inchPackage('King', 120, 120),
];

/** Common practice. */
const COMMON_ROLLS: BattingInput['rolls'] = [
  { name: 'Narrow roll', width: inches(48) },
  { name: 'Wide roll', width: inches(96) },
];

export function battingInputFromProject({ outline, settings }: Measurements): BattingInput {
  return {
    outline,
    overhang: settings.backingOverhang,
    packages: COMMON_PACKAGES,
    rolls: COMMON_ROLLS,
    sizesFrom: 'common sizes; there is no standard',
    safetyExtraPercent: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
