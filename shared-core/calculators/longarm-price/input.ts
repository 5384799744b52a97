import { z } from 'zod';
import { lengthField, minorField, numberField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { priceLinesSchema } from '#core/domain/price-line';
import { lengthFromInches } from '#core/units/length';

const inches = lengthFromInches;
const most = 10_000_000;

export const longarmPriceInput = z
  .object({
    outline: outlineSchema,
    measureUpTo: lengthField({
      title: 'Round each side up to',
      help: 'Each side of the rectangle around the quilt is rounded up to a whole multiple of this.',
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
    fabricWeight: numberField({
      title: 'Weight of the fabric',
      help: 'Weigh a piece of fabric of a known size. 145 is usual for quilting cotton (from memory).',
      unit: 'g per square meter',
      minimum: 10,
      maximum: 1_000,
    }),
    battingWeight: numberField({
      title: 'Weight of the batting',
      help: 'Enter 0 if your quilter supplies it. Weigh a piece of a known size; 170 is usual for a cotton blend (from memory).',
      unit: 'g per square meter',
      minimum: 0,
      maximum: 2_000,
    }),
    seamExtraPercent: percentField({
      title: 'Fabric in the seams of the top',
      help: 'A 3 in patch cut at 3 1/2 in takes 36% more fabric than you see; large patches take less. 25% is a guess to start from (from memory).',
      minimum: 0,
      maximum: 200,
    }),
    packing: numberField({ title: 'Box and packing', unit: 'g', minimum: 0, maximum: 20_000 }),
  })
  .readonly();

export type LongarmPriceInput = z.infer<typeof longarmPriceInput>;

const STARTING_LINES: LongarmPriceInput['lines'] = [
  { by: 'flat', name: 'Thread', amount: 0 },
  { by: 'area', name: 'Batting', rate: 0 },
  { by: 'area', name: 'Basting', rate: 0 },
  { by: 'percent', name: 'Rush', percent: 0 },
  { by: 'flat', name: 'Shipping', amount: 0 },
];

export function longarmPriceInputFromProject({ outline, settings }: Measurements): LongarmPriceInput {
  return {
    outline,
    measureUpTo: inches(1),
    rate: settings.longarmRateMinor,
    minimum: settings.longarmMinimumMinor,
    lines: STARTING_LINES,
    overhang: settings.backingOverhang,
    fabricWeight: 145,
    battingWeight: 170,
    seamExtraPercent: 25,
    packing: 300,
  };
}
