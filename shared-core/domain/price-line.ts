import { z } from 'zod';
import { choiceField, minorField, percentField, textField, withDefault } from './fields';

const name = textField({ title: 'Line', minimum: 1, maximum: 60 });

/** A charge besides the quilting: a flat amount, by area, by length of edge, or a percentage of the quilting or of all lines above. */
const priceLineSchema = z.discriminatedUnion('by', [
  z
    .object({
      by: z.literal('flat'),
      name,
      amount: minorField({ title: 'Amount', minimum: 0, maximum: 10_000_000 }),
    })
    .readonly(),
  z
    .object({
      by: z.literal('area'),
      name,
      rate: minorField({ title: 'Rate', unit: 'per square inch', minimum: 0, maximum: 10_000 }),
    })
    .readonly(),
  z
    .object({
      by: z.literal('edge'),
      name,
      rate: minorField({ title: 'Rate', unit: 'per inch of edge', minimum: 0, maximum: 100_000 }),
    })
    .readonly(),
  z
    .object({
      by: z.literal('percent'),
      name,
      percent: percentField({ title: 'Percent', minimum: 0, maximum: 500 }),
      /** Lines saved before there was a choice reach the quilting only. */
      of: withDefault(
        choiceField(['quilting', 'everything-above'], {
          title: 'Percent of',
          help: 'A rush charge is mostly on the quilting; a tax is on everything above it.',
        }),
        'quilting',
      ),
    })
    .readonly(),
]);

export type PriceLine = z.infer<typeof priceLineSchema>;

export const priceLinesSchema = z.array(priceLineSchema).max(20).readonly().meta({
  title: 'Other charges',
  description: 'Thread, batting, basting, rush, freight: flat, by area, by edge or in percent.',
});
