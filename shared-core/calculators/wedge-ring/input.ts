import { z } from 'zod';
import { countField, flagField, lengthField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  type Length,
  lengthFromExact,
  lengthFromInches,
  lengthFromMeters,
  lengthMaximum,
} from '#core/units/length';
import { outlineBounds } from '../outline/outline-measures';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '../shared-fields';

const [NARROWEST, WIDEST] = [lengthFromInches(1 / 8), lengthFromMeters(3)];

export const wedgeRingInput = z
  .object({
    wedges: countField({ title: 'Wedges in the ring', minimum: 4, maximum: 120 }),
    innerRadius: lengthField({
      title: 'From the middle to the inner edge',
      help: 'Finished, at the middle of a wedge. A round hole cut later is larger than the opening left by the wedges.',
      minimum: NARROWEST,
      maximum: WIDEST,
    }),
    outerRadius: lengthField({
      title: 'From the middle to the outer edge',
      help: 'Finished, at the middle of a wedge: half of the ring from side to side.',
      minimum: NARROWEST,
      maximum: WIDEST,
    }),
    isDirectional: flagField({
      title: 'Directional print',
      help: 'All wedges are cut the same way up, so that fewer come from a strip.',
    }),
    seamAllowance: seamField(),
    fabricWidth: fabricWidthField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
    safetyExtraPercent: percentField({ title: 'Safety extra on fabric', minimum: 0, maximum: 100 }),
  })
  .readonly();
export type WedgeRingInput = z.infer<typeof wedgeRingInput>;

const STARTING_WEDGES = 16;

/** Starts with sixteen wedges that reach the shorter side of the outline and leave an opening just inside the hole. */
export function wedgeRingFromProject({ outline, hole, settings }: Measurements): WedgeRingInput {
  const { width, length } = outlineBounds(outline);
  const toPoint = hole === null ? lengthFromInches(3) : hole.diameter / 2;
  return {
    wedges: STARTING_WEDGES,
    innerRadius: withinLimits(toPoint * Math.cos(Math.PI / STARTING_WEDGES), cutStepOfSettings(settings)),
    outerRadius: withinLimits(Math.min(width, length) / 2),
    isDirectional: false,
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
    safetyExtraPercent: settings.safetyExtraPercent,
  };
}

/** Down to a whole step, so that the field shows a size that can be measured. */
function withinLimits(exact: number, step = 1): Length {
  const stepped = lengthFromExact(Math.min(WIDEST, Math.max(0, exact)), 'down', step);
  return lengthMaximum(NARROWEST, stepped);
}
