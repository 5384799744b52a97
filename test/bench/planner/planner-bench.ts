import { planDates } from '#core/planner/plan-dates';
import { leastLargestLateness } from '#test/helpers/exhaustive-dates';
import { largeWorkshop, smallWorkshop } from '#test/helpers/random-workshops';

const SIZES = [10, 100, 300];
const ROUNDS = 25;
const WORKSHOPS = 1_000;

/**
 * A line a size with the median time of planning so many open projects anew, over as many workshops as rounds; then the share of small random workshops in
 * which the order found is as good as the best of all, which a search apart from the planner tries out. A number as argument
 * takes that many small workshops instead.
 */
export function runPlannerBench([given]: readonly string[]): void {
  for (const projects of SIZES) {
    const loads = Array.from({ length: ROUNDS }, (_, round) => largeWorkshop(projects, round + 1));
    // The first plans pay for the engine's warming up, which happens once in a store's thread.
    loads.slice(0, 5).forEach((load) => planDates(load));
    const times = loads.map((load) => timeOf(() => planDates(load)));
    const medianMs = times.toSorted((one, other) => one - other)[Math.floor(ROUNDS / 2)] ?? NaN;
    console.log(
      JSON.stringify({ projects, medianMs: rounded(medianMs), slowestMs: rounded(Math.max(...times)) }),
    );
  }
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
