import type { CalendarDate } from '#core/units/calendar-date';

/** due: to be finished; send-by: the last day on which it can leave for everything to be in time; back: promised back. */
export type DayKind = 'due' | 'send-by' | 'back';

/** A day of one piece that other programs may want to know of. */
export interface DayToRemember {
  readonly kind: DayKind;
  /** The identifier of the project, the stage or the trip whose day it is: the same for as long as that is there. */
  readonly of: string;
  readonly on: CalendarDate;
  readonly piece: string;
  /** For whom it is due, or with whom it is away; may be empty. */
  readonly who: string;
}
