import { z } from 'zod';
import { type CalendarDate, calendarDateFromText } from '#core/units/calendar-date';
import { type PartialDate, partialDateFromText } from '#core/units/partial-date';

/** An ISO 8601 calendar date that exists, such as 2027-02-28. */
export const calendarDateSchema = z
  .string()
  .refine((text) => calendarDateFromText(text).ok, { message: 'Not a calendar date' })
  .meta({ title: 'Date', kind: 'date' }) as unknown as z.ZodType<CalendarDate, CalendarDate>;

/** A day, month or year that exists: `2027-02-28`, `2027-02` or `2027`. */
export const partialDateSchema = z.string().refine((text) => partialDateFromText(text).ok, {
  message: 'Not a day, month or year',
}) as unknown as z.ZodType<PartialDate, PartialDate>;
