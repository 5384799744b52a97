import { z } from 'zod';
import { choiceField, countField, flagField, numberField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  safetyExtraField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '#core/calculators/shared-fields';
import {
  coverField,
  foldField,
  joinField,
  overlapField,
  shortestStripField,
  SHORTEST_STRIP,
  squareStepField,
  squareStepOfSettings,
  stripWidthField,
  thicknessField,
} from '../binding-fields';

export const outerBindingInput = z
  .object({
    outline: outlineSchema,
    hole: holeSchema.nullable(),
    hasSlit: flagField({ title: 'Slit from the edge to the hole' }),
    slitBoundWith: choiceField(['outside', 'outside-and-hole', 'hole'], {
      title: 'Bind the slit with',
      help: 'Where slit and hole are cut first, one strip can go around the outside, the slit and the hole. A slit cut after the outside is bound goes with the hole.',
    }),
    innerCorners: countField({
      title: 'Inner corners',
      isSeldom: true,
      help: 'Corners that point into the quilt.',
      minimum: 0,
      maximum: 60,
    }),
    innerCornerAngle: numberField({
      title: 'Angle of an inner corner',
      isSeldom: true,
      help: 'Measured through the quilt: 270 for the notch of an L.',
      unit: 'degrees',
      minimum: 181,
      maximum: 340,
    }),
    stripWidth: stripWidthField(),
    fold: foldField(),
    join: joinField(),
    seamAllowance: seamField('From the edge to the stitching. Also the width you see on the front.'),
    quiltThickness: thicknessField(),
    backCover: coverField(),
    overlap: overlapField(),
    fabricWidth: fabricWidthField(),
    shortestStrip: shortestStripField(),
    safetyExtra: safetyExtraField(),
    squareStep: squareStepField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type OuterBindingInput = z.infer<typeof outerBindingInput>;

/** Follows the stages: where none binds the hole by itself, one strip goes around the outside, the slit and the hole. */
export function outerBindingInputFromProject(measurements: Measurements): OuterBindingInput {
  const { settings } = measurements;
  return {
    outline: measurements.outline,
    hole: measurements.hole,
    hasSlit: measurements.hasSlit,
    slitBoundWith: measurements.isHoleBoundAlone === false ? 'outside-and-hole' : 'hole',
    innerCorners: 0,
    innerCornerAngle: 270,
    stripWidth: settings.bindingStripWidth,
    fold: 'double',
    join: 'diagonal',
    seamAllowance: settings.seamAllowance,
    quiltThickness: settings.quiltThickness,
    backCover: settings.backCover,
    overlap: settings.bindingOverlap,
    fabricWidth: settings.fabricWidth,
    shortestStrip: SHORTEST_STRIP,
    safetyExtra: settings.safetyExtraPercent,
    squareStep: squareStepOfSettings(settings),
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
