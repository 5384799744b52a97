import { z } from 'zod';
import {
  choiceField,
  countField,
  flagField,
  lengthField,
  numberField,
  weightField,
} from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import { outlineBounds } from '../outline/outline-measures';
import {
  battingWeightField,
  fabricWeightField,
  packingField,
  seamExtraField,
  STARTING_WEIGHTS,
} from '../weight-fields';

const inches = lengthFromInches;

const foldedParts = (title: string, help: string) => countField({ title, help, minimum: 1, maximum: 40 });

export const packageWeightInput = z
  .object({
    outline: outlineSchema,
    hole: holeSchema.nullable().meta({ title: 'Hole' }),
    hasSlit: flagField({ title: 'A slit runs from the edge to the hole' }),
    fabricWeight: fabricWeightField(),
    seamExtraPercent: seamExtraField(),
    backingWeight: numberField({
      title: 'Weight of the backing',
      help: 'Fleece or flannel is heavier than quilting cotton. Weigh a piece of a known size.',
      unit: 'g per square meter',
      minimum: 0,
      maximum: 2_000,
    }),
    battingWeight: battingWeightField(
      'Common practice: light 70 to 100, medium 135 to 170, heavy 200 and more. An ounce per square yard is 34.',
    ),
    stripWidth: lengthField({
      title: 'Width of the binding strip',
      help: 'As cut, before it is folded.',
      minimum: inches(1 / 2),
      maximum: inches(12),
    }),
    other: weightField({
      title: 'Thread, label and the like',
      minimum: 0,
      maximum: 20_000,
    }),
    packing: packingField(),
    partsAcross: foldedParts(
      'Folded into parts across',
      'Layers that the width is folded into. 1 is not folded.',
    ),
    partsAlong: foldedParts(
      'Folded into parts along',
      'Layers that the length is folded into. 1 is not folded.',
    ),
    layerThickness: lengthField({
      title: 'Thickness of one layer',
      help: 'Fold the quilt, measure the pile and divide by its layers. 1/4 in or 6 mm is a guess to start from (from memory).',
      minimum: lengthFromMillimeters(0.5),
      maximum: inches(4),
    }),
    boxRoom: lengthField({
      title: 'Room on every side in the box',
      help: 'With the thickness of its wall.',
      minimum: inches(0),
      maximum: inches(12),
    }),
    boxUnits: choiceField(['inches-and-pounds', 'centimeters-and-kilograms'], {
      title: 'Your carrier measures in',
      help: 'Each side of the box is rounded up to a whole inch or centimeter.',
    }),
    divisor: numberField({
      title: 'Divisor for weight by volume',
      help: 'Many carriers charge a large, light box as if it weighed its volume divided by a number of theirs. Enter that number; 0 where they go by weight alone.',
      minimum: 0,
      maximum: 100_000,
    }),
    chargedStep: numberField({
      title: 'Carrier rounds the weight up to',
      help: 'In the pounds or kilograms of the carrier.',
      minimum: 0.05,
      maximum: 10,
    }),
  })
  .readonly()
  .refine(({ hasSlit, hole }) => !hasSlit || hole !== null, {
    path: ['hasSlit'],
    message: 'no slit without a hole: a slit runs from the edge to a hole',
  })
  .refine(({ divisor }) => divisor === 0 || divisor >= 1, {
    path: ['divisor'],
    message: '0, or a divisor of 1 or more',
  });

export type PackageWeightInput = z.infer<typeof packageWeightInput>;

export function packageWeightFromProject(measurements: Measurements): PackageWeightInput {
  const { outline, hole, settings } = measurements;
  const isInch = settings.unitSystem === 'inch';
  const bounds = outlineBounds(outline);
  return {
    outline,
    hole,
    hasSlit: measurements.hasSlit && hole !== null,
    fabricWeight: STARTING_WEIGHTS.fabricWeight,
    seamExtraPercent: STARTING_WEIGHTS.seamExtraPercent,
    backingWeight: STARTING_WEIGHTS.fabricWeight,
    battingWeight: STARTING_WEIGHTS.battingWeight,
    stripWidth: settings.bindingStripWidth,
    other: 20,
    packing: STARTING_WEIGHTS.packing,
    partsAcross: partsToFit(bounds.width),
    partsAlong: partsToFit(bounds.length),
    layerThickness: isInch ? inches(1 / 4) : lengthFromMillimeters(6),
    boxRoom: isInch ? inches(1 / 2) : lengthFromMillimeters(10),
    boxUnits: isInch ? 'inches-and-pounds' : 'centimeters-and-kilograms',
    divisor: 0,
    chargedStep: 1,
  };
}

/** As many layers as bring a side to 15 in or less, which a person can carry under an arm. */
function partsToFit(side: number): number {
  return Math.min(40, Math.max(1, roundUpTo(side / inches(15), 1)));
}
