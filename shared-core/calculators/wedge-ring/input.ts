import { z } from 'zod';
import {
  choiceField,
  flagField,
  lengthField,
  percentField,
  textField,
  withDefault,
} from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Hole, holeSchema } from '#core/domain/outline';
import { lengthFromInches } from '#core/units/length';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '../shared-fields';
import { ringFields, ringOfProject } from './ring-fields';

const bandSchema = z
  .object({
    fabric: textField({ title: 'Fabric', minimum: 1, maximum: 40 }),
    width: lengthField({ title: 'Finished width' }),
  })
  .readonly()
  .meta({ title: 'Band' });
type Band = z.infer<typeof bandSchema>;

/** Added after answers had been saved without them, so each has the value that leaves such an answer as it was. */
const laterFields = {
  edge: withDefault(
    choiceField(['straight', 'arcs'], {
      title: 'Edges of the wedges',
      help: 'Straight: a ring with corners, which may be trimmed round. Arcs: cut from a template, the ring is round at once.',
    }),
    'straight',
  ),
  bands: z
    .array(bandSchema)
    .max(12)
    .readonly()
    .default([])
    .meta({
      title: 'Bands across the wedges, from the inside out',
      description:
        'Strips sewn side by side before the wedges are cut. Their widths together are the height of a wedge.',
      examples: [{ fabric: 'Inner band', width: lengthFromInches(4) }],
    }) as unknown as z.ZodType<readonly Band[], readonly Band[]>,
  hole: holeSchema.nullable().default(null).nullable().meta({ title: 'Hole' }) as unknown as z.ZodType<
    Hole | null,
    Hole | null
  >,
};

export const wedgeRingInput = z
  .object({
    ...ringFields(),
    ...laterFields,
    isDirectional: flagField({
      title: 'Directional print',
      help: 'All wedges are cut the same way up, so that fewer come from a strip. With bands, all have them in the same order.',
    }),
    seamAllowance: seamField(),
    fabricWidth: fabricWidthField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
    safetyExtraPercent: percentField({ title: 'Safety extra on fabric', minimum: 0, maximum: 100 }),
  })
  .readonly();
export type WedgeRingInput = z.infer<typeof wedgeRingInput>;

export function wedgeRingFromProject(measurements: Measurements): WedgeRingInput {
  const { settings } = measurements;
  return {
    ...ringOfProject(measurements),
    edge: 'straight',
    bands: [],
    hole: measurements.hole,
    isDirectional: false,
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
    safetyExtraPercent: settings.safetyExtraPercent,
  };
}
