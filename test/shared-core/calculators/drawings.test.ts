import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '#core/calculators/calculator';
import { calculators } from '#core/calculators/registry';
import type { Diagram } from '#core/calculators/diagram';
import { pointDistance } from '#core/geometry/point';
import { anyInputOf } from '#test/helpers/any-input';
import { anyMeasurements } from '#test/helpers/measurements';

/** A dimension line is as long as the number written on it, so that every part of the drawing is to one scale. */
function expectToScale({ parts }: Diagram): void {
  for (const part of parts) {
    if (part.part !== 'dimension') continue;
    const { from, to, length } = part;
    expect(Math.abs(pointDistance(from, to) - length), JSON.stringify(part)).toBeLessThanOrEqual(1);
  }
}

describe.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
  'the drawing of %s',
  (_name, calculator: Calculator) => {
    it('is to scale for any project', () => {
      fc.assert(
        fc.property(anyMeasurements, (measurements) => {
          const answer = calculator.calculate(calculator.fromProject(measurements));
          if (answer.ok && answer.value.diagram !== null) expectToScale(answer.value.diagram);
        }),
        { numRuns: 40 },
      );
    });

    it('is to scale for whatever its input lets through', () => {
      fc.assert(
        fc.property(anyInputOf(calculator.input), (raw) => {
          const input = calculator.input.safeParse(raw);
          const answer = input.success ? calculator.calculate(input.data) : null;
          if (answer?.ok === true && answer.value.diagram !== null) expectToScale(answer.value.diagram);
        }),
        { numRuns: 100 },
      );
    });
  },
);
