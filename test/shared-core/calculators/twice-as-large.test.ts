import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculation, Calculator } from '#core/calculators/calculator';
import type { Quantity } from '#core/calculators/explanation';
import { calculators } from '#core/calculators/registry';
import { anyMeasurements } from '#test/helpers/measurements';
import { mapLengths } from '#test/helpers/map-lengths';

/** What shops cut is as large as ever, and these two work with rates by the inch, grams and stitches an inch. */
const AS_LARGE_AS_EVER = 'From what it can be cut';
const BY_THE_INCH: readonly string[] = ['longarm-price', 'machine-thread'];

function quantitiesOf({ figures, tables, explanation }: Calculation): readonly Quantity[] {
  return [
    ...figures.map(({ quantity }) => quantity),
    ...tables.filter(({ title }) => title !== AS_LARGE_AS_EVER).flatMap(({ rows }) => rows.flat()),
    ...explanation.flatMap(({ terms, result }) => [...terms.map(({ quantity }) => quantity), result]),
  ];
}

/** The numbers of a quantity once all lengths are divided by `times`; words as they are. */
function scaledDown(quantity: Quantity, times: number): readonly (number | string)[] {
  switch (quantity.kind) {
    case 'length':
      return [quantity.exact / times];
    case 'size':
      return [quantity.width.exact / times, quantity.length.exact / times];
    case 'area':
      return [quantity.exact / times ** 2];
    case 'words':
      return [quantity.text];
    case 'count':
    case 'percent':
    case 'money':
    case 'minutes':
    case 'degrees':
    case 'number':
      return [quantity.exact];
  }
}

/** Lengths to a unit, since strips of nearly one length are listed as one in whole units; all else to the last bits. */
function isAlike(one: Quantity, other: Quantity): boolean {
  const [small, large] = [scaledDown(one, 1), scaledDown(other, 2)];
  const isLength = one.kind === 'length' || one.kind === 'size';
  return small.every((number, part) => {
    const twin = large[part];
    if (typeof number === 'string' || typeof twin !== 'number') return number === twin;
    return Math.abs(number - twin) <= (isLength ? 1 : 1e-9 * Math.max(1, Math.abs(number)));
  });
}

describe.each(
  calculators
    .filter(({ name }) => !BY_THE_INCH.includes(name))
    .map((calculator) => [calculator.name, calculator] as const),
)('%s', (_name, calculator: Calculator) => {
  it('knows no unit of measure: twice as large a piece, with twice the seams and steps, comes out twice as large', () => {
    fc.assert(
      fc.property(anyMeasurements, (measurements) => {
        const input = calculator.fromProject(measurements);
        const twice = mapLengths(calculator.input, input, (length) => 2 * length) as object;
        const [once, again] = [calculator.calculate(input), calculator.calculate(twice)];
        expect(again.ok).toBe(once.ok);
        if (!once.ok || !again.ok) return;
        const [small, large] = [quantitiesOf(once.value), quantitiesOf(again.value)];
        expect(large).toHaveLength(small.length);
        const unlike = small.flatMap((one, at) => (isAlike(one, large[at]!) ? [] : [[one, large[at]]]));
        expect(unlike).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });
});
