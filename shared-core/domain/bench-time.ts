import { z } from 'zod';
import { calendarDateSchema } from './dates';

const minutesOfDay = z.int().min(0).max(1440);

/** Days on which nothing is sewn, the first and the last included. */
export const dayOffSchema = z
  .object({ from: calendarDateSchema, to: calendarDateSchema, why: z.string().trim().max(120) })
  .readonly()
  .refine(({ from, to }) => to >= from, { path: ['to'], message: 'The last day is before the first' });
export type DayOff = z.infer<typeof dayOffSchema>;

/** How long the maker sits at the bench: minutes from Monday to Sunday, and the days she does not. */
export const benchTimeSchema = z
  .object({
    weekMinutes: z
      .tuple([
        minutesOfDay,
        minutesOfDay,
        minutesOfDay,
        minutesOfDay,
        minutesOfDay,
        minutesOfDay,
        minutesOfDay,
      ])
      .readonly(),
    daysOff: z.array(dayOffSchema).max(200).readonly(),
    /** Says on the desktop, once a day, what is due, to be sent or back today or tomorrow. */
    remindsOfDays: z.boolean().default(false),
  })
  .readonly();
export type BenchTime = z.infer<typeof benchTimeSchema>;

/** Where a new workshop starts, until its maker says otherwise: an hour on weekdays, three at the weekend. */
export const STARTING_BENCH_TIME: BenchTime = {
  weekMinutes: [60, 60, 60, 60, 60, 180, 180],
  daysOff: [],
  remindsOfDays: false,
};
