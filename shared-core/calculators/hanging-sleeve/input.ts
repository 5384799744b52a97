import { z } from 'zod';
import { countField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromUnits } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { outlineBounds, outlineTightestRadius } from '../outline/outline-measures';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  safetyExtraField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '../shared-fields';

const inches = lengthFromInches;
const NOTHING = lengthFromUnits(0);

export const hangingSleeveInput = z
  .object({
    outline: outlineSchema,
    depth: lengthField({
      title: 'Depth of the sleeve',
      help: 'Flat and finished. Shows ask for 4 in; 3 in is enough on a quilt under 30 in wide, 2 in on a miniature.',
      minimum: inches(1 / 2),
      maximum: inches(12),
    }),
    ease: lengthField({
      title: 'Ease for the rod',
      help: 'How much more fabric is in front of the rod than behind it, so that the rod doesn’t push the quilt out.',
      minimum: NOTHING,
      maximum: inches(4),
    }),
    down: lengthField({
      title: 'Below the top edge',
      help: 'From the middle of the top edge to the top of the sleeve. On a round quilt: lower, where it is wide enough.',
      minimum: NOTHING,
    }),
    sideGap: lengthField({
      title: 'Gap at each side',
      help: 'From the edge of the quilt to the end of the sleeve, at the height of its top.',
      minimum: NOTHING,
      maximum: inches(60),
    }),
    sleeves: countField({
      title: 'Sleeves side by side',
      help: 'Two on a quilt over 90 in wide, so that the rod can be held in the middle too.',
      minimum: 1,
      maximum: 4,
    }),
    gap: lengthField({
      title: 'Gap between sleeves',
      help: 'Room for the hook that holds the rod.',
      minimum: NOTHING,
      maximum: inches(20),
    }),
    hem: lengthField({
      title: 'Hem at each end',
      help: 'All that is turned under: 1/4 in twice is 1/2 in.',
      minimum: NOTHING,
      maximum: inches(4),
    }),
    rodExtra: lengthField({
      title: 'Rod longer than the sleeve by',
      minimum: NOTHING,
      maximum: inches(40),
    }),
    seamAllowance: seamField('Of the seam along the tube.'),
    fabricWidth: fabricWidthField(),
    safetyExtra: safetyExtraField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type HangingSleeveInput = z.infer<typeof hangingSleeveInput>;

const MINIATURE = inches(12);
const NARROW = inches(30);
export const WIDE = inches(90);

/** On a curved edge the sleeve starts a quarter of the way down, where a circle is 87% as wide as in its middle. */
export function hangingSleeveFromProject({ outline, settings }: Measurements): HangingSleeveInput {
  const { width, length } = outlineBounds(outline);
  const isCurve = outlineTightestRadius(outline) !== null && outline.shape !== 'rounded';
  const step = cutStepOfSettings(settings);
  const usualDown = Math.min(inches(1), length / 12);
  return {
    outline,
    depth: width < MINIATURE ? inches(2) : width < NARROW ? inches(3) : inches(4),
    ease: inches(1 / 2),
    down: lengthFromUnits(roundDownTo(isCurve ? length / 4 : usualDown, step)),
    sideGap: lengthFromUnits(roundDownTo(Math.min(inches(1), width / 12), step)),
    sleeves: width > WIDE ? 2 : 1,
    gap: inches(1),
    hem: inches(1 / 2),
    rodExtra: lengthFromUnits(roundDownTo(Math.min(inches(1), width / 12), step)),
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    safetyExtra: settings.safetyExtraPercent,
    cutStep: step,
    yardageStep: yardageStepOfSettings(settings),
  };
}
