import type { CalendarDate } from '#core/units/calendar-date';

/** The maker's hands: how long they work on each weekday, and on which days they do not. */
export interface Hands {
  /** Minutes from Monday to Sunday, each 0 to 1440. */
  readonly weekMinutes: readonly [number, number, number, number, number, number, number];
  readonly daysOff: readonly DayRange[];
}

/** From the first day to the last, both included. */
interface DayRange {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
}

/**
 * Work takes minutes of the hands. A wait takes calendar days and no hands: a project that is sent out on Monday for 3 days can be
 * worked on again from Thursday. `id` is the stage; a stage that is prepared and then sent out is two steps with one id.
 *
 * `isBeside` on the first step of a stage means that the stage may run side by side with the stage before it. Such stages have
 * at most one step of work, with waits before and after it.
 */
export type LoadStep = { readonly id: string; readonly isBeside?: boolean } & (
  { readonly kind: 'work'; readonly minutes: number } | { readonly kind: 'wait'; readonly days: number }
);

/** The steps that are still to be done on one project, in order. */
export interface ProjectLoad {
  readonly id: string;
  /** The day by whose evening it must be finished; null for a project that only uses time that no other project needs. */
  readonly dueOn: CalendarDate | null;
  /** The first day it can be worked on; null for today. */
  readonly readyOn: CalendarDate | null;
  readonly steps: readonly LoadStep[];
}

export interface WorkshopLoad {
  readonly today: CalendarDate;
  readonly hands: Hands;
  /** Of two equally urgent projects, the one earlier in the list goes first. */
  readonly projects: readonly ProjectLoad[];
}
