import { chancesOf, FUTURES } from '#core/planner/chances';
import { planDates } from '#core/planner/plan-dates';
import { leastLargestLateness } from '#test/helpers/exhaustive-dates';
import { largeWorkshop, smallWorkshop } from '#test/helpers/random-workshops';

const SIZES = [10, 100, 300];
const ROUNDS = 25;
const CHANCES_OF = 30;
const WORKSHOPS = 1_000;

/**
 * Prints one line for each size with the median time of planning that number of open projects, one workshop a round, and one for
 * the chances of 30 projects. Then prints
 * the share of small random workshops in which the order found is as good as the best one, which a separate search finds by
 * trying all. An argument sets the number of small workshops.
 */
export function runPlannerBench([given]: readonly string[]): void {
  for (const projects of SIZES) {
    const loads = Array.from({ length: ROUNDS }, (_, round) => largeWorkshop(projects, round + 1));
    // The first plans are slower until the engine has compiled the code, which happens once in the store's thread.
    loads.slice(0, 5).forEach((load) => planDates(load));
    const times = loads.map((load) => timeOf(() => planDates(load)));
    const medianMs = times.toSorted((one, other) => one - other)[Math.floor(ROUNDS / 2)] ?? NaN;
    console.log(
      JSON.stringify({ projects, medianMs: rounded(medianMs), slowestMs: rounded(Math.max(...times)) }),
    );
  }
  const sampled = largeWorkshop(CHANCES_OF, 1);
  const usual = { low: 0.85, high: 1.35, isLearned: false, already: 0 };
  const chances = Array.from({ length: 7 }, () => timeOf(() => chancesOf(sampled, () => usual)));
  const medianMs = rounded(chances.toSorted((one, other) => one - other)[3] ?? NaN);
  console.log(JSON.stringify({ chancesOf: CHANCES_OF, futures: FUTURES, medianMs }));
  const workshops = given === undefined ? WORKSHOPS : Number(given);
  let optimal = 0;
  for (let seed = 1; seed <= workshops; seed += 1) {
    const load = smallWorkshop(seed);
    const found = planDates(load).largestLateDays ?? -Infinity;
    if (found === leastLargestLateness(load)) optimal += 1;
  }
  console.log(JSON.stringify({ workshops, optimalShare: optimal / workshops }));
}

function rounded(milliseconds: number): number {
  return Math.round(milliseconds * 100) / 100;
}

function timeOf(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
