import { z } from 'zod';
import { type CalendarDate, calendarDateFromText } from '#core/units/calendar-date';

/** An ISO 8601 calendar date that exists, such as 2027-02-28. */
export const calendarDateSchema = z
  .string()
  .refine((text) => calendarDateFromText(text).ok, { message: 'Not a calendar date' })
  .meta({ title: 'Date', kind: 'date' }) as unknown as z.ZodType<CalendarDate, CalendarDate>;
