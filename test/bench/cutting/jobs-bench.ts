import type { JobPlan } from '#core/cutting/tree/cutting-job';
import { planCutting } from '#core/cutting/search/plan-cutting';
import { seededRandom } from '#core/units/seeded-random';
import { benchClock, readBenchOptions } from './bench-options';
import { stashJobs } from './stash-jobs';

const SQUARE_INCH = 8128 ** 2;

/**
 * Plans the seeded stash jobs for the given time. Prints one line for each job with the time of the first answer and, for both
 * rules, the fabric bought and used (square inches), pieces, cuts and the gap to the area of the patches; then the mean gaps.
 */
export function runJobsBench(args: readonly string[]): void {
  const options = readBenchOptions(['stash-jobs', ...args]);
  const now = benchClock(options.clock);
  const gaps: { readonly leastFabric: number; readonly simplestCuts: number }[] = [];
  for (const { name, job } of stashJobs()) {
    const start = now();
    const search = planCutting(job, seededRandom(1));
    while (search.answer() === undefined) search.step(now, now());
    const firstMs = Math.round(now() - start);
    search.step(now, start + options.seconds * 1000);
    const answer = search.answer();
    if (answer === undefined) throw new Error(`${name}: the answer is gone.`);
    const { leastFabric, simplestCuts } = answer;
    gaps.push({ leastFabric: leastFabric.gap, simplestCuts: simplestCuts.gap });
    const plans = { leastFabric: describe(leastFabric), simplestCuts: describe(simplestCuts) };
    console.log(JSON.stringify({ name, firstMs, ...plans }));
  }
  const mean = (of: (gap: (typeof gaps)[number]) => number) =>
    percent(gaps.reduce((sum, gap) => sum + of(gap), 0) / gaps.length);
  const means = {
    leastFabric: mean((gap) => gap.leastFabric),
    simplestCuts: mean((gap) => gap.simplestCuts),
  };
  console.log(
    JSON.stringify({ jobs: gaps.length, meanGap: means, seconds: options.seconds, clock: options.clock }),
  );
}

function describe({ totals, gap, unplaced }: JobPlan): object {
  return {
    bought: Math.round(totals.boughtArea / SQUARE_INCH),
    used: Math.round(totals.usedArea / SQUARE_INCH),
    pieces: totals.pieces,
    cuts: totals.cuts,
    gap: percent(gap),
    unplaced: unplaced.length,
  };
}

function percent(share: number): number {
  return Math.round(share * 10_000) / 100;
}
