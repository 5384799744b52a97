import { z } from 'zod';
import { choiceField, lengthField, numberField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { lengthFromExact, lengthFromInches, lengthFromMeters, lengthFromUnits } from '#core/units/length';
import { outlineBounds } from '#core/calculators/outline/outline-measures';
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
const NOTHING = lengthFromUnits(0);

const gathers = z
  .object({
    style: z.literal('gathers').meta({ title: 'Gathers' }),
    fullness: numberField({
      title: 'Fullness',
      help: 'Length of the flat strip for each length of edge. 1.5 to 3 is common practice; 2 is usual.',
      minimum: 1,
      maximum: 6,
    }),
  })
  .readonly()
  .meta({ title: 'Gathers', examples: [{ style: 'gathers', fullness: 2 }] });

const pleatFields = {
  depth: lengthField({
    title: 'Depth of a pleat',
    help: 'From its outer fold to its inner one.',
    minimum: inches(1 / 8),
    maximum: inches(12),
  }),
  spacing: lengthField({
    title: 'From pleat to pleat, at most',
    help: 'On the finished edge. A whole number of pleats is spread evenly.',
    minimum: inches(1 / 4),
    maximum: inches(40),
  }),
};

const knifePleats = z
  .object({ style: z.literal('knife-pleats').meta({ title: 'Knife pleats' }), ...pleatFields })
  .readonly()
  .meta({
    title: 'Knife pleats',
    examples: [{ style: 'knife-pleats', depth: inches(3 / 4), spacing: inches(1.5) }],
  });

const boxPleats = z
  .object({ style: z.literal('box-pleats').meta({ title: 'Box pleats' }), ...pleatFields })
  .readonly()
  .meta({
    title: 'Box pleats',
    examples: [{ style: 'box-pleats', depth: inches(3 / 4), spacing: inches(3) }],
  });

export const ruffleInput = z
  .object({
    outline: outlineSchema,
    around: choiceField(['all-around', 'one-edge'], { title: 'Where' }),
    oneEdge: lengthField({ title: 'Length of the one edge', help: 'Where it does not go all around.' }),
    ruffle: z
      .discriminatedUnion('style', [gathers, knifePleats, boxPleats])
      .meta({ title: 'Gathers or pleats' }),
    width: lengthField({
      title: 'Finished width',
      help: 'From the seam to its free edge.',
      minimum: inches(1 / 2),
      maximum: inches(20),
    }),
    layers: choiceField(['folded', 'hemmed'], {
      title: 'Free edge',
      help: 'Folded: two layers, with a fold at the free edge. Hemmed: one layer.',
    }),
    hem: lengthField({
      title: 'Hem',
      help: 'All that is turned under, at the free edge of a single layer and at each end of one that does not go all around.',
      minimum: NOTHING,
      maximum: inches(4),
    }),
    seamAllowance: seamField(),
    fabricWidth: fabricWidthField(),
    safetyExtra: safetyExtraField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type RuffleInput = z.infer<typeof ruffleInput>;

export function ruffleFromProject({ outline, settings }: Measurements): RuffleInput {
  const widest = Math.min(lengthFromMeters(10), Math.max(inches(1 / 64), outlineBounds(outline).width));
  return {
    outline,
    around: 'all-around',
    oneEdge: lengthFromExact(widest, 'down'),
    ruffle: { style: 'gathers', fullness: 2 },
    width: inches(3),
    layers: 'folded',
    hem: inches(1 / 2),
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    safetyExtra: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}
