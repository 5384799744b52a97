import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { CuttingAnswer } from '#core/cutting/cutting-search';
import type { PatchType, StripProblem } from '#core/cutting/tree/cut-plan';
import type { BenchProblem } from './bench-problem';
import type { BenchOptions } from './bench-options';
import { checkCutPlan } from '#core/cutting/check/check-cut-plan';
import { createCuttingSearch } from '#core/cutting/cutting-search';
import { placedPatches } from '#core/cutting/tree/cut-tree';
import { benchClock, readBenchOptions } from './bench-options';
import { fabricJobs } from './fabric-jobs';
import { instancePatches, readInstances } from './instances';
import { gapPercent, layoutPlaces, summarizeGaps } from './score';
import { seededRandom } from '#core/cutting/search/seeded-random';

/**
 * Plans every instance of a folder (or of the seeded fabric jobs) for the time given, one thread, each from nothing; checks
 * the layout, and prints a line of JSON each and a last one with mean and worst gap in percent, to the reference and to the bound
 * that the search proved itself.
 */
export async function runCuttingBench(args: readonly string[]): Promise<void> {
  const options = readBenchOptions(args);
  const problems = await benchProblems(options);
  if (options.layouts !== undefined) await mkdir(options.layouts, { recursive: true });
  warmUp(options);
  const gaps: (number | null)[] = [];
  const ownGaps: (number | null)[] = [];
  for (const problem of problems) {
    const { answer, ms } = planFor(problem, options);
    const gap = gapPercent(answer.height, problem.reference);
    gaps.push(gap);
    const { height, lowerBound, cuts, stages } = answer;
    const ownGap = gapPercent(height, lowerBound);
    ownGaps.push(ownGap);
    const reference = problem.reference ?? null;
    print({
      name: problem.name,
      height,
      lowerBound,
      ownGap,
      reference,
      gap,
      ms: Math.round(ms),
      cuts,
      stages,
    });
    if (options.layouts !== undefined) {
      const places = layoutPlaces(placedPatches(answer.tree));
      const layout = {
        name: problem.name,
        width: problem.stripWidth,
        height,
        placed: places,
        tree: answer.tree,
      };
      await writeFile(path.join(options.layouts, `${problem.name}.json`), `${JSON.stringify(layout)}\n`);
    }
  }
  const { seconds, orientation, rule, clock } = options;
  const { meanGap, worstGap } = summarizeGaps(ownGaps);
  const own = { meanOwnGap: meanGap, worstOwnGap: worstGap };
  print({ instances: problems.length, ...summarizeGaps(gaps), ...own, seconds, orientation, rule, clock });
}

/** The problems of the options, with the least height known under their rule (fabric jobs: none until planned). */
export async function benchProblems(options: BenchOptions): Promise<BenchProblem[]> {
  if (options.folder === 'fabric-jobs') {
    return fabricJobs().filter(({ name }) => options.only.test(name));
  }
  const instances = await readInstances(options.folder);
  return instances
    .filter(({ name }) => options.only.test(name))
    .map((instance) => ({
      name: instance.name,
      stripWidth: instance.width,
      patches: instancePatches(instance, options.orientation),
      reference: instance.reachable[options.orientation][options.rule],
    }));
}

/** Runs one search for the time of the options, checks its layout and gives it with the time it took by the clock. */
export function planFor(
  problem: StripProblem & { readonly name: string },
  options: BenchOptions,
): { answer: CuttingAnswer; ms: number } {
  const now = benchClock(options.clock);
  const start = now();
  const search = createCuttingSearch(problem, { rule: options.rule, random: seededRandom(1) });
  if (!search.ok) throw new Error(`${problem.name}: patches wider than the strip.`);
  search.value.step(now, start + options.seconds * 1000);
  const ms = now() - start;
  let answer = search.value.answer();
  while (answer === undefined) {
    search.value.step(now, now());
    answer = search.value.answer();
  }
  const { height, tree } = answer;
  const { patches, stripWidth } = problem;
  const faults = checkCutPlan(tree, {
    width: stripWidth,
    height,
    patches,
    rule: options.rule,
    needsAllCopies: true,
  });
  if (faults.length > 0) throw new Error(`${problem.name}: ${JSON.stringify(faults.slice(0, 3))}`);
  return { answer, ms };
}

/** Lets the compiler see the inner loops once, on a problem of its own, so that the first instance is not the slowest. */
export function warmUp(options: BenchOptions): void {
  const random = seededRandom(7);
  const side = () => 4 + Math.floor(random() * 30);
  const patches = Array.from({ length: 40 }, (): PatchType => {
    return { width: side(), height: side(), copies: 1 + Math.floor(random() * 2), mayTurn: true };
  });
  planFor({ name: 'warm-up', stripWidth: 100, patches }, { ...options, seconds: 0.5 });
}

function print(line: object): void {
  console.log(JSON.stringify(line));
}
