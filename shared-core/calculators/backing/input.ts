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
      help: 'Beyond the top on every side, for the frame and for what the quilting draws in.',
      minimum: inches(0),
      maximum: inches(24),
    }),
    fabricWidth: fabricWidthField(),
    wideWidth: lengthField({
      title: 'Usable width of wide backing',
      help: 'Wide backing fabric is commonly sold 108 in wide.',
      minimum: inches(4),
      maximum: inches(130),
    }),
    seam: seamField('On each panel, where two are joined; pressed open.'),
    printRuns: choiceField(['any-way', 'up-the-fabric', 'across-the-fabric'], {
      title: 'The print runs',
      help: 'Up the fabric is parallel to the selvages. A print that runs one way is kept upright on the piece.',
    }),
    mayJoinLast: flagField({
      title: 'The last panel may be joined from strips',
      help: 'Saves fabric where it is narrow, for more seams.',
    }),
    safetyExtraPercent: percentField({
      title: 'Safety extra',
      help: 'Added to the length before it is rounded up to what the shop sells.',
      minimum: 0,
      maximum: 100,
    }),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();

export type BackingInput = z.infer<typeof backingInput>;

export function backingInputFromProject({ outline: piece, settings }: Measurements): BackingInput {
  return {
    outline: piece,
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
