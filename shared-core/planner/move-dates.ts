import { addDays, type CalendarDate, daysBetween } from '#core/units/calendar-date';
import type { Schedule } from './schedule';
import { isInTime } from './is-in-time';
import type { WorkshopLoad } from './workshop-load';

/** A due day that is moved to a later one. */
export interface MovedDate {
  readonly id: string;
  readonly dueOn: CalendarDate;
}

/** The number of late projects that are tried as the only one to move. Each takes about ten quick plans. */
const MOST_TRIED = 5;

/**
 * The due days to move so that everything is in time. If moving one of the latest projects is enough, it is that one, moved by as
 * few days as possible; otherwise every late project moves to its day in the plan. Empty if nothing is late, or if a project
 * is never finished.
 */
export function moveDates(load: WorkshopLoad, plan: Schedule): readonly MovedDate[] {
  const late = plan.projects
    .flatMap(({ id, finishOn, lateDays }) =>
      finishOn === null || (lateDays ?? 0) <= 0 ? [] : [{ id, finishOn, lateDays: lateDays ?? 0 }],
    )
    .toSorted((one, other) => other.lateDays - one.lateDays);
  if (plan.projects.some(({ finishOn, lateDays }) => finishOn === null && lateDays !== null)) return [];
  const all = late.map(({ id, finishOn }) => ({ id, dueOn: finishOn }));
  if (all.length < 2) return all;
  const alone = late.slice(0, MOST_TRIED).flatMap(({ id }) => movedAlone(load, id) ?? []);
  const days = ({ id, dueOn }: MovedDate) => daysBetween(dueOf(load, id), dueOn);
  const [least] = alone.toSorted((one, other) => days(one) - days(other));
  return least === undefined ? all : [least];
}

/** The same workshop with these due days. */
export function withDates(load: WorkshopLoad, moved: readonly MovedDate[]): WorkshopLoad {
  const days = new Map(moved.map(({ id, dueOn }) => [id, dueOn]));
  return {
    ...load,
    projects: load.projects.map((project) => ({ ...project, dueOn: days.get(project.id) ?? project.dueOn })),
  };
}

const FARTHEST_MOVE = 1024;

/** The earliest due day found for this project with which everything is in time; null if even the farthest is not enough. */
function movedAlone(load: WorkshopLoad, id: string): MovedDate | null {
  const due = dueOf(load, id);
  const isEnough = (days: number) => isInTime(withDates(load, [{ id, dueOn: addDays(due, days) }]));
  if (!isEnough(FARTHEST_MOVE)) return null;
  let [tooFew, enough] = [0, FARTHEST_MOVE];
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else tooFew = middle;
  }
  return { id, dueOn: addDays(due, enough) };
}

function dueOf({ today, projects }: WorkshopLoad, id: string): CalendarDate {
  return projects.find((project) => project.id === id)?.dueOn ?? today;
}
