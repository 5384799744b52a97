import { describe, expect, it } from 'vitest';
import type { Calculator } from '#core/calculators/calculator';
import { answerCalculator } from '#core/calculators/complete-input';
import { calculators } from '#core/calculators/registry';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';

const LONG = ['9', ' ', 'a', '('].map((letter) => letter.repeat(10_000_000));

const HOSTILE: readonly unknown[] = [
  undefined,
  null,
  NaN,
  Infinity,
  -Infinity,
  1e300,
  -1e300,
  -1,
  0.5,
  '',
  ' ',
  '-5',
  '1e300',
  'NaN',
  '1/0',
  '5 kg',
  '5 EUR',
  '5 in 5 cm',
  ...LONG,
  true,
  [],
  [[[[[]]]]],
  {},
  Array.from({ length: 100_000 }, () => 1),
  Symbol('x'),
  10n,
  () => 1,
];

/** Never a number for a length, a count, a share or a rate, and of no list or choice. */
const NOTHING_AT_ALL: readonly unknown[] = [NaN, Infinity, -Infinity, 1e300, -1e300];

function isGroup(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

describe.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
  '%s',
  (_name, calculator: Calculator) => {
    const fields = Object.keys(calculator.fromProject(SAMPLE_MEASUREMENTS));

    it.each(fields)('answers, or says what it expected, whatever is put into %s', (field) => {
      for (const value of HOSTILE) {
        const answer = answerCalculator(calculator, SAMPLE_MEASUREMENTS, { [field]: value });
        if (answer.ok || answer.error.code === 'refused') {
          expect(NOTHING_AT_ALL).not.toContain(value);
          continue;
        }
        for (const { path, read, expected } of answer.error.fields) {
          expect(fields).toContain(path[0]);
          expect(read.length).toBeLessThan(90);
          expect(expected).not.toBe('');
        }
      }
    });

    it('says of a field it does not have that it does not', () => {
      const answer = answerCalculator(calculator, SAMPLE_MEASUREMENTS, { [`${fields[0] ?? ''}X`]: 1 });
      expect(answer).toMatchObject({ ok: false, error: { code: 'invalid-input' } });
    });

    it('takes nothing but a group of fields', () => {
      for (const value of HOSTILE.filter((one) => !isGroup(one))) {
        const answer = answerCalculator(calculator, SAMPLE_MEASUREMENTS, value);
        expect(answer).toMatchObject({ ok: false, error: { code: 'invalid-input' } });
      }
    });
  },
);
