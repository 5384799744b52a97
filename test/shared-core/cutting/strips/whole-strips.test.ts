import { describe, expect, it } from 'vitest';
import type { StripProblem } from '#core/cutting/tree/cut-plan';
import { knapsackOf } from '#core/cutting/strips/strip-knapsack';
import { stripModel } from '#core/cutting/strips/strip-model';
import { solveStripProgram, stripProgram } from '#core/cutting/strips/strip-program';
import { proveWholeStrips } from '#core/cutting/strips/whole-strips';
import { smallProblem } from '#test/helpers/cutting-problems';
import { leastStripHeight } from '#test/helpers/exhaustive-cutting';

/** The bound that the program alone proves, and the bound for whole strips where a layout of height `best` is known. */
function proved({ patches, stripWidth }: StripProblem, best: number) {
  const model = stripModel(patches, stripWidth);
  const program = stripProgram(knapsackOf(model));
  const run = (work: Generator<number, void>) => {
    while (work.next().done !== true);
    return program.bound;
  };
  return {
    inFractions: run(solveStripProgram(program)),
    whole: run(proveWholeStrips(program, () => best)),
  };
}

const PROBLEMS = 300;

describe('the bound for whole strips', () => {
  it('is never above the least height, and equals it more often than the bound of the program alone', () => {
    let [tight, tightInFractions] = [0, 0];
    for (let seed = 1; seed <= PROBLEMS; seed++) {
      const problem = smallProblem(seed, 7, seed % 2 === 0);
      const least = leastStripHeight(problem);
      for (const best of [Infinity, least + 3, least]) {
        const { inFractions, whole } = proved(problem, best);
        expect(inFractions).toBeLessThanOrEqual(whole);
        expect(whole).toBeLessThanOrEqual(least);
        if (best !== least + 3) continue;
        if (whole === least) tight++;
        if (inFractions === least) tightInFractions++;
      }
    }
    expect(tight).toBeGreaterThanOrEqual(0.9 * PROBLEMS);
    expect(tight).toBeGreaterThan(tightInFractions);
  });

  it('counts whole strips: three squares, two to a strip, need two strips and not one and a half', () => {
    const patches = [{ width: 5, height: 5, copies: 3, mayTurn: false }];
    expect(proved({ stripWidth: 10, patches }, 100)).toEqual({ inFractions: 8, whole: 10 });
  });
});
