import { z } from 'zod';
import { flagField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '../shared-fields';
import { ringFields, ringOfProject } from './ring-fields';

export const wedgeRingInput = z
  .object({
    ...ringFields(),
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

export function wedgeRingFromProject(measurements: Measurements): WedgeRingInput {
  const { settings } = measurements;
  return {
    ...ringOfProject(measurements),
    isDirectional: false,
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
    safetyExtraPercent: settings.safetyExtraPercent,
  };
}
