import { z } from 'zod';
import { lengthField, numberField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  type Length,
  lengthFromExact,
  lengthFromInches,
  lengthFromMeters,
  lengthFromMillimeters,
  lengthMaximum,
  lengthMinimum,
} from '#core/units/length';
import { outlinePerimeter } from '../outline/outline-measures';

const SEAM: Limits = { minimum: lengthFromInches(1), maximum: lengthFromMeters(150) };
const THICKNESS: Limits = { minimum: lengthFromMillimeters(0.1), maximum: lengthFromMillimeters(10) };

/** How a machine takes thread, for every calculator that asks. */
export const threadFields = (thicknessHelp: string) => ({
  factor: numberField({
    title: 'Thread per length of seam',
    help: 'Needle and bobbin together. 2.5 for a lockstitch.',
    minimum: 2,
    maximum: 8,
  }),
  wastePercent: percentField({
    title: 'Waste',
    help: 'Thread tails at the start and end of seams.',
    minimum: 0,
    maximum: 50,
  }),
  stitchLength: lengthField({
    title: 'Stitch length',
    help: '2 to 2.5 mm is common practice for piecing and for a ring.',
    minimum: lengthFromMillimeters(0.5),
    maximum: lengthFromMillimeters(8),
  }),
  thickness: lengthField({ title: 'Thickness of the seam', help: thicknessHelp, ...THICKNESS }),
  bobbinHolds: lengthField({
    title: 'One bobbin holds',
    help: 'Wind one, unwind it and measure it. 60 yd or 55 m of piecing thread is usual (from memory).',
    minimum: lengthFromMillimeters(1_000),
    maximum: lengthFromMeters(500),
  }),
});

export const machineThreadInput = z
  .object({
    seamLength: lengthField({
      title: 'Length of seam',
      help: 'Everything you sew with this thread. It starts with the binding, sewn on once around.',
      ...SEAM,
    }),
    ...threadFields('All layers pressed together. Only the second method uses it.'),
  })
  .readonly();

export type MachineThreadInput = z.infer<typeof machineThreadInput>;

export function machineThreadInputFromProject({ outline, settings }: Measurements): MachineThreadInput {
  return {
    seamLength: within(SEAM, lengthFromExact(outlinePerimeter(outline), 'up')),
    factor: 2.5,
    wastePercent: 15,
    stitchLength: lengthFromMillimeters(2.5),
    thickness: within(THICKNESS, settings.quiltThickness),
    bobbinHolds: settings.unitSystem === 'inch' ? lengthFromInches(60 * 36) : lengthFromMeters(55),
  };
}

interface Limits {
  readonly minimum: Length;
  readonly maximum: Length;
}

/** The length, or the nearest that the field allows. */
function within({ minimum, maximum }: Limits, length: Length): Length {
  return lengthMaximum(minimum, lengthMinimum(maximum, length));
}
