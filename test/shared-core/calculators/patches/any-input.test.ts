import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accuracy } from '#core/calculators/accuracy/accuracy';
import { formatQuantity, formatSentence } from '#core/calculators/format-quantity';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import { top } from '#core/calculators/top/top';
import type { Calculator } from '#core/calculators/calculator';
import { currencyFromCode } from '#core/units/money';
import { anyInputOf } from '#test/helpers/any-input';

const style = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('EUR'),
  locale: 'en',
} as const;

const piecing: readonly Calculator[] = [patchSize, top, accuracy];

describe.each(piecing)('$name', (calculator) => {
  it('answers or refuses any input that its schema accepts, in whole sentences', () => {
    let [asked, answered] = [0, 0];
    fc.assert(
      fc.property(anyInputOf(calculator.input), (raw) => {
        const input = calculator.input.parse(raw);
        const answer = calculator.calculate(input);
        asked += 1;
        answered += answer.ok ? 1 : 0;
        if (!answer.ok) {
          expect(formatSentence(answer.error, style)).not.toContain('{');
          return;
        }
        const { figures, tables, notes, explanation } = answer.value;
        for (const { quantity } of figures)
          expect(formatQuantity(quantity, style)).not.toMatch(/NaN|Infinity/);
        for (const { rows } of tables) rows.flat().forEach((cell) => formatQuantity(cell, style));
        for (const step of explanation) step.terms.forEach((term) => formatQuantity(term.quantity, style));
        for (const note of notes) expect(formatSentence(note, style)).not.toContain('{');
      }),
      { numRuns: 1_000 },
    );
    expect(answered).toBeGreaterThan(asked / 20);
  });

  it('gives the same answer for the same input', () => {
    fc.assert(
      fc.property(anyInputOf(calculator.input), (raw) => {
        const input = calculator.input.parse(raw);
        expect(calculator.calculate(input)).toEqual(calculator.calculate(structuredClone(input)));
      }),
      { numRuns: 30 },
    );
  });
});
