import type { CalendarDate } from '#core/units/calendar-date';

/** Beyond this many days from today the planner says "never" rather than a date. */
export const FARTHEST_DAY = 36_525;

/** When a step is done in the plan, and when it can be done at the latest. Dates are null where they are beyond `FARTHEST_DAY`. */
export interface StepDates {
  readonly id: string;
  readonly kind: 'work' | 'wait';
  /** The first day of work, or the day a piece leaves the house. */
  readonly startOn: CalendarDate | null;
  /** The last day of work, or the day a piece is back. */
  readonly endOn: CalendarDate | null;
  /**
   * If every step of every project starts on its latest day, all is still finished by its due day, or by the day the plan
   * gives where that is later. Null for projects without a due day.
   */
  readonly latestStartOn: CalendarDate | null;
}

export interface ProjectDates {
  readonly id: string;
  readonly finishOn: CalendarDate | null;
  /** Days from due to finish: positive when late, zero or negative in time; null without a due day. */
  readonly lateDays: number | null;
  /** Days from today to the latest start of its first step; null without a due day or without steps. */
  readonly spareDays: number | null;
  readonly steps: readonly StepDates[];
}

/** A stretch of work on one step on one day. */
export interface WorkSession {
  readonly on: CalendarDate;
  readonly projectId: string;
  /** Place in the project's list of steps. */
  readonly step: number;
  readonly minutes: number;
}

export interface Schedule {
  /** In the order of the load. */
  readonly projects: readonly ProjectDates[];
  /** In order of time; only what is worked within `FARTHEST_DAY`. */
  readonly sessions: readonly WorkSession[];
  /** Of the projects with a due day; null when there are none. */
  readonly largestLateDays: number | null;
  /** No order of work could make the largest lateness smaller. */
  readonly isProven: boolean;
}

/** A week from its Monday; the first one counts from today. */
export interface WeekLoad {
  readonly from: CalendarDate;
  /** Minutes the hands have. */
  readonly roomMinutes: number;
  readonly plannedMinutes: number;
  /** Minutes missing by the end of this week for everything to be in time; 0 for none. */
  readonly shortMinutes: number;
}
