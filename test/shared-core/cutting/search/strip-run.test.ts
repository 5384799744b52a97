import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CuttingRule, StripProblem } from '#core/cutting/tree/cut-plan';
import { checkCutPlan } from '#core/cutting/check/check-cut-plan';
import { countStages } from '#core/cutting/tree/cut-tree';
import { createCuttingSearch } from '#test/helpers/cutting-search';
import { seededRandom } from '#core/units/seeded-random';
import { answerAfter, smallProblem, stripProblem } from '#test/helpers/cutting-problems';

const rule: fc.Arbitrary<CuttingRule> = fc.constantFrom('guillotine', '2-stage');

function faults(problem: StripProblem, cutBy: CuttingRule, steps: number) {
  const answer = answerAfter(problem, cutBy, steps);
  if (answer.height === 0) return [];
  return checkCutPlan(answer.tree, {
    width: problem.stripWidth,
    height: answer.height,
    patches: problem.patches,
    rule: cutBy,
    needsAllCopies: true,
  });
}

describe('a search on one strip', () => {
  it('finds a layout that can be cut for any patches', () => {
    fc.assert(
      fc.property(stripProblem({ types: 8, copies: 6, width: 60 }), rule, (problem, cutBy) => {
        expect(faults(problem, cutBy, 150)).toEqual([]);
      }),
      { numRuns: 250, seed: 11 },
    );
  });

  it('finds a layout that can be cut when lengths are too fine for its grid', () => {
    fc.assert(
      fc.property(stripProblem({ types: 5, copies: 4, width: 400_000 }), rule, (problem, cutBy) => {
        expect(faults(problem, cutBy, 30)).toEqual([]);
      }),
      { numRuns: 25, seed: 12 },
    );
  });

  it('never gets higher, and never goes below its bound', () => {
    fc.assert(
      fc.property(stripProblem({ types: 6, copies: 4, width: 40 }), rule, (problem, cutBy) => {
        const early = answerAfter(problem, cutBy, 5);
        const late = answerAfter(problem, cutBy, 200);
        expect(late.height).toBeLessThanOrEqual(early.height);
        expect(late.lowerBound).toBeGreaterThanOrEqual(early.lowerBound);
        expect(late.lowerBound).toBeLessThanOrEqual(late.height);
      }),
      { numRuns: 60, seed: 13 },
    );
  });

  it('keeps to two stages under the 2-stage rule', () => {
    for (let seed = 1; seed < 40; seed++) {
      expect(countStages(answerAfter(smallProblem(seed, 14, true), '2-stage', 100).tree)).toBeLessThanOrEqual(
        2,
      );
    }
  });

  it('finds the same layout from the same seed, in slices or in one run', () => {
    const problem = smallProblem(5, 30, true);
    const search = createCuttingSearch(problem, { rule: 'guillotine', random: seededRandom(1) });
    for (let slice = 0; slice < 900; slice++) search.step(() => 1, 1);
    let ticks = 0;
    const other = createCuttingSearch(problem, { rule: 'guillotine', random: seededRandom(1) });
    other.step(() => ++ticks, 900);
    expect(search.answer()).toEqual(other.answer());
  });

  it('stops after one step when its time is already up', () => {
    const search = createCuttingSearch(smallProblem(6, 40, true), {
      rule: 'guillotine',
      random: seededRandom(1),
    });
    let asked = 0;
    search.step(() => {
      asked++;
      return 10;
    }, 5);
    expect(asked).toBe(1);
  });

  it('is finished when the bound is met', () => {
    const problem = { stripWidth: 10, patches: [{ width: 5, height: 3, copies: 4, mayTurn: false }] };
    const answer = answerAfter(problem, '2-stage', 1000);
    expect(answer).toMatchObject({ height: 6, lowerBound: 6, gap: 0, cuts: 3, stages: 2 });
  });

  it('needs no fabric for no patches', () => {
    expect(answerAfter({ stripWidth: 10, patches: [] }, 'guillotine', 10)).toMatchObject({
      height: 0,
      gap: 0,
      cuts: 0,
    });
  });

  it('names the patches that are wider than the strip', () => {
    const patches = [
      { width: 12, height: 3, copies: 1, mayTurn: true },
      { width: 12, height: 3, copies: 1, mayTurn: false },
      { width: 12, height: 11, copies: 1, mayTurn: true },
    ];
    const search = () =>
      createCuttingSearch({ stripWidth: 10, patches }, { rule: 'guillotine', random: seededRandom(1) });
    expect(search).toThrow('Patch types wider than the strip: 1, 2');
  });
});
