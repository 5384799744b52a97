import { z } from 'zod';
import { choiceField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import { LENGTH_ZERO, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import {
  shortestStripField,
  squareStepField,
  squareStepOfSettings,
} from '#core/calculators/binding/binding-fields';
import { limitFields, STARTING_LIMITS } from '#core/calculators/curves/curve-fields';
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

export const facingInput = z
  .object({
    outline: outlineSchema,
    hole: holeSchema.nullable().meta({ title: 'Hole' }),
    around: choiceField(['hole', 'outside'], { title: 'Facing for' }),
    way: choiceField(['shaped', 'strips'], {
      title: 'Cut',
      help: 'Shaped: from one patch, to the form of the edge, so that it bends nowhere. Strips: joined into one, on the bias where the edge is curved.',
    }),
    width: lengthField({
      title: 'Width of the facing',
      help: 'On the back, from the finished edge to the line where it is sewn down. 1 to 3 in are in use (common practice).',
      minimum: inches(1 / 2),
      maximum: inches(12),
    }),
    turnedEdge: lengthField({
      title: 'Turned under',
      help: 'At the edge that is sewn down.',
      minimum: LENGTH_ZERO,
      maximum: inches(2),
    }),
    seamAllowance: seamField('From the cut edge of the project to the stitching.'),
    clipEvery: lengthField({
      title: 'Clip or notch a curve every',
      isSeldom: true,
      minimum: inches(1 / 8),
      maximum: inches(4),
    }),
    extra: lengthField({
      title: 'Extra for joining the ends',
      isSeldom: true,
      help: 'Of a strip that goes around a curve.',
      minimum: LENGTH_ZERO,
      maximum: inches(40),
    }),
    endExtra: lengthField({
      title: 'Extra at each end of a side',
      isSeldom: true,
      help: 'Straight sides are faced one by one; the strips overlap at the corners.',
      minimum: LENGTH_ZERO,
      maximum: inches(12),
    }),
    ...limitFields(),
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
export type FacingInput = z.infer<typeof facingInput>;

/** A hole is faced by one patch; the outside by strips, which take less fabric. */
export function facingFromProject({ outline, hole, settings }: Measurements): FacingInput {
  const isInch = settings.unitSystem === 'inch';
  const length = (inch: number, millimeters: number) =>
    isInch ? inches(inch) : lengthFromMillimeters(millimeters);
  return {
    outline,
    hole,
    around: hole === null ? 'outside' : 'hole',
    way: hole === null ? 'strips' : 'shaped',
    // On a curve a narrow strip turns more easily.
    width: hole === null && outlineTightestRadius(outline) !== null ? length(1, 25) : length(1.5, 40),
    turnedEdge: length(1 / 4, 6),
    seamAllowance: settings.seamAllowance,
    clipEvery: length(1 / 2, 12),
    extra: length(4, 100),
    endExtra: length(1, 25),
    ...STARTING_LIMITS,
    fabricWidth: settings.fabricWidth,
    shortestStrip: length(9, 230),
    safetyExtra: settings.safetyExtraPercent,
    squareStep: squareStepOfSettings(settings),
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
