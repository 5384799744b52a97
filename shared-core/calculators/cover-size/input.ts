import { z } from 'zod';
import { choiceField, lengthField, percentField, withDefault } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { LENGTH_ZERO, lengthFromInches, lengthFromMeters, lengthFromMillimeters } from '#core/units/length';
import { outlineSchema } from '#core/domain/outline';
import { cutStepField, cutStepOfSettings } from '../shared-fields';

const inches = lengthFromInches;
const side = (title: string, help?: string) =>
  lengthField({
    title,
    ...(help === undefined ? {} : { help }),
    minimum: inches(4),
    maximum: lengthFromMeters(4),
  });

const roundTop = z
  .object({ over: z.literal('round').meta({ title: 'A round table or stand' }), diameter: side('Across') })
  .readonly()
  .meta({ title: 'A round table or stand', examples: [{ over: 'round', diameter: inches(48) }] });

const rectangularTop = z
  .object({
    over: z.literal('rectangle').meta({ title: 'A rectangular table' }),
    width: side('Width'),
    length: side('Length'),
  })
  .readonly()
  .meta({
    title: 'A rectangular table',
    examples: [{ over: 'rectangle', width: inches(36), length: inches(60) }],
  });

const bed = z
  .object({
    over: z.literal('bed').meta({ title: 'A bed' }),
    width: side('Width of the mattress', 'Measure yours: lists differ by an inch and more.'),
    length: side('Length of the mattress'),
    footDrop: drop('Hangs down at the foot'),
    pillowFold: drop(
      'For the pillows',
      'Tucked under and over the pillows. 10 to 12 in is common practice; 0 without.',
    ),
  })
  .readonly()
  .meta({
    title: 'A bed',
    examples: [
      { over: 'bed', width: inches(60), length: inches(80), footDrop: inches(12), pillowFold: LENGTH_ZERO },
    ],
  });

function drop(title: string, help?: string) {
  return lengthField({
    title,
    ...(help === undefined ? {} : { help }),
    minimum: LENGTH_ZERO,
    maximum: lengthFromMeters(2),
  });
}

const shrinkage = (title: string) => percentField({ title, isSeldom: true, minimum: 0, maximum: 30 });

export const coverSizeInput = z
  .object({
    outline: outlineSchema,
    over: z.discriminatedUnion('over', [roundTop, rectangularTop, bed]).nullable().meta({
      title: 'It goes over',
      description: 'Once you say what, you can make the size that comes out the size of the project.',
    }),
    drop: drop('Hangs down at the sides', 'From the top of the table or mattress. All around, at a table.'),
    acrossPercent: shrinkage('Shrinks across in the first wash'),
    alongPercent: shrinkage('Shrinks along in the first wash'),
    /** Added after answers had been saved without it. */
    quiltingPercent: withDefault(
      percentField({
        title: 'Shrinkage from quilting',
        help: 'Of the top. 2 to 4% is common practice.',
        isSeldom: true,
        minimum: 0,
        maximum: 30,
      }),
      0,
    ),
    mattresses: choiceField(['inch', 'metric'], {
      title: 'Mattress sizes in the table',
      help: 'Inch: as sold in the United States. Metric: common in Europe.',
    }),
    cutStep: cutStepField(),
  })
  .readonly();
export type CoverSizeInput = z.infer<typeof coverSizeInput>;

export function coverSizeFromProject({ outline, settings }: Measurements): CoverSizeInput {
  const isInch = settings.unitSystem === 'inch';
  return {
    outline,
    over: null,
    drop: isInch ? inches(12) : lengthFromMillimeters(300),
    acrossPercent: settings.washAcrossPercent,
    alongPercent: settings.washAlongPercent,
    quiltingPercent: 3,
    mattresses: settings.unitSystem,
    cutStep: cutStepOfSettings(settings),
  };
}
