import { z } from 'zod';
import { choiceField, lengthField, minorField, withDefault } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { priceLinesSchema } from '#core/domain/price-line';
import { LENGTH_ZERO, lengthFromInches } from '#core/units/length';
import {
  battingWeightField,
  fabricWeightField,
  packingField,
  seamExtraField,
  STARTING_WEIGHTS,
} from '../weight-fields';

const inches = lengthFromInches;
const most = 10_000_000;

/** Added after answers had been saved without them, so each has the value that leaves such an answer as it was. */
const laterFields = {
  seamAllowance: withDefault(
    lengthField({
      title: 'Seam allowance at the edge',
      help: 'The top is sent with it on every side: the binding takes it up later.',
      minimum: LENGTH_ZERO,
      maximum: inches(2),
    }),
    LENGTH_ZERO,
  ),
  trimming: withDefault(
    lengthField({
      title: 'Left to trim off after quilting',
      help: 'On every side, past the seam allowance. 0 if the edge is cut true before it is sent.',
      minimum: LENGTH_ZERO,
      maximum: inches(12),
    }),
    LENGTH_ZERO,
  ),
  roundsSides: withDefault(
    choiceField(['up', 'to-the-nearest', 'not-at-all'], {
      title: 'Each side is rounded',
      help: 'Ask your quilter. Up to the next inch is usual.',
    }),
    'up',
  ),
};

export const longarmPriceInput = z
  .object({
    outline: outlineSchema,
    ...laterFields,
    measureUpTo: lengthField({
      title: 'Round each side to',
      help: 'Each side of the rectangle around the top is rounded to a whole multiple of this.',
      minimum: inches(1 / 64),
      maximum: inches(12),
    }),
    rate: minorField({
      title: 'Longarm rate',
      unit: 'per square inch',
      minimum: 0,
      maximum: 10_000,
    }),
    minimum: minorField({
      title: 'Longarm minimum',
      help: 'The lowest price for the quilting itself.',
      minimum: 0,
      maximum: most,
    }),
    lines: priceLinesSchema,
    overhang: lengthField({
      title: 'Overhang',
      help: 'How far backing and batting reach past the top on every side.',
      minimum: inches(0),
      maximum: inches(24),
    }),
    fabricWeight: fabricWeightField(),
    battingWeight: battingWeightField(
      'Enter 0 if your quilter supplies it. Weigh a piece of a known size; 170 is usual for a cotton blend (from memory).',
    ),
    seamExtraPercent: seamExtraField(),
    packing: packingField(),
  })
  .readonly();

export type LongarmPriceInput = z.infer<typeof longarmPriceInput>;

const STARTING_LINES: LongarmPriceInput['lines'] = [
  { by: 'flat', name: 'Thread', amount: 0 },
  { by: 'area', name: 'Batting', rate: 0 },
  { by: 'area', name: 'Basting', rate: 0 },
  { by: 'percent', name: 'Rush', percent: 0, of: 'quilting' },
  { by: 'flat', name: 'Shipping', amount: 0 },
  { by: 'percent', name: 'Tax', percent: 0, of: 'everything-above' },
];

export function longarmPriceInputFromProject({ outline, settings }: Measurements): LongarmPriceInput {
  return {
    outline,
    seamAllowance: settings.seamAllowance,
    trimming: LENGTH_ZERO,
    roundsSides: 'up',
    measureUpTo: inches(1),
    rate: settings.longarmRateMinor,
    minimum: settings.longarmMinimumMinor,
    lines: STARTING_LINES,
    overhang: settings.backingOverhang,
    ...STARTING_WEIGHTS,
  };
}
