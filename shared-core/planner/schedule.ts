import type { CalendarDate } from '#core/units/calendar-date';

/** Beyond this many days from today there is no date: the planner returns null for "never". */
export const FARTHEST_DAY = 36_525;

/** The days of a step in the plan, and the latest day on which it can start. Dates beyond `FARTHEST_DAY` are null. */
export interface StepDates {
  readonly id: string;
  readonly kind: 'work' | 'wait';
  /** The first day of work, or the day a project is sent out. */
  readonly startOn: CalendarDate | null;
  /** The last day of work, or the day a project is back. */
  readonly endOn: CalendarDate | null;
  /**
   * If every step of every project starts on its latest day, each project is still finished by its due day, or by its day in the
   * plan where that is later. Null for projects without a due day.
   */
  readonly latestStartOn: CalendarDate | null;
}

export interface ProjectDates {
  readonly id: string;
  readonly finishOn: CalendarDate | null;
  /** Days from the due day to the finish: positive if late, 0 or negative if in time; null without a due day. */
  readonly lateDays: number | null;
  /** Days from today to the latest start of its first step; null without a due day or without steps. */
  readonly spareDays: number | null;
  readonly steps: readonly StepDates[];
}

/** Work on one step on one day. */
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
  /** In order of time, up to `FARTHEST_DAY`. */
  readonly sessions: readonly WorkSession[];
  /** Among the projects with a due day; null if there are none. */
  readonly largestLateDays: number | null;
  /** True if it is proven that no order of work has a smaller largest lateness. */
  readonly isProven: boolean;
}

/** A week from its Monday; the first one counts from today. */
export interface WeekLoad {
  readonly from: CalendarDate;
  /** Minutes the hands have. */
  readonly roomMinutes: number;
  readonly plannedMinutes: number;
  /** Minutes missing by the end of this week to finish everything in time; 0 if none are missing. */
  readonly shortMinutes: number;
}

/** How sure the date of one project is. */
export interface ProjectChance {
  readonly id: string;
  /** Share of the futures that are done by the due day, from 0 to 1; null without a due day. */
  readonly inTime: number | null;
  /** The day by which 9 of 10 futures are done; null for later than a hundred years. */
  readonly nearlySureBy: CalendarDate | null;
  /** The stage that the doubt comes from most; null when nothing in it is unsure. */
  readonly doubtfulStage: string | null;
  /** Send it out by this day and 9 of 10 futures are in time; null without a due day or without a trip ahead. */
  readonly sendBy: CalendarDate | null;
  /** Whether all of its spreads come from the maker's own cases. */
  readonly isLearned: boolean;
}
