import { daysBetween } from '#core/units/calendar-date';
import { bestOrder } from './best-order';
import { type Chains, mergedChainsOf, NEVER_DUE, stepChainsOf } from './chains';
import { type Schedule, FARTHEST_DAY, type ProjectDates } from './schedule';
import { latestRuns } from './latest-runs';
import { listSchedule, type Run, type RunsInOrder } from './list-schedule';
import { sessionsOf, spansOf, stepDatesOf, type Timing } from './step-dates';
import { makeWorkCalendar, type WorkCalendar } from './work-calendar';
import type { ProjectLoad, WorkshopLoad } from './workshop-load';

/**
 * Plans all projects together and keeps the largest lateness as small as it can. Finds the days of each step, and the
 * latest days on which it can start.
 */
export function planDates(load: WorkshopLoad): Schedule {
  const calendar = makeWorkCalendar(load.today, load.hands);
  const order = bestOrder(mergedChainsOf(load, calendar), calendar, 'thorough');
  const chains = stepChainsOf(load, calendar);
  const keys = Float64Array.from(chains.mergedOf, (block) => order.keys[block]!);
  const runs: Run[] = [];
  const schedule = listSchedule(chains, calendar, keys, (run) => runs.push(run));
  const planned = spansOf(runs);
  const startAt = Float64Array.from(chains.minutes, (_, block) => planned.get(block)?.from ?? 0);
  const latest = spansOf(latestRuns(chains, calendar, schedule, startAt));
  const timing: Timing = { chains, calendar, planned, latest };
  const projects = load.projects.map((_, index) =>
    projectDatesOf(timing, load, index, schedule.finishDay[index]!),
  );
  return {
    projects,
    sessions: sessionsOf(timing, load, runs),
    largestLateDays: largestLate(chains, schedule),
    isProven: order.isProven,
  };
}

function projectDatesOf(timing: Timing, load: WorkshopLoad, index: number, finish: number): ProjectDates {
  const { chains, calendar } = timing;
  const project = load.projects[index]!;
  const due = chains.dueDay[index]!;
  const steps = stepDatesOf(timing, project, index, due === NEVER_DUE ? null : Math.max(due, finish));
  // Any of the stages side by side may have to start first.
  const latestStart = steps.flatMap(({ latestStartOn }) => latestStartOn ?? []).toSorted()[0] ?? null;
  return {
    id: project.id,
    finishOn: finish > FARTHEST_DAY ? null : calendar.dateOf(finish),
    lateDays: lateDaysOf(project, finish, calendar),
    spareDays: latestStart === null ? null : daysBetween(load.today, latestStart),
    steps,
  };
}

function lateDaysOf({ dueOn }: ProjectLoad, finish: number, calendar: WorkCalendar): number | null {
  return dueOn === null ? null : finish - calendar.dayOf(dueOn);
}

function largestLate(chains: Chains, { finishDay }: RunsInOrder): number | null {
  const late = Array.from(finishDay, (day, project) => day - chains.dueDay[project]!).filter(
    (_, project) => chains.dueDay[project] !== NEVER_DUE,
  );
  return late.length === 0 ? null : Math.max(...late);
}
