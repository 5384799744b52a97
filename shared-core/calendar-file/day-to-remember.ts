import type { CalendarDate } from '#core/units/calendar-date';

/** due: the project is due; send-by: the last day to send it out and still finish on time; back: promised back. */
export type DayKind = 'due' | 'send-by' | 'back';

/** A day of a project that belongs in the maker's calendar. */
export interface DayToRemember {
  readonly kind: DayKind;
  /** The id of the project, stage or trip this day belongs to. It never changes, so calendars can update the day. */
  readonly ownerId: string;
  readonly on: CalendarDate;
  readonly projectName: string;
  /** The recipient or the contact; may be empty. */
  readonly who: string;
}
