import { expect, it } from 'vitest';
import { checkSchedule } from '#core/planner/check-schedule';
import { planDates } from '#core/planner/plan-dates';
import { leastLargestLateness } from '#test/helpers/exhaustive-dates';
import { largeWorkshop, smallWorkshop } from '#test/helpers/random-workshops';

// The bench does the same with 1,000 workshops. A single worse order among these 120 fails the test.
it('finds the smallest possible largest lateness in small workshops', { timeout: 120_000 }, () => {
  for (let seed = 1; seed <= 120; seed += 1) {
    const load = smallWorkshop(seed);
    const plan = planDates(load);
    expect(checkSchedule(load, plan), `workshop ${String(seed)}`).toEqual([]);
    expect(plan.largestLateDays ?? -Infinity, `workshop ${String(seed)}`).toBe(leastLargestLateness(load));
  }
});

it('plans large workshops without faults', () => {
  for (const [count, seed] of [
    [60, 1],
    [150, 2],
    [300, 3],
  ] as const) {
    const load = largeWorkshop(count, seed);
    expect(checkSchedule(load, planDates(load))).toEqual([]);
  }
});
