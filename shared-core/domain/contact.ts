import { z } from 'zod';
import { priceLinesSchema } from './price-line';

/** longarm: quilts for hire; other: anyone else a project is sent to. */
export const contactKindSchema = z.enum(['longarm', 'other']);
export type ContactKind = z.infer<typeof contactKindSchema>;

export const contactNameSchema = z.string().trim().min(1).max(120);

/** Someone a project is sent to. Unknown values are null; money is in minor units, the rate per square inch. */
export const contactDetailsSchema = z
  .object({
    name: contactNameSchema,
    kind: contactKindSchema,
    /** How to reach them, in the maker's own words. */
    reach: z.string().trim().max(300),
    rateMinor: z.number().min(0).max(10_000).nullable(),
    minimumMinor: z.number().min(0).max(10_000_000).nullable(),
    lines: priceLinesSchema,
    promisedDays: z.int().min(0).max(730).nullable(),
    notes: z.string().max(5_000),
  })
  .readonly();
export type ContactDetails = z.infer<typeof contactDetailsSchema>;

/** A contact with only a name. */
export function nameAlone(name: string, kind: ContactKind): ContactDetails {
  return {
    name,
    kind,
    reach: '',
    rateMinor: null,
    minimumMinor: null,
    lines: [],
    promisedDays: null,
    notes: '',
  };
}
