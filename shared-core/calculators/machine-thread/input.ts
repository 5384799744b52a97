import { z } from 'zod';
import { lengthField, numberField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  lengthFromMillimeters,
  lengthFromUnits,
  lengthFromMeters,
  UNITS_PER_METER,
  lengthFromInches,
  lengthFromExact,
} from '#core/units/length';
import { outlinePerimeter } from '../outline/outline-measures';

export const machineThreadInput = z
  .object({
    seamLength: lengthField({
      title: 'Length of seam',
      help: 'All that is sewn with this thread. It starts as the binding sewn on once round.',
      minimum: lengthFromInches(1),
      maximum: lengthFromMeters(150),
    }),
    factor: numberField({
      title: 'Thread for one length of seam',
      help: 'Needle and bobbin together; 2.5 for a lockstitch.',
      minimum: 2,
      maximum: 4,
    }),
    wastePercent: percentField({ title: 'Waste', help: 'Starts, ends and snips.', minimum: 0, maximum: 50 }),
    stitchLength: lengthField({
      title: 'Stitch length',
      help: '2 to 2.5 mm is common practice for piecing and for a ring.',
      minimum: lengthFromMillimeters(0.5),
      maximum: lengthFromMillimeters(8),
    }),
    thickness: lengthField({
      title: 'Thickness of the seam',
      help: 'Of all layers pressed together; it matters for the second figure only.',
      minimum: lengthFromMillimeters(0.1),
      maximum: lengthFromMillimeters(10),
    }),
    bobbinHolds: lengthField({
      title: 'One bobbin holds',
      help: 'Wind one, unwind it, measure it. 55 m is a usual amount of piecing thread (from memory).',
      minimum: lengthFromMillimeters(1_000),
      maximum: lengthFromMeters(500),
    }),
  })
  .readonly();

export type MachineThreadInput = z.infer<typeof machineThreadInput>;

export function machineThreadInputFromProject({ outline, settings }: Measurements): MachineThreadInput {
  const most = 150 * UNITS_PER_METER;
  return {
    seamLength: lengthFromExact(
      Math.max(lengthFromInches(1), Math.min(most, outlinePerimeter(outline))),
      'up',
    ),
    factor: 2.5,
    wastePercent: 15,
    stitchLength: lengthFromMillimeters(2.5),
    thickness: lengthFromUnits(
      Math.max(lengthFromMillimeters(0.1), Math.min(lengthFromMillimeters(10), settings.quiltThickness)),
    ),
    bobbinHolds: lengthFromMeters(55),
  };
}
