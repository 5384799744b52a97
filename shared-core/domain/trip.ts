import { z } from 'zod';
import { calendarDate } from './dates';

/** One journey of a piece out of the house and back, as the maker tells it. */
export const tripDetails = z
  .object({
    withWhom: z.string().trim().min(1).max(120),
    sentOn: calendarDate.nullable(),
    promisedOn: calendarDate.nullable(),
    backOn: calendarDate.nullable(),
    trackingNumber: z.string().trim().max(120),
    sentAlong: z.string().trim().max(500),
    askedFor: z.string().trim().max(1_000),
    priceMinor: z.int().min(0).max(100_000_000).nullable(),
  })
  .readonly()
  .refine((trip) => trip.backOn === null || trip.sentOn === null || trip.backOn >= trip.sentOn, {
    path: ['backOn'],
    message: 'Back before it was sent',
  });
export type TripDetails = z.infer<typeof tripDetails>;
