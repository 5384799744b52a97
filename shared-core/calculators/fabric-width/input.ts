import { z } from 'zod';
import { flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { lengthFromInches, lengthFromMeters } from '#core/units/length';
import { yardageStepField, yardageStepOfSettings } from '../shared-fields';

const inches = lengthFromInches;
const widthField = (title: string) => lengthField({ title, minimum: inches(4), maximum: inches(130) });

export const fabricWidthInput = z
  .object({
    length: lengthField({
      title: 'Fabric the pattern asks for',
      minimum: inches(1),
      maximum: lengthFromMeters(100),
    }),
    fromWidth: widthField('Width the pattern asks for'),
    toWidth: widthField('Width of the fabric you have'),
    isOneWay: flagField({
      title: 'One-way print or nap',
      help: 'Adds a quarter of a yard, as the published chart advises.',
    }),
    yardageStep: yardageStepField(),
  })
  .readonly();

export type FabricWidthInput = z.infer<typeof fabricWidthInput>;

export function fabricWidthInputFromProject({ settings }: Measurements): FabricWidthInput {
  return {
    length: inches(72),
    fromWidth: inches(44),
    toWidth: inches(60),
    isOneWay: false,
    yardageStep: yardageStepOfSettings(settings),
  };
}
