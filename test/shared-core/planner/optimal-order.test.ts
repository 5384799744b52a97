import { expect, it } from 'vitest';
import { checkSchedule } from '#core/planner/check-schedule';
import { planDates } from '#core/planner/plan-dates';
import { leastLargestLateness } from '#test/helpers/exhaustive-dates';
import { largeWorkshop, smallWorkshop } from '#test/helpers/random-workshops';

// The bench does the same with 1,000 workshops; here are some of them, in which one worse order would show.
it(
  'finds the least largest lateness in small workshops, whatever is tried against it',
  { timeout: 120_000 },
  () => {
    for (let seed = 1; seed <= 120; seed += 1) {
      const load = smallWorkshop(seed);
      const plan = planDates(load);
      expect(checkSchedule(load, plan), `workshop ${String(seed)}`).toEqual([]);
      expect(plan.largestLateDays ?? -Infinity, `workshop ${String(seed)}`).toBe(leastLargestLateness(load));
    }
  },
);

it('plans large workshops without a fault, too', () => {
  for (const [count, seed] of [
    [60, 1],
    [150, 2],
    [300, 3],
  ] as const) {
    const load = largeWorkshop(count, seed);
    expect(checkSchedule(load, planDates(load))).toEqual([]);
  }
});
