import { z } from 'zod';
import { flagField, lengthField, minorField, numberField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { holeSchema, outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromUnits } from '#core/units/length';
import { seamField } from '../shared-fields';

const inches = lengthFromInches;

export const handFinishInput = z
  .object({
    outline: outlineSchema,
    hole: holeSchema.nullable().meta({ title: 'Hole' }),
    hasSlit: flagField({ title: 'A slit runs from the edge to the hole' }),
    seam: seamField('With which the binding was sewn on.'),
    backCover: lengthField({
      title: 'Cover on the back',
      help: 'How far the fold passes the seam on the back; there it is sewn down.',
      minimum: inches(0),
      maximum: inches(1),
    }),
    perHour: lengthField({
      title: 'Hand stitching in an hour',
      help: 'Your own rate; 50 in an hour is common practice to start from.',
      minimum: inches(1),
      maximum: inches(1_000),
    }),
    hourRate: minorField({ title: 'Your hour', minimum: 0, maximum: 10_000_000 }),
    stitchLength: lengthField({
      title: 'From stitch to stitch',
      minimum: inches(1 / 32),
      maximum: inches(1),
    }),
    threadLength: lengthField({
      title: 'Length of thread in the needle',
      help: '18 to 24 in is common practice; longer thread tangles and wears.',
      minimum: inches(6),
      maximum: inches(60),
    }),
    threadTail: lengthField({
      title: 'Of it, not sewn with',
      help: 'Knot, tail in the needle and the end that is run into the batting.',
      minimum: inches(0),
      maximum: inches(20),
    }),
    threadFactor: numberField({
      title: 'Thread for one length of seam',
      help: 'Measure a length of your own: how much thread it took, over how long it is.',
      minimum: 1,
      maximum: 4,
    }),
  })
  .readonly()
  .refine(({ hasSlit, hole: cut }) => !hasSlit || cut !== null, {
    path: ['hasSlit'],
    message: 'no slit where there is no hole: a slit runs from the edge to a hole',
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
    stitchLength: isInch ? inches(1 / 8) : lengthFromUnits(3 * 320),
    threadLength: isInch ? inches(18) : lengthFromUnits(450 * 320),
    threadTail: isInch ? inches(5) : lengthFromUnits(130 * 320),
    threadFactor: 1.4,
  };
}
