import { sizeWords } from '#renderer/text/cut-words';
import { describe, expect, it } from 'vitest';
import type { JobPlan } from '#core/cutting/tree/cutting-job';
import {
  gapWords,
  helpWords,
  purchaseGapWords,
} from '#renderer/features/cutting/planning/plan-quality-words';
import { fabric, INCH, job, patch, piece, plansAfter } from '#test/helpers/cutting-jobs';

const display = { system: 'inch', inchStep: 8 } as const;
const plan = (gap: number): JobPlan => ({
  ...plansAfter(job([fabric([piece('p', 20, 30)])], [patch('a', 4, 5, 8)]), 100).leastFabric,
  gap,
});

describe('how good a plan is, in words', () => {
  it('is told against what no plan can go below', () => {
    expect(gapWords(plan(0))).toBe('Not a thread is wasted: nothing can be better.');
    expect(gapWords(plan(0.0312))).toMatch(/^At most 3\.1 % from the best possible/);
    expect(gapWords(plan(0.2001))).toMatch(/^At most 21 %/);
    expect(gapWords(plan(2.43))).toMatch(/^It uses 3\.4 times the fabric/);
    expect(gapWords({ ...plan(0), leastArea: 0 })).toBe('');
  });

  it('is told of a length to buy only where a least length was proved', () => {
    const bought = { fabric: 'f', width: 42 * INCH, exactLength: 32 * INCH, length: 36 * INCH };
    expect(purchaseGapWords({ ...bought, leastLength: 0 }, 0, display)).toBe('');
    expect(purchaseGapWords({ ...bought, leastLength: 32 * INCH }, 0, display)).toMatch(
      /takes 32 in, and no plan/,
    );
    expect(purchaseGapWords({ ...bought, leastLength: 30 * INCH }, INCH, display)).toMatch(
      /^At most 3\.3 % from the best of this kind, which needs 31 in or more\.$/,
    );
  });
});

describe('sizes and help, in words', () => {
  it('say the unit once and round what must fit upwards', () => {
    expect(sizeWords({ width: 2.5 * INCH, length: 4.5 * INCH }, display)).toBe('2½ × 4½ in');
    const helps = [
      { code: 'turn-it' },
      { code: 'piece-it' },
      { code: 'wider-fabric', width: 44 * INCH + 1 },
    ] as const;
    expect(helpWords(helps, display)).toBe(
      'Let it be turned, piece it from two or choose fabric 44⅛ in wide or wider.',
    );
    expect(helpWords([], display)).toBe('');
  });
});
