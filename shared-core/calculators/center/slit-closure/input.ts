import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { LENGTH_ZERO, lengthFromExact, lengthFromInches } from '#core/units/length';
import { holeOfProject } from '#core/calculators/curves/inner-binding/input';
import { outlineSlit } from '#core/calculators/outline/outline-measures';
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

const across = (title: string) => lengthField({ title, minimum: inches(1 / 8), maximum: inches(4) });
const thickness = lengthField({
  title: 'Thickness of a button',
  help: 'At its thickest.',
  minimum: inches(1 / 64),
  maximum: inches(2),
});

const ties = z
  .object({
    with: z.literal('ties'),
    tieWidth: lengthField({
      title: 'Width of a tie',
      help: 'Finished. The strip is four times as wide: folded to the middle, then in half.',
      minimum: inches(1 / 8),
      maximum: inches(3),
    }),
    tieLength: lengthField({
      title: 'Length of a tie',
      help: 'Finished. About 8 in (20 cm) makes a small bow, 10 to 12 in (25 to 30 cm) a full one (from memory).',
      minimum: inches(1),
      maximum: inches(60),
    }),
    endFold: lengthField({
      title: 'Folded in at its end',
      help: '0 if you knot the end instead.',
      minimum: LENGTH_ZERO,
      maximum: inches(2),
    }),
  })
  .readonly();

const loops = z
  .object({
    with: z.literal('buttons-and-loops'),
    buttonAcross: across('Button across'),
    buttonThickness: thickness,
    loopEase: lengthField({
      title: 'Ease of a loop',
      help: 'Added to the way around the button. Elastic needs none.',
      minimum: LENGTH_ZERO,
      maximum: inches(2),
    }),
  })
  .readonly();

const buttonholes = z
  .object({
    with: z.literal('buttons-and-buttonholes'),
    buttonAcross: across('Button across'),
    buttonThickness: thickness,
  })
  .readonly();

const snaps = z.object({ with: z.literal('snaps'), snapAcross: across('Snap across') }).readonly();

const TIES: z.infer<typeof ties> = {
  with: 'ties',
  tieWidth: inches(1 / 2),
  tieLength: inches(10),
  endFold: inches(1 / 2),
};
const BUTTON = { buttonAcross: inches(3 / 4), buttonThickness: inches(1 / 8) };

export const slitClosureInput = z
  .object({
    slit: lengthField({ title: 'Length of the slit', help: 'From the outer edge to the hole.' }),
    closing: z
      .discriminatedUnion('with', [
        ties.meta({ examples: [TIES] }),
        loops.meta({ examples: [{ ...BUTTON, loopEase: inches(1 / 8) }] }),
        buttonholes.meta({ examples: [BUTTON] }),
        snaps.meta({ examples: [{ snapAcross: inches(1 / 2) }] }),
      ])
      .meta({
        title: 'Closed with',
        description: 'Decide before the binding is turned: ties and loops are caught in its seam.',
      }),
    first: lengthField({
      title: 'From the outer edge to the first',
      help: 'To the middle of the first tie, button or snap.',
      minimum: LENGTH_ZERO,
    }),
    last: lengthField({ title: 'From the last to the hole', minimum: LENGTH_ZERO }),
    apart: lengthField({
      title: 'At most this far apart',
      help: 'They are spread evenly, no farther apart than this.',
      minimum: inches(1 / 2),
      maximum: inches(40),
    }),
    overlap: lengthField({
      title: 'Overlap',
      help: 'A flap sewn to one side lies this far under the other. 0 where the two sides only meet.',
      minimum: LENGTH_ZERO,
      maximum: inches(6),
    }),
    seamAllowance: seamField('Where ties, loops or the flap are caught in the binding.'),
    fabricWidth: fabricWidthField(),
    safetyExtra: safetyExtraField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type SlitClosureInput = z.infer<typeof slitClosureInput>;
export type Closing = SlitClosureInput['closing'];

/** The slit of the project, or the one that its hole would have. */
export function slitClosureFromProject(measurements: Measurements): SlitClosureInput {
  const { outline, settings } = measurements;
  const slit = Math.max(inches(1), outlineSlit(outline, { diameter: holeOfProject(measurements) }));
  const end = lengthFromExact(Math.min(inches(1), slit / 4), 'down', inches(1 / 8));
  return {
    slit: lengthFromExact(slit, 'nearest'),
    closing: TIES,
    first: end,
    last: end,
    apart: inches(6),
    overlap: LENGTH_ZERO,
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    safetyExtra: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
