import type { StripDemand } from './strip-demands';
import type { StripProgram } from './strip-program';
import { solveStripProgram, stripProgram } from './strip-program';

/** All layouts that meet some demands, and a bound for them. */
interface Branch {
  readonly demands: readonly StripDemand[];
  readonly bound: number;
  readonly split: Split | undefined;
}

/** The number of strips of height number `level` or higher, where it is not whole. */
interface Split {
  readonly level: number;
  readonly count: number;
}

const MOST_BRANCHES = 400;

/**
 * Proves a better bound than the solved program, which counts fractions of strips. In a layout the number of strips of some
 * height or higher is whole. So where the program has a fraction, the layouts are split into two branches, with that number
 * rounded down or rounded up (branch and bound). The branch with the least bound is split first, and the least bound of all
 * open branches is a bound for all layouts. Branches that cannot be lower than `best()` are dropped. Yields its work in
 * inner-loop steps.
 */
export function* proveWholeStrips(program: StripProgram, best: () => number): Generator<number, void> {
  const open: Branch[] = [{ demands: [], bound: program.bound, split: splitOf(program) }];
  for (let branches = 0; branches < MOST_BRANCHES; branches++) {
    open.sort((a, b) => b.bound - a.bound);
    const least = open.pop();
    program.bound = Math.max(program.bound, least === undefined ? best() : Math.min(best(), least.bound));
    if (least?.split === undefined) return;
    const { level, count } = least.split;
    for (const isLeast of [true, false]) {
      const demand = { level, isLeast, count: isLeast ? Math.ceil(count) : Math.floor(count) };
      const demands = [...least.demands, demand];
      const branch = stripProgram(program.knapsack, demands, program);
      yield* solveStripProgram(branch);
      const bound = Math.max(least.bound, branch.bound);
      if (bound < best()) open.push({ demands, bound, split: splitOf(branch) });
    }
  }
}

/** A count closer than this to a whole number counts as whole. */
const NEARLY_WHOLE = 1e-5;

/**
 * The count that is furthest from whole, weighted by how much higher its strips are than the next lower ones; undefined if
 * all are whole.
 */
function splitOf({ knapsack: { model }, cost, amount }: StripProgram): Split | undefined {
  let best: Split | undefined;
  let most = 0;
  for (const [level, height] of model.heights.entries()) {
    const count = amount.reduce((sum, part, row) => (cost[row]! >= height ? sum + part : sum), 0);
    const off = Math.min(count - Math.floor(count), Math.ceil(count) - count);
    const weight = off * (height - (level === 0 ? 0 : model.heights[level - 1]!));
    if (off < NEARLY_WHOLE || weight <= most) continue;
    most = weight;
    best = { level, count };
  }
  return best;
}
