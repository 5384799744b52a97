import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '#core/calculators/calculator';
import { readInput } from '#core/calculators/read-input';
import { calculators } from '#core/calculators/registry';
import { UNITS_PER_INCH, UNITS_PER_MILLIMETER } from '#core/units/length';
import { anyInputOf } from '#test/helpers/any-input';
import { mapLengths } from '#test/helpers/map-lengths';

const inInches = (units: number) => `${(units / UNITS_PER_INCH).toFixed(8)} in`;
const inCentimeters = (units: number) => `${(units / UNITS_PER_MILLIMETER / 10).toFixed(8)} cm`;
const inBareMillimeters = (units: number) => (units / UNITS_PER_MILLIMETER).toFixed(6);

describe.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
  'the input of %s',
  (_name, calculator: Calculator) => {
    it('is the same, typed in inches, in centimeters or in bare millimeters', () => {
      fc.assert(
        fc.property(anyInputOf(calculator.input), (raw) => {
          const input = calculator.input.safeParse(raw);
          fc.pre(input.success);
          const typed = (write: (units: number) => string) =>
            readInput(calculator.input, mapLengths(calculator.input, input.data, write), 'mm');
          for (const write of [inInches, inCentimeters, inBareMillimeters])
            expect(typed(write)).toEqual({ ok: true, value: input.data });
        }),
        { numRuns: 15 },
      );
    });
  },
);
