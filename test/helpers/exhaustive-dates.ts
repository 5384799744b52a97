import type { WorkshopLoad } from '#core/planner/workshop-load';
import { addDays, type CalendarDate, daysBetween, weekday } from '#core/units/calendar-date';

/** One project as this search sees it: the step it is at, its minutes left, and the day from which it can be worked on. */
interface Stand {
  readonly step: number;
  readonly left: number;
  readonly from: number;
}

/**
 * The least largest lateness of any order of work, by trying them all. Nothing of the planner is used: days are walked one
 * by one, and whenever the hands are free or a piece has come back each project that can be worked on is tried. Only what
 * stands just as something tried before, and what cannot beat the best so far, is left out.
 */
export function leastLargestLateness(load: WorkshopLoad): number {
  const roomOn = roomByDay(load);
  const dated = load.projects.filter((project) => project.dueOn !== null);
  const due = dated.map(({ dueOn }) => daysBetween(load.today, dueOn!));
  const seen = new Map<string, number>();
  let best = Infinity;

  /** Leads a project through waits and steps of no minutes to its next work; `from` is its last day when all is done. */
  const settle = (project: number, step: number, day: number): Stand => {
    const steps = dated[project]!.steps;
    for (let at = step, from = day; ; at += 1) {
      const next = steps[at];
      if (next === undefined) return { step: at, left: 0, from };
      if (next.kind === 'wait') from += next.days;
      else if (next.minutes > 0) return { step: at, left: next.minutes, from };
    }
  };

  /** `holding` keeps the hands over the night unless a piece came back: changing over without cause gains nothing. */
  const visit = (
    stands: readonly Stand[],
    day: number,
    used: number,
    largest: number,
    holding: number | null,
  ): void => {
    if (largest >= best || stands.some((stand, project) => stand.from - due[project]! >= best)) return;
    const open = stands.flatMap((stand, project) => (stand.left > 0 ? [project] : []));
    if (open.length === 0) {
      best = largest;
      return;
    }
    const key = JSON.stringify([stands, day, used, holding]);
    if ((seen.get(key) ?? Infinity) <= largest) return;
    seen.set(key, largest);
    const ready = open.filter((project) => stands[project]!.from <= day);
    const room = roomOn(day) - used;
    if (room <= 0 || ready.length === 0) {
      const isSomeBack = open.some((project) => stands[project]!.from === day + 1);
      visit(stands, day + 1, 0, largest, isSomeBack ? null : holding);
      return;
    }
    const choices = holding === null ? ready.toSorted((one, other) => due[one]! - due[other]!) : [holding];
    for (const project of choices) {
      const stand = stands[project]!;
      const minutes = Math.min(room, stand.left);
      const worked = { ...stand, left: stand.left - minutes };
      const after = worked.left > 0 ? worked : settle(project, stand.step + 1, day);
      const late = after.left > 0 ? largest : Math.max(largest, after.from - due[project]!);
      visit(stands.with(project, after), day, used + minutes, late, worked.left > 0 ? project : null);
    }
  };

  const starts = dated.map(({ readyOn }, project) =>
    settle(project, 0, readyOn === null ? 0 : Math.max(0, daysBetween(load.today, readyOn))),
  );
  const already = starts.map((stand, project) => (stand.left > 0 ? -Infinity : stand.from - due[project]!));
  visit(starts, 0, 0, Math.max(-Infinity, ...already), null);
  return best;
}

function roomByDay({ today, hands }: WorkshopLoad): (day: number) => number {
  const rooms: number[] = [];
  const roomOfDate = (date: CalendarDate): number =>
    hands.daysOff.some(({ from, to }) => from <= date && date <= to)
      ? 0
      : hands.weekMinutes[weekday(date) - 1]!;
  return (day) => {
    while (rooms.length <= day) rooms.push(roomOfDate(addDays(today, rooms.length)));
    return rooms[day]!;
  };
}
