import type { WorkshopLoad } from '#core/planner/workshop-load';
import { addDays, type CalendarDate, daysBetween, weekday } from '#core/units/calendar-date';

/**
 * The state of a project in this search: its current step, the minutes left of it, and the day from which it can be worked
 * on.
 */
interface ProjectState {
  readonly step: number;
  readonly left: number;
  readonly from: number;
}

/**
 * The smallest largest lateness of any order of work, found by trying all of them. It uses no code of the planner: it goes day by
 * day, and when the hands are free or a project is back it tries each project that can be worked on. It leaves out only states
 * that were tried before and states that cannot beat the best so far.
 */
export function leastLargestLateness(load: WorkshopLoad): number {
  const roomOn = roomByDay(load);
  const dated = load.projects.filter((project) => project.dueOn !== null);
  const due = dated.map(({ dueOn }) => daysBetween(load.today, dueOn!));
  const seen = new Map<string, number>();
  let best = Infinity;

  /** Moves a project past waits and steps of 0 minutes to its next work. When all is done, `from` is its last day. */
  const settle = (project: number, step: number, day: number): ProjectState => {
    const steps = dated[project]!.steps;
    for (let at = step, from = day; ; at += 1) {
      const next = steps[at];
      if (next === undefined) return { step: at, left: 0, from };
      if (next.kind === 'wait') from += next.days;
      else if (next.minutes > 0) return { step: at, left: next.minutes, from };
    }
  };

  /**
   * `holding` is the project that keeps the hands overnight unless another is back: changing without a reason gains
   * nothing.
   */
  const visit = (
    states: readonly ProjectState[],
    { day, used }: { readonly day: number; readonly used: number },
    largest: number,
    holding: number | null,
  ): void => {
    if (largest >= best || states.some((state, project) => state.from - due[project]! >= best)) return;
    const open = states.flatMap((state, project) => (state.left > 0 ? [project] : []));
    if (open.length === 0) {
      best = largest;
      return;
    }
    const key = JSON.stringify([states, day, used, holding]);
    if ((seen.get(key) ?? Infinity) <= largest) return;
    seen.set(key, largest);
    const ready = open.filter((project) => states[project]!.from <= day);
    const room = roomOn(day) - used;
    if (room <= 0 || ready.length === 0) {
      const isSomeBack = open.some((project) => states[project]!.from === day + 1);
      visit(states, { day: day + 1, used: 0 }, largest, isSomeBack ? null : holding);
      return;
    }
    const choices = holding === null ? ready.toSorted((one, other) => due[one]! - due[other]!) : [holding];
    for (const project of choices) {
      const state = states[project]!;
      const minutes = Math.min(room, state.left);
      const worked = { ...state, left: state.left - minutes };
      const after = worked.left > 0 ? worked : settle(project, state.step + 1, day);
      const late = after.left > 0 ? largest : Math.max(largest, after.from - due[project]!);
      visit(
        states.with(project, after),
        { day, used: used + minutes },
        late,
        worked.left > 0 ? project : null,
      );
    }
  };

  const starts = dated.map(({ readyOn }, project) =>
    settle(project, 0, readyOn === null ? 0 : Math.max(0, daysBetween(load.today, readyOn))),
  );
  const already = starts.map((state, project) => (state.left > 0 ? -Infinity : state.from - due[project]!));
  visit(starts, { day: 0, used: 0 }, Math.max(-Infinity, ...already), null);
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
