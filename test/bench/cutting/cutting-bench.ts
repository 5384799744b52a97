import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { PatchType, StripProblem } from '#core/cutting/tree/cut-plan';
import type { BenchProblem } from './bench-problem';
import type { BenchOptions } from './bench-options';
import { checkCutPlan } from '#core/cutting/check/check-cut-plan';
import { type CuttingAnswer, createCuttingSearch } from '#test/helpers/cutting-search';
import { placedPatches } from '#core/cutting/tree/cut-tree';
import { benchClock, readBenchOptions } from './bench-options';
import { fabricJobs } from './fabric-jobs';
import { instancePatches, readInstances } from './instances';
import { gapPercent, layoutPlaces, summarizeGaps } from './score';
import { seededRandom } from '#core/units/seeded-random';

/**
 * Plans every instance of a folder, or every seeded fabric job, for the given time on one thread and checks the layout.
 * Prints one line of JSON for each, and a last line with the mean and the worst gap in percent, both to the reference and to
 * the bound that the search itself proved.
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

/** The problems that the options ask for, each with the height it is scored against. */
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

/** Runs one search for the time in the options, checks its layout, and returns it with the time it took. */
export function planFor(
  problem: StripProblem & { readonly name: string },
  options: BenchOptions,
): { answer: CuttingAnswer; ms: number } {
  const now = benchClock(options.clock);
  const start = now();
  const search = createCuttingSearch(problem, { rule: options.rule, random: seededRandom(1) });
  search.step(now, start + options.seconds * 1000);
  const ms = now() - start;
  let answer = search.answer();
  while (answer === undefined) {
    search.step(now, now());
    answer = search.answer();
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

/** Runs the inner loops once on a separate problem so that the engine has compiled them before the first instance. */
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
