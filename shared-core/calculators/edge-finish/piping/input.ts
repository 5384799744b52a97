import { z } from 'zod';
import { choiceField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromMillimeters, lengthFromUnits } from '#core/units/length';
import {
  shortestStripField,
  squareStepField,
  squareStepOfSettings,
} from '#core/calculators/binding/binding-fields';
import { outlineTightestRadius } from '#core/calculators/outline/outline-measures';
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

export const pipingInput = z
  .object({
    outline: outlineSchema,
    hole: holeSchema.nullable().meta({ title: 'Hole' }),
    around: choiceField(['outside', 'hole'], { title: 'Piping around' }),
    cord: lengthField({
      title: 'Thickness of the cord',
      help: 'Its diameter.',
      minimum: inches(1 / 16),
      maximum: inches(2),
    }),
    seamAllowance: seamField('Of the piping and of the edge it is sewn to.'),
    extra: lengthField({
      title: 'Extra for joining the ends',
      help: 'Of cord and of strip.',
      minimum: lengthFromUnits(0),
      maximum: inches(40),
    }),
    grain: choiceField(['bias', 'straight'], {
      title: 'Strips cut',
      help: 'On the bias they go around a curve. On the straight grain they take less fabric, for straight edges only.',
    }),
    clipEvery: lengthField({
      title: 'Clip a curve every',
      isSeldom: true,
      help: 'Cuts into the seam allowance of the piping, so that it bends.',
      minimum: inches(1 / 8),
      maximum: inches(4),
    }),
    fabricWidth: fabricWidthField(),
    shortestStrip: shortestStripField(),
    safetyExtra: safetyExtraField(),
    squareStep: squareStepField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly()
  .refine(({ around, hole }) => around === 'outside' || hole !== null, {
    path: ['around'],
    message: 'the outside: there is no hole',
  });
export type PipingInput = z.infer<typeof pipingInput>;

export function pipingFromProject({ outline, hole, settings }: Measurements): PipingInput {
  const isInch = settings.unitSystem === 'inch';
  return {
    outline,
    hole,
    around: 'outside',
    cord: isInch ? inches(5 / 32) : lengthFromMillimeters(4),
    seamAllowance: settings.seamAllowance,
    extra: isInch ? inches(4) : lengthFromMillimeters(100),
    grain: outlineTightestRadius(outline) === null ? 'straight' : 'bias',
    clipEvery: isInch ? inches(1 / 2) : lengthFromMillimeters(12),
    fabricWidth: settings.fabricWidth,
    // Piping of many short strips has a lump at every join.
    shortestStrip: isInch ? inches(9) : lengthFromMillimeters(230),
    safetyExtra: settings.safetyExtraPercent,
    squareStep: squareStepOfSettings(settings),
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
