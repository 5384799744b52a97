import type { StripDemand } from './strip-demands';
import type { StripProgram } from './strip-program';
import { solveStripProgram, stripProgram } from './strip-program';

/** The layouts that meet some demands, and what none of them is lower than. */
interface Branch {
  readonly demands: readonly StripDemand[];
  readonly bound: number;
  readonly split: Split | undefined;
}

/** How many strips the program takes that are as high as height number `level` or higher, where that is no whole number. */
interface Split {
  readonly level: number;
  readonly count: number;
}

const MOST_BRANCHES = 400;

/**
 * Proves more than the solved program does, which cuts strips in fractions: there are so many strips of a height or a higher
 * one, or one more. The layouts are parted by that again and again, those with the least bound first (branch and bound on the
 * counts of strips), and the least bound of all parts is a bound. Parts that hold nothing lower than `best()` are dropped. Yields
 * work in inner-loop steps.
 */
export function* proveWholeStrips(program: StripProgram, best: () => number): Generator<number, void> {
  const open: Branch[] = [{ demands: [], bound: program.bound, split: splitOf(program) }];
  for (let parted = 0; parted < MOST_BRANCHES; parted++) {
    open.sort((a, b) => b.bound - a.bound);
    const least = open.pop();
    program.bound = Math.max(program.bound, least === undefined ? best() : Math.min(best(), least.bound));
    if (least?.split === undefined) return;
    const { level, count } = least.split;
    for (const isLeast of [true, false]) {
      const demand = { level, isLeast, count: isLeast ? Math.ceil(count) : Math.floor(count) };
      const demands = [...least.demands, demand];
      const part = stripProgram(program.model, program.room, demands, program);
      yield* solveStripProgram(part);
      const bound = Math.max(least.bound, part.bound);
      if (bound < best()) open.push({ demands, bound, split: splitOf(part) });
    }
  }
}

const NEARLY_WHOLE = 1e-5;

/** The count that is furthest from whole, weighed by how much higher its strips are than the next; undefined if all are whole. */
function splitOf({ model, cost, amount }: StripProgram): Split | undefined {
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
