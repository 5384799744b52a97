import type { CalendarDate } from '#core/units/calendar-date';

/** The one pair of hands: how long it works on each weekday, and the days on which it does not. */
export interface Hands {
  /** Minutes from Monday to Sunday, each 0 to 1440. */
  readonly weekMinutes: readonly [number, number, number, number, number, number, number];
  readonly daysOff: readonly DayRange[];
}

/** From the first day to the last, both included. */
export interface DayRange {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
}

/**
 * Work takes minutes of the hands. A wait takes calendar days and no hands: a piece that goes out on Monday for 3 days is
 * worked on again from Thursday. `id` names the stage; a stage that is prepared and then sent out is two steps of one id.
 *
 * `isBeside` on the first step of a stage lets it run side by side with the stage before it. Stages that do have one step of
 * work at most, waits before and after it.
 */
export type LoadStep = { readonly id: string; readonly isBeside?: boolean } & (
  { readonly kind: 'work'; readonly minutes: number } | { readonly kind: 'wait'; readonly days: number }
);

/** What is still to be done on one project, in its order. */
export interface ProjectLoad {
  readonly id: string;
  /** The day by whose evening it must be finished; null for a project that only fills time nobody else needs. */
  readonly dueOn: CalendarDate | null;
  /** Nothing is done on it before; null for now. */
  readonly readyOn: CalendarDate | null;
  readonly steps: readonly LoadStep[];
}

export interface WorkshopLoad {
  readonly today: CalendarDate;
  readonly hands: Hands;
  /** Of two that press alike the earlier in the list goes first. */
  readonly projects: readonly ProjectLoad[];
}
