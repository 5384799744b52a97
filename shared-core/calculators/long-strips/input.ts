import { z } from 'zod';
import { choiceField, countField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Length, lengthFromInches, lengthFromMillimeters, lengthFromUnits } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { joinField } from '../binding/binding-fields';
import { outlineBounds } from '../outline/outline-measures';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  safetyExtraField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '../shared-fields';

const inches = lengthFromInches;

const borderAround = z
  .object({
    of: z.literal('border').meta({ title: 'A border around a top' }),
    topWidth: lengthField({ title: 'Top width', help: 'Finished, without this border.' }),
    topLength: lengthField({ title: 'Top length', help: 'Finished, without this border.' }),
    corners: choiceField(['butted', 'cornerstones', 'mitered'], {
      title: 'Corners',
      help: 'Butted: sides first, then top and bottom across their ends. Cornerstones: a square in each corner.',
    }),
  })
  .readonly()
  .meta({
    title: 'A border around a top',
    examples: [{ of: 'border', topWidth: inches(40), topLength: inches(50), corners: 'butted' }],
  });

const stripsOfOneLength = z
  .object({
    length: lengthField({ title: 'Length', help: 'Finished.' }),
    count: countField({ title: 'How many', minimum: 1, maximum: 60 }),
  })
  .readonly()
  .meta({ title: 'Strips' });

const stripsListed = z
  .object({
    of: z.literal('strips').meta({ title: 'Sashing or other strips' }),
    list: z
      .array(stripsOfOneLength)
      .min(1)
      .max(12)
      .readonly()
      .meta({ title: 'Strips', examples: [{ length: inches(45), count: 1 }] }),
  })
  .readonly()
  .meta({
    title: 'Sashing or other strips',
    examples: [{ of: 'strips', list: [{ length: inches(45), count: 4 }] }],
  });

export const longStripsInput = z
  .object({
    strips: z.discriminatedUnion('of', [borderAround, stripsListed]).meta({ title: 'What they are for' }),
    stripWidth: lengthField({
      title: 'Finished width',
      help: 'Of the border or sashing.',
      maximum: inches(40),
    }),
    way: choiceField(['along', 'across'], {
      title: 'Cut them',
      help: 'Along the fabric, beside the selvage: no joins and little stretch. Across it: less fabric where strips are long, but joined.',
    }),
    extraLength: lengthField({
      title: 'Extra length of each strip',
      help: 'Cut to width now, and to length once the top is measured. 2 in is common practice.',
      minimum: lengthFromUnits(0),
      maximum: inches(24),
    }),
    seamAllowance: seamField(),
    join: joinField(),
    fabricWidth: fabricWidthField(),
    safetyExtra: safetyExtraField(),
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type LongStripsInput = z.infer<typeof longStripsInput>;

/** Starts with a border that brings the top to the finished size of the project: 4 in or 10 cm wide, less on a small one. */
export function longStripsFromProject({ outline, settings }: Measurements): LongStripsInput {
  const isInch = settings.unitSystem === 'inch';
  const { width, length } = outlineBounds(outline);
  const usual = isInch ? inches(4) : lengthFromMillimeters(100);
  const border = atLeastLeast(Math.min(usual, roundDownTo(Math.min(width, length) / 8, 1)));
  const within = (side: number) => atLeastLeast(roundDownTo(side, 1) - 2 * border);
  return {
    strips: { of: 'border', topWidth: within(width), topLength: within(length), corners: 'butted' },
    stripWidth: border,
    way: 'along',
    extraLength: isInch ? inches(2) : lengthFromMillimeters(50),
    seamAllowance: settings.seamAllowance,
    join: 'diagonal',
    fabricWidth: settings.fabricWidth,
    safetyExtra: settings.safetyExtraPercent,
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
  };
}

/** The shortest length a field takes. */
function atLeastLeast(units: number): Length {
  return lengthFromUnits(Math.min(lengthFromMillimeters(10_000), Math.max(inches(1 / 64), units)));
}
