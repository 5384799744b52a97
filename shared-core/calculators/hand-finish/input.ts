import { z } from 'zod';
import { flagField, lengthField, minorField, numberField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { seamField } from '../shared-fields';

const inches = lengthFromInches;

export const handFinishInput = z
  .object({
    outline: outlineSchema,
    hole: holeSchema.nullable().meta({ title: 'Hole' }),
    hasSlit: flagField({ title: 'A slit runs from the edge to the hole' }),
    seam: seamField('The seam that the binding was sewn on with.'),
    backCover: lengthField({
      title: 'Cover on the back',
      help: 'How far the fold reaches past the seam on the back. You sew it down there.',
      minimum: inches(0),
      maximum: inches(1),
    }),
    perHour: lengthField({
      title: 'Hand stitching in an hour',
      help: 'Your own speed. If you don’t know it yet, start with 50 in an hour: 50 to 90 in is common practice.',
      minimum: inches(1),
      maximum: inches(1_000),
    }),
    hourRate: minorField({ title: 'Your hourly rate', minimum: 0, maximum: 10_000_000 }),
    stitchLength: lengthField({
      title: 'From stitch to stitch',
      minimum: inches(1 / 32),
      maximum: inches(1),
    }),
    threadLength: lengthField({
      title: 'Length of thread in the needle',
      help: '18 to 24 in is common practice. Longer thread tangles and wears.',
      minimum: inches(6),
      maximum: inches(60),
    }),
    threadTail: lengthField({
      title: 'Thread lost to knots and tails',
      help: 'The knot, the tail at the needle and the end you run into the batting.',
      minimum: inches(0),
      maximum: inches(20),
    }),
    threadFactor: numberField({
      title: 'Thread per length of seam',
      help: 'Measure some of your own sewing: the thread it took divided by its length.',
      minimum: 1,
      maximum: 4,
    }),
  })
  .readonly()
  .refine(({ hasSlit, hole }) => !hasSlit || hole !== null, {
    path: ['hasSlit'],
    message: 'no slit without a hole: a slit runs from the edge to a hole',
  });

export type HandFinishInput = z.infer<typeof handFinishInput>;

export function handFinishInputFromProject(measurements: Measurements): HandFinishInput {
  const { settings } = measurements;
  const isInch = settings.unitSystem === 'inch';
  return {
    outline: measurements.outline,
    hole: measurements.hole,
    hasSlit: measurements.hasSlit && measurements.hole !== null,
    seam: settings.seamAllowance,
    backCover: settings.backCover,
    perHour: settings.handStitchPerHour,
    hourRate: settings.hourRateMinor,
    stitchLength: isInch ? inches(1 / 8) : lengthFromMillimeters(3),
    threadLength: isInch ? inches(18) : lengthFromMillimeters(450),
    threadTail: isInch ? inches(5) : lengthFromMillimeters(130),
    threadFactor: 1.4,
  };
}
