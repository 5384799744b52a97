import { sizeWords } from '#renderer/text/size-words';
import { describe, expect, it } from 'vitest';
import type { JobPlan } from '#core/cutting/tree/cutting-job';
import {
  gapWords,
  helpWords,
  purchaseGapWords,
} from '#renderer/features/cutting/planning/cutting-plan-words';
import { fabric, INCH, job, patch, piece, plansAfter } from '#test/helpers/cutting-jobs';

const display = { system: 'inch', inchStep: 8 } as const;
const plan = (gap: number): JobPlan => ({
  ...plansAfter(job([fabric([piece('p', 20, 30)])], [patch('a', [4, 5], 8)]), 100).leastFabric,
  gap,
});

describe('how good a plan is, in words', () => {
  it('compares a plan with its patches alone', () => {
    expect(gapWords(plan(0))).toBe('No fabric wasted. This is as good as it gets.');
    expect(gapWords(plan(0.0312))).toBe(
      'Uses 3.1% more fabric than the patches alone. Often no plan can do better.',
    );
    expect(gapWords(plan(0.2091))).toMatch(/^Uses 21% more fabric/);
    expect(gapWords(plan(2.43))).toMatch(/^Uses 3\.4 times the fabric/);
    expect(gapWords({ ...plan(0), leastArea: 0 })).toBe('');
  });

  it('says that no fabric is wasted only when none is', () => {
    expect(gapWords(plan(0.0003))).toMatch(/^Uses less than 0\.1% more fabric/);
  });

  it('says how good a length to buy is only when a least length is proved', () => {
    const bought = { fabric: 'f', width: 42 * INCH, exactLength: 32 * INCH, length: 36 * INCH };
    expect(purchaseGapWords({ ...bought, leastLength: 0 }, 0, display)).toBe('');
    expect(purchaseGapWords({ ...bought, leastLength: 32 * INCH }, 0, display)).toMatch(
      /takes 32 in, and no plan/,
    );
    expect(purchaseGapWords({ ...bought, leastLength: 30 * INCH }, INCH, display)).toMatch(
      /^Takes at most 3\.4% more than the best plan of this kind, which needs 31 in or more\.$/,
    );
  });
});

describe('sizes and help, in words', () => {
  it('give the unit once, and round up what must fit', () => {
    expect(sizeWords({ width: 2.5 * INCH, length: 4.5 * INCH }, display)).toBe('2½ × 4½ in');
    const helps = [
      { code: 'turn-it' },
      { code: 'piece-it' },
      { code: 'wider-fabric', width: 44 * INCH + 1 },
    ] as const;
    expect(helpWords(helps, display)).toBe(
      'Let it be turned sideways, piece it from two or choose fabric 44⅛ in wide or wider.',
    );
    expect(helpWords([], display)).toBe('');
  });
});
