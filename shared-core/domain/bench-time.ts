import { z } from 'zod';
import { calendarDateSchema } from './dates';

const minutesOfDay = z.int().min(0).max(1440);

/** Days without sewing, the first and last included. */
const dayOffSchema = z
  .object({ from: calendarDateSchema, to: calendarDateSchema, why: z.string().trim().max(120) })
  .readonly()
  .refine(({ from, to }) => to >= from, { path: ['to'], message: 'The last day is before the first' });
export type DayOff = z.infer<typeof dayOffSchema>;

/** Sewing time: minutes for each weekday from Monday to Sunday, and the days off. */
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
    /** Shows a desktop reminder once a day: what is due, to be mailed, or coming back today or tomorrow. */
    remindsOfDays: z.boolean().default(false),
  })
  .readonly();
export type BenchTime = z.infer<typeof benchTimeSchema>;

/** The starting setting: one hour on weekdays, three on weekend days. */
export const STARTING_BENCH_TIME: BenchTime = {
  weekMinutes: [60, 60, 60, 60, 60, 180, 180],
  daysOff: [],
  remindsOfDays: false,
};
