import { z } from 'zod';
import { choiceField, flagField, lengthField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { lengthFromInches } from '#core/units/length';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '../shared-fields';

const inches = lengthFromInches;

export const backingInput = z
  .object({
    outline: outlineSchema,
    overhang: lengthField({
      title: 'Overhang',
      help: 'How far backing and batting reach past the top on every side, for the frame and for shrinkage from quilting.',
      minimum: inches(0),
      maximum: inches(24),
    }),
    fabricWidth: fabricWidthField(),
    wideWidth: lengthField({
      title: 'Usable width of wide backing',
      help: 'Most wide backing is sold 108 in wide.',
      minimum: inches(4),
      maximum: inches(130),
    }),
    seam: seamField('On each panel where two are joined. Press these seams open.'),
    printRuns: choiceField(['any-way', 'up-the-fabric', 'across-the-fabric'], {
      title: 'Direction of the print',
      help: 'Up the fabric means parallel to the selvages. A one-way print is kept upright on the quilt.',
    }),
    mayJoinLast: flagField({
      title: 'Join the last panel from strips',
      help: 'Saves fabric when the last panel is narrow, but adds seams.',
    }),
    safetyExtraPercent: percentField({
      title: 'Safety extra',
      help: 'Added to the length before it is rounded up to what shops cut.',
      minimum: 0,
      maximum: 100,
    }),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();

export type BackingInput = z.infer<typeof backingInput>;

export function backingInputFromProject({ outline, settings }: Measurements): BackingInput {
  return {
    outline,
    overhang: settings.backingOverhang,
    fabricWidth: settings.fabricWidth,
    wideWidth: inches(108),
    seam: settings.backingSeam,
    printRuns: 'any-way',
    mayJoinLast: false,
    safetyExtraPercent: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
