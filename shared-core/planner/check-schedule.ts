import { addDays, type CalendarDate, daysBetween, weekday } from '#core/units/calendar-date';
import type { Schedule, ProjectDates, WorkSession } from './schedule';
import type { ProjectLoad, WorkshopLoad } from './workshop-load';

/**
 * Checks a plan with nothing but the load and the calendar: no day has more work than minutes, no work is on a day off, no step
 * begins before the steps and waits it depends on are over, every minute is worked once, and the dates match the work. Returns
 * the faults in words; none for a good plan. It cannot check plans that go beyond the farthest day.
 */
export function checkSchedule(load: WorkshopLoad, plan: Schedule): readonly string[] {
  return [
    ...checkDays(load, plan.sessions),
    ...load.projects.flatMap((project, index) => {
      const dates = plan.projects[index];
      if (dates?.id !== project.id) return [`${project.id} has no dates`];
      return checkProject(load, project, dates, plan.sessions);
    }),
  ];
}

function checkDays({ today, hands }: WorkshopLoad, sessions: readonly WorkSession[]): readonly string[] {
  const worked = new Map<CalendarDate, number>();
  for (const { on, minutes } of sessions) worked.set(on, (worked.get(on) ?? 0) + minutes);
  const faults = sessions.filter(({ minutes }) => minutes <= 0).map(({ on }) => `${on} has an empty session`);
  for (const [on, minutes] of worked) {
    const room = hands.weekMinutes[weekday(on) - 1] ?? 0;
    if (minutes > room) faults.push(`${on} holds ${String(minutes)} of ${String(room)} minutes`);
    if (hands.daysOff.some(({ from, to }) => from <= on && on <= to)) faults.push(`${on} is a day off`);
    if (on < today) faults.push(`${on} is in the past`);
  }
  return faults;
}

function checkProject(
  load: WorkshopLoad,
  project: ProjectLoad,
  dates: ProjectDates,
  sessions: readonly WorkSession[],
): readonly string[] {
  const faults: string[] = [];
  const own = sessions.filter(({ projectId }) => projectId === project.id);
  const rank = ranks(project);
  if (own.some(({ step }, place) => rank[step]! < (rank[own[place - 1]?.step ?? 0] ?? 0)))
    faults.push(`${project.id} has steps out of order`);
  const begin = project.readyOn !== null && project.readyOn > load.today ? project.readyOn : load.today;
  /**
   * The day on which the stages side by side may begin, the day on which all of them so far are over, and the current day.
   */
  let [from, over, at] = [begin, begin, begin];
  project.steps.forEach((step, place) => {
    if (rank[place] !== rank[place - 1]) from = over;
    if (step.isBeside === true || rank[place] !== rank[place - 1]) at = from;
    const where = `${project.id} step ${String(place)}`;
    const given = dates.steps[place];
    const days = own.filter((session) => session.step === place);
    const needs = step.kind === 'work' ? step.minutes : 0;
    const worked = days.reduce((sum, { minutes }) => sum + minutes, 0);
    if (worked !== needs) faults.push(`${where} has ${String(worked)} of ${String(needs)} minutes`);
    const start = days[0]?.on ?? at;
    if (start < at) faults.push(`${where} begins on ${start}, before ${at}`);
    const end = step.kind === 'wait' ? addDays(at, step.days) : (days.at(-1)?.on ?? at);
    if (given?.startOn !== start || given.endOn !== end) faults.push(`${where} has other days`);
    if ((given?.latestStartOn ?? start) < start) faults.push(`${where} starts after its latest day`);
    at = end;
    if (at > over) over = at;
  });
  if (dates.finishOn !== over) faults.push(`${project.id} is finished on ${over}`);
  const late = project.dueOn === null ? null : daysBetween(project.dueOn, over);
  if (dates.lateDays !== late) faults.push(`${project.id} is ${String(late)} days late`);
  return faults;
}

/** Numbers the steps in order. All steps of stages side by side share a number. */
function ranks({ steps }: ProjectLoad): readonly number[] {
  const numbers: number[] = [];
  let number = 0;
  steps.forEach((step, place) => {
    const own = steps.filter(({ id }) => id === step.id);
    const next = steps.slice(place).find(({ id }) => id !== step.id);
    const isShared = own.some(({ isBeside }) => isBeside === true) || next?.isBeside === true;
    const goesOn = isShared && steps[place - 1]?.id === step.id;
    if (step.isBeside !== true && !goesOn) number += 1;
    numbers.push(number);
  });
  return numbers;
}
