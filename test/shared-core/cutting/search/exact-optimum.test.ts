import { describe, expect, it } from 'vitest';
import loadHighs from 'highs';
import type { CuttingRule, StripProblem } from '#core/cutting/tree/cut-plan';
import { lengthBound } from '#core/cutting/search/length-bounds';
import { answerAfter, smallProblem } from '#test/helpers/cutting-problems';
import { leastGuillotineHeight, leastStripHeight } from '#test/helpers/exhaustive-cutting';

const PROBLEMS = 500;
const STEPS = 600;

/**
 * The number of 500 seeded problems, half of them with turning, that the search solves to the optimum. It must never go
 * below.
 */
function countOptimal(
  rule: CuttingRule,
  patchCount: number,
  optimum: (problem: StripProblem) => number,
): number {
  let optimal = 0;
  for (let seed = 1; seed <= PROBLEMS; seed++) {
    const problem = smallProblem(seed, patchCount, seed % 2 === 0);
    const least = optimum(problem);
    const { height, lowerBound } = answerAfter(problem, rule, STEPS);
    expect(height).toBeGreaterThanOrEqual(least);
    expect(lowerBound).toBeLessThanOrEqual(least);
    if (height === least) optimal++;
  }
  return optimal;
}

describe('small problems, compared with every possible layout', () => {
  it('finds the least guillotine height in at least 95% of 500', () => {
    expect(countOptimal('guillotine', 7, leastGuillotineHeight)).toBeGreaterThanOrEqual(0.95 * PROBLEMS);
  });

  it('finds the least height in strips in at least 95% of 500', () => {
    expect(countOptimal('2-stage', 7, leastStripHeight)).toBeGreaterThanOrEqual(0.95 * PROBLEMS);
  });

  it('never claims a bound above the least height', () => {
    for (let seed = 1000; seed < 1200; seed++) {
      const problem = smallProblem(seed, 6, seed % 2 === 0);
      expect(lengthBound(problem)).toBeLessThanOrEqual(leastGuillotineHeight(problem));
    }
  });
});

/**
 * The level packing model of Lodi, Martello and Vigo (2004) for patches that may not turn, highest first: patch j opens a
 * strip (y) or joins a strip opened by an earlier patch i (x). Its optimum is the optimum under the 2-stage rule.
 */
function levelModel({ stripWidth, patches }: StripProblem): string {
  const single = patches
    .flatMap((patch) => Array.from({ length: patch.copies }, () => patch))
    .sort((a, b) => b.height - a.height);
  const opens = (i: number) => `y${i}`;
  const joins = (i: number, j: number) => `x${i}_${j}`;
  const later = (i: number) => single.slice(i + 1).map((patch, k) => ({ patch, j: i + 1 + k }));
  const placed = single.map(
    (_, j) => [...single.slice(0, j).map((_p, i) => joins(i, j)), opens(j)].join(' + ') + ' = 1',
  );
  const widths = single.slice(0, -1).map((patch, i) => {
    const row = later(i).map(({ patch: other, j }) => `${other.width} ${joins(i, j)}`);
    return `${row.join(' + ')} - ${stripWidth - patch.width} ${opens(i)} <= 0`;
  });
  const binaries = single.flatMap((_, i) => [opens(i), ...later(i).map(({ j }) => joins(i, j))]);
  return [
    'Minimize',
    single.map((patch, i) => `${patch.height} ${opens(i)}`).join(' + '),
    'Subject To',
    ...[...placed, ...widths].map((row, index) => `r${index}: ${row}`),
    'Binary',
    binaries.join(' '),
    'End',
  ].join('\n');
}

describe('strips of ten patches that may not turn, compared with integer programming', () => {
  it('finds the height that HiGHS proves optimal in at least 95% of 20', async () => {
    const highs = await loadHighs();
    let optimal = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const problem = smallProblem(seed, 10, false);
      const least = Math.round(highs.solve(levelModel(problem)).ObjectiveValue);
      const { height, lowerBound } = answerAfter(problem, '2-stage', STEPS);
      expect(height).toBeGreaterThanOrEqual(least);
      expect(lowerBound).toBeLessThanOrEqual(least);
      if (height === least) optimal++;
    }
    expect(optimal).toBeGreaterThanOrEqual(19);
  });
});
