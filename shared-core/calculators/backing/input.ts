import { z } from 'zod';
import { choiceField, flagField, lengthField, percentField, withDefault } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Hole, holeSchema, outlineSchema } from '#core/domain/outline';
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

/** Added after answers had been saved without them, so each has the value that leaves such an answer as it was. */
const laterFields = {
  hole: holeSchema.nullable().default(null).nullable().meta({ title: 'Hole' }) as unknown as z.ZodType<
    Hole | null,
    Hole | null
  >,
  hasSlit: withDefault(flagField({ title: 'A slit runs from the edge to the hole' }), false),
  holeClearance: withDefault(
    lengthField({
      title: 'Keep seams away from the hole by',
      help: 'Measured from the edge of the hole. A seam in the binding of a hole makes a lump.',
      minimum: inches(0),
      maximum: inches(24),
    }),
    inches(1),
  ),
  noMiddleSeam: withDefault(
    flagField({
      title: 'No seam down the middle',
      help: 'A whole panel lies in the middle, with an equal panel on each side. It takes more seams.',
    }),
    false,
  ),
  printRepeat: withDefault(
    lengthField({
      title: 'Print repeat to match',
      help: 'Along the fabric, from one figure to the next one like it. 0 if the print need not match at the seams.',
      minimum: inches(0),
      maximum: inches(60),
    }),
    inches(0),
  ),
};

export const backingInput = z
  .object({
    outline: outlineSchema,
    overhang: lengthField({
      title: 'Overhang',
      help: 'How far backing and batting reach past the top on every side, for the frame and for shrinkage from quilting. Ask your quilter: most want 3 to 6 in on each side.',
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
    ...laterFields,
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

export function backingInputFromProject(measurements: Measurements): BackingInput {
  const { outline, hole, hasSlit, settings } = measurements;
  return {
    outline,
    overhang: settings.backingOverhang,
    fabricWidth: settings.fabricWidth,
    wideWidth: inches(108),
    seam: settings.backingSeam,
    printRuns: 'any-way',
    mayJoinLast: false,
    hole,
    hasSlit: hasSlit && hole !== null,
    holeClearance: inches(1),
    noMiddleSeam: false,
    printRepeat: inches(0),
    safetyExtraPercent: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
