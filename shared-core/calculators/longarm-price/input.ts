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
      title: 'Sides are measured up to',
      help: 'Each side of the bounding rectangle is billed up to a whole multiple of this.',
      minimum: inches(1 / 64),
      maximum: inches(12),
    }),
    rate: minorField({
      title: 'Longarm rate',
      help: 'Per square inch.',
      unit: 'a square inch',
      minimum: 0,
      maximum: 10_000,
    }),
    minimum: minorField({
      title: 'Longarm minimum',
      help: 'Least price of the quilting itself.',
      minimum: 0,
      maximum: most,
    }),
    lines: priceLinesSchema,
    overhang: lengthField({
      title: 'Overhang',
      help: 'Of backing and batting on every side.',
      minimum: inches(0),
      maximum: inches(24),
    }),
    fabricWeight: numberField({
      title: 'Weight of the fabric',
      help: 'Weigh a piece you have measured; 145 is usual for quilting cotton (from memory).',
      unit: 'g a square meter',
      minimum: 10,
      maximum: 1_000,
    }),
    battingWeight: numberField({
      title: 'Weight of the batting',
      help: 'Nothing where the quilter has it. Weigh a piece you have measured; 170 is usual for a cotton blend (from memory).',
      unit: 'g a square meter',
      minimum: 0,
      maximum: 2_000,
    }),
    seamExtraPercent: percentField({
      title: 'Fabric in the seams of the top',
      help: 'A 3 in patch cut at 3 1/2 in takes 36 % more fabric than is seen; large patches less.',
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
  { by: 'flat', name: 'Freight', amount: 0 },
];

export function longarmPriceInputFromProject({ outline: piece, settings }: Measurements): LongarmPriceInput {
  return {
    outline: piece,
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
