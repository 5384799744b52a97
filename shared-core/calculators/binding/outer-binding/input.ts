import { z } from 'zod';
import {
  choiceField,
  countField,
  flagField,
  lengthField,
  numberField,
  percentField,
} from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromUnits } from '#core/units/length';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '#core/calculators/shared-fields';
import {
  coverField,
  foldField,
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
    slitBoundWith: choiceField(['outside', 'hole'], {
      title: 'The slit is bound with',
      help: 'A slit that is cut after the outside is bound goes with the hole; one that is there already goes with the outside.',
    }),
    innerCorners: countField({
      title: 'Inner corners',
      isSeldom: true,
      help: 'Corners that point into the piece.',
      minimum: 0,
      maximum: 60,
    }),
    innerCornerAngle: numberField({
      title: 'Angle of an inner corner',
      isSeldom: true,
      help: 'Measured through the piece: 270 for the notch of an L.',
      unit: 'degrees',
      minimum: 181,
      maximum: 340,
    }),
    stripWidth: stripWidthField(),
    fold: foldField(),
    join: choiceField(['diagonal', 'straight'], {
      title: 'Strips are joined',
      help: 'A diagonal join costs a strip width and lies flatter; a straight one costs two seam allowances.',
    }),
    seamAllowance: seamField('From the edge to the stitching; also the width seen on the front.'),
    quiltThickness: thicknessField(),
    backCover: coverField(),
    overlap: lengthField({
      title: 'Overlap',
      help: 'Extra length for the closing join and for safety.',
      minimum: lengthFromUnits(0),
      maximum: lengthFromInches(60),
    }),
    fabricWidth: fabricWidthField(),
    shortestStrip: shortestStripField(),
    straightGrainGive: percentField({
      title: 'Straight grain gives',
      isSeldom: true,
      help: 'How far a straight strip can be eased or stretched round a bend (common practice: 2 %).',
      minimum: 0,
      maximum: 20,
    }),
    safetyExtra: percentField({ title: 'Safety extra on fabric', isSeldom: true, minimum: 0, maximum: 100 }),
    squareStep: squareStepField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type OuterBindingInput = z.infer<typeof outerBindingInput>;

/** A slit is cut with the hole, after the outside is bound, so it starts out as bound with the hole. */
export function outerBindingInputFromProject(measurements: Measurements): OuterBindingInput {
  const { settings } = measurements;
  return {
    outline: measurements.outline,
    hole: measurements.hole,
    hasSlit: measurements.hasSlit,
    slitBoundWith: 'hole',
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
    straightGrainGive: 2,
    safetyExtra: settings.safetyExtraPercent,
    squareStep: squareStepOfSettings(settings),
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
