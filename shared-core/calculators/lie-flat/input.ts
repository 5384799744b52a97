import { z } from 'zod';
import { lengthField, numberField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { LENGTH_ZERO, lengthFromInches, lengthFromMeters } from '#core/units/length';
import { seamField } from '../shared-fields';
import { ringFields, ringOfProject } from '../wedge-ring/ring-fields';

const inches = lengthFromInches;

const cutRight = z
  .object({ known: z.literal('right').meta({ title: 'Cut as they should be' }) })
  .readonly()
  .meta({ title: 'Cut as they should be', examples: [{ known: 'right' }] });

const cutByAngle = z
  .object({
    known: z.literal('angle').meta({ title: 'By the angle of the ruler' }),
    angle: numberField({ title: 'Angle of a wedge', unit: 'degrees', minimum: 1, maximum: 120 }),
  })
  .readonly()
  .meta({ title: 'By the angle of the ruler', examples: [{ known: 'angle', angle: 18 }] });

function side(title: string) {
  return lengthField({ title, minimum: inches(1 / 8), maximum: lengthFromMeters(3) });
}

const cutBySides = z
  .object({
    known: z.literal('sides').meta({ title: 'By a cut wedge that you measured' }),
    long: side('Long side, cut'),
    short: side('Short side, cut'),
    height: side('Height, cut'),
  })
  .readonly()
  .meta({
    title: 'By a cut wedge that you measured',
    examples: [{ known: 'sides', long: inches(10.5), short: inches(1.625), height: inches(22.5) }],
  });

function seamAsSewn(where: string) {
  return lengthField({
    title: `Seam as sewn, at the ${where} end`,
    help: 'On one piece of fabric, from the cut edge to the stitching. Measure several seams and enter what most of them have.',
    minimum: inches(1 / 64),
    maximum: inches(3),
  });
}

function off(title: string) {
  return lengthField({
    title,
    help: 'At the outer end of the second leg, square to the line.',
    minimum: LENGTH_ZERO,
    maximum: lengthFromMeters(1),
  });
}

const notTested = z
  .object({ found: z.literal('not-yet').meta({ title: 'Not tested yet' }) })
  .readonly()
  .meta({ title: 'Not tested yet', examples: [{ found: 'not-yet' }] });

const gapFound = z
  .object({
    found: z.literal('gap').meta({ title: 'A gap, or none' }),
    off: off('Gap between the leg and the line'),
  })
  .readonly()
  .meta({ title: 'A gap, or none', examples: [{ found: 'gap', off: LENGTH_ZERO }] });

const overlapFound = z
  .object({
    found: z.literal('overlap').meta({ title: 'It reaches over the line' }),
    off: off('How far the leg reaches over the line'),
  })
  .readonly()
  .meta({ title: 'It reaches over the line', examples: [{ found: 'overlap', off: inches(1 / 8) }] });

export const lieFlatInput = z
  .object({
    ...ringFields(),
    seamAllowance: seamField('The seam that the wedges are cut for.'),
    seamInner: seamAsSewn('inner'),
    seamOuter: seamAsSewn('outer'),
    cutWedge: z
      .discriminatedUnion('known', [cutRight, cutByAngle, cutBySides])
      .meta({ title: 'The wedges as cut' }),
    halfRing: z.discriminatedUnion('found', [notTested, gapFound, overlapFound]).meta({
      title: 'Test of a half ring',
      description: 'One open leg lies along a straight line. Where is the other one?',
    }),
    fullness: percentField({
      title: 'Fullness that quilting takes up',
      help: 'Practice is split: some quilters ease in an inch on a small quilt, others want none. 0.5% is 1/8 in in 25 in, a careful start (from memory).',
      minimum: 0.01,
      maximum: 5,
    }),
  })
  .readonly();
export type LieFlatInput = z.infer<typeof lieFlatInput>;

/** The project's ring, sewn and cut right, and not tested yet. */
export function lieFlatFromProject(measurements: Measurements): LieFlatInput {
  const seam = measurements.settings.seamAllowance;
  return {
    ...ringOfProject(measurements),
    seamAllowance: seam,
    seamInner: seam,
    seamOuter: seam,
    cutWedge: { known: 'right' },
    halfRing: { found: 'not-yet' },
    fullness: 0.5,
  };
}
