import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Need, NeedAmount } from '#core/domain/need';
import { calculators } from '#core/calculators/registry';
import { lengthFromInches } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { anyInputOf } from '#test/helpers/any-input';

const buying = calculators.filter((one) => 'needs' in one);

/** Every number of an amount; each has to be above zero, or nothing would be bought. */
function numbersOf(amount: NeedAmount): readonly number[] {
  switch (amount.measure) {
    case 'patches':
      return amount.patches.length === 0
        ? [0]
        : amount.patches.flatMap(({ width, length, count }) => [width, length, count]);
    case 'strips':
      return [amount.strip, amount.needed];
    case 'thread':
    case 'notion':
      return [amount.length];
  }
}

/** Whether every patch can be cut from fabric of the width that the need names. */
function fits({ amount, fabricWidth }: Need): boolean {
  if (amount.measure !== 'patches') return true;
  return amount.patches.every(
    ({ width, length, mayTurn }) => width <= fabricWidth || (mayTurn && length <= fabricWidth),
  );
}

/** The area of all patches of fabric; 0 if something is asked for in another measure. */
function fabricArea(needs: readonly Need[]): number {
  return needs
    .filter(({ kind }) => kind === 'yardage')
    .flatMap(({ amount }) => (amount.measure === 'patches' ? amount.patches : []))
    .reduce((sum, { width, length, count }) => sum + width * length * count, 0);
}

describe.each(buying.map((calculator) => [calculator.name, calculator] as const))(
  'what %s puts on the shopping list',
  (_name, calculator) => {
    it('is never zero or less, comes from fabric as wide as it names, and is enough for the cutting plan', () => {
      fc.assert(
        fc.property(anyInputOf(calculator.input), (raw) => {
          const input = calculator.input.safeParse(raw);
          if (!input.success) return;
          const answer = calculator.calculate(input.data);
          if (!answer.ok) return;
          const needs = calculator.needs?.(input.data, answer.value.details, lengthFromInches(42)) ?? [];
          for (const need of needs) {
            expect(Math.min(...numbersOf(need.amount))).toBeGreaterThan(0);
            if (need.kind === 'yardage') expect(fits(need), JSON.stringify(need)).toBe(true);
          }
          const asked = fabricArea(needs);
          const patches = calculator.cuts?.(input.data, answer.value.details) ?? [];
          const cut = patches.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
          if (asked > 0 && patches.length > 0) expect(asked / cut).toBeGreaterThan(1 - 1e-9);
        }),
        { numRuns: 150, examples: [[calculator.fromProject(SAMPLE_MEASUREMENTS)]] },
      );
    });
  },
);
