import type { Item, Place } from './peers';
import { areCuttable } from '#core/cutting/check/check-cut-plan';
import { lengthBound } from '#core/cutting/search/length-bounds';
import { benchClock, readBenchOptions } from './bench-options';
import type { BenchOptions } from './bench-options';
import { benchProblems, planFor, warmUp } from './cutting-bench';
import type { BenchProblem } from './bench-problem';
import { peers, usedHeight } from './peers';
import { gapPercent, summarizeGaps } from './score';

/**
 * Compares our search with packing libraries on the same problems and clock. Prints one line for each instance with height, gap,
 * time and whether the layout can be cut from edge to edge, then one line for each library with the mean and the worst gap.
 * Libraries that can turn items get the better result of turning and not turning.
 */
export function runCuttingPeers(args: readonly string[]): Promise<void> {
  return comparePeers(readBenchOptions(args));
}

interface PeerResult {
  readonly name: string;
  readonly height: number | null;
  readonly gap: number | null;
  readonly ms: number;
  readonly cuttable: boolean | null;
}

async function comparePeers(options: BenchOptions): Promise<void> {
  const results = new Map<string, PeerResult[]>();
  warmUp(options);
  for (const problem of await benchProblems(options)) {
    const { answer, ms } = planFor(problem, options);
    const gap = gapPercent(answer.height, problem.reference);
    const ours = { name: 'ringbound', height: answer.height, gap, ms: Math.round(ms), cuttable: true };
    const here = [ours, ...runPeers(problem, options)];
    for (const result of here) results.set(result.name, [...(results.get(result.name) ?? []), result]);
    console.log(JSON.stringify({ name: problem.name, reference: problem.reference ?? null, results: here }));
  }
  const { seconds, orientation, rule, clock } = options;
  for (const [name, list] of results) {
    const done = list.filter(({ height }) => height !== null);
    const cuttablePercent = Math.round(
      (100 * done.filter(({ cuttable }) => cuttable).length) / Math.max(1, done.length),
    );
    const summary = summarizeGaps(list.map(({ gap }) => gap));
    console.log(
      JSON.stringify({
        peer: name,
        runs: done.length,
        ...summary,
        cuttablePercent,
        seconds,
        orientation,
        rule,
        clock,
      }),
    );
  }
}

function runPeers(problem: BenchProblem, { orientation, clock }: BenchOptions): PeerResult[] {
  const items: Item[] = problem.patches.flatMap(({ width, height, copies }) =>
    Array.from({ length: copies }, () => ({ width, height })),
  );
  const bound = lengthBound(problem);
  const now = benchClock(clock);
  return peers.map(({ name, mostItems, pack }) => {
    if (items.length > mostItems) return { name, height: null, gap: null, ms: 0, cuttable: null };
    const start = now();
    const layouts = (orientation === 'rotatable' ? [true, false] : [false]).flatMap((mayTurn) => {
      const places = pack(items, problem.stripWidth, mayTurn, bound);
      return places?.length === items.length ? [places] : [];
    });
    const best = layouts.sort((a, b) => usedHeight(a) - usedHeight(b))[0];
    const ms = Math.round(now() - start);
    return { name, ms, ...describe(problem, best) };
  });
}

function describe({ reference }: BenchProblem, places: Place[] | undefined): Omit<PeerResult, 'name' | 'ms'> {
  if (places === undefined) return { height: null, gap: null, cuttable: null };
  const height = usedHeight(places);
  return { height, gap: gapPercent(height, reference), cuttable: areCuttable(places) };
}
