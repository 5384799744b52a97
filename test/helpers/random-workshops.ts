import type { Hands, LoadStep, ProjectLoad, WorkshopLoad } from '#core/planner/workshop-load';
import { addDays, calendarDate } from '#core/units/calendar-date';

/** Whole numbers below a bound, always the same for a seed (mulberry32, Tommy Ettinger, public domain). */
function seededBelow(seed: number): (bound: number) => number {
  let state = seed >>> 0;
  return (bound) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % bound;
  };
}

type Below = ReturnType<typeof seededBelow>;

/**
 * A made-up workshop small enough to try every order: two to four projects of up to three stages with trips between them, evenings of
 * different lengths, days off, and due days so close that a project is usually late.
 */
export function smallWorkshop(seed: number): WorkshopLoad {
  const below = seededBelow(seed);
  const today = addDays(calendarDate('2027-01-01'), below(700));
  const count = 2 + below(3);
  const projects = Array.from({ length: count }, (_, index): ProjectLoad => {
    const steps = smallSteps(below);
    const days = steps.reduce((sum, step) => sum + (step.kind === 'wait' ? step.days : 0), 0);
    return {
      id: `project ${String(index)}`,
      dueOn: below(8) === 0 ? null : addDays(today, Math.max(0, days - 2) + below(5 * count)),
      readyOn: below(4) === 0 ? addDays(today, below(8)) : null,
      steps,
    };
  });
  return { today, hands: smallHands(below, today), projects };
}

function smallSteps(below: Below): readonly LoadStep[] {
  const works = 1 + below(3);
  return Array.from({ length: works }, (_, place): LoadStep[] => {
    const work: LoadStep = { kind: 'work', id: `stage ${String(place)}`, minutes: 20 * (1 + below(12)) };
    if (place === works - 1 && below(6) > 0) return [work];
    return below(3) === 0
      ? [work]
      : [work, { kind: 'wait', id: `stage ${String(place)}`, days: 1 + below(9) }];
  }).flat();
}

function smallHands(below: Below, today: WorkshopLoad['today']): Hands {
  const evening = () => [0, 45, 60, 90, 120][below(5)]!;
  const off = addDays(today, below(14));
  return {
    weekMinutes: [evening(), evening(), evening(), evening(), 60, evening(), evening() * 2],
    daysOff: below(2) === 0 ? [] : [{ from: off, to: addDays(off, below(4)) }],
  };
}

/** A made-up workshop of this many open projects, most with a trip, due over the time that their work takes. */
export function largeWorkshop(count: number, seed: number): WorkshopLoad {
  const below = seededBelow(seed);
  const today = calendarDate('2027-09-13');
  const projects = Array.from({ length: count }, (_, index): ProjectLoad => {
    const work = (id: string, most: number): LoadStep => ({
      kind: 'work',
      id,
      minutes: 30 + 15 * below(most),
    });
    const quilting: readonly LoadStep[] =
      below(4) > 0
        ? [work('pack', 6), { kind: 'wait', id: 'pack', days: 14 + below(40) }]
        : [work('quilt', 24)];
    return {
      id: `project ${String(index)}`,
      dueOn: below(6) === 0 ? null : addDays(today, 30 + below(8 * count)),
      readyOn: below(8) === 0 ? addDays(today, below(30)) : null,
      steps: [work('piece', 40), ...quilting, work('bind', 10), work('finish', 20)],
    };
  });
  const hands: Hands = {
    weekMinutes: [90, 90, 0, 120, 60, 240, 180],
    daysOff: [{ from: addDays(today, 100), to: addDays(today, 114) }],
  };
  return { today, hands, projects };
}
