import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculation, Calculator } from '#core/calculators/calculator';
import type { Quantity } from '#core/calculators/explanation';
import { calculators } from '#core/calculators/registry';
import { anyInputOf } from '#test/helpers/any-input';
import { anyMeasurements } from '#test/helpers/measurements';
import { mapLengths } from '#test/helpers/map-lengths';

/** These work with rates by the inch, grams, stitches an inch and thread by the area. */
const BY_THE_INCH: readonly string[] = [
  'longarm-price',
  'machine-thread',
  'package-weight',
  'quilting-thread',
];
/** What shops cut keeps its size, and a leftover too small to see counts as none. */
const AS_LARGE_AS_EVER: readonly string[] = [
  'What to cut it from',
  'How to do it',
  'Common mattresses, with the same drop',
];
/** The longest piece of fabric is as long as ever, so that a way or a size past it is left out; and like strips are listed as one. */
const MAY_LEAVE_OUT: readonly string[] = ['outer-binding', 'bias-strips'];

function quantitiesOf({ figures, tables, explanation }: Calculation): readonly Quantity[] {
  return [
    ...figures.map(({ quantity }) => quantity),
    ...tables.filter(({ title }) => !AS_LARGE_AS_EVER.includes(title)).flatMap(({ rows }) => rows.flat()),
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
    case 'weight':
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

/** Percents as makers write them: rounding forgives a millionth of a unit, which is as large as ever. */
function withTwoDecimals(input: object): object {
  const text = JSON.stringify(input, (_name, value: unknown) =>
    typeof value === 'number' ? Number(value.toFixed(2)) : value,
  );
  return JSON.parse(text) as object;
}

/** What comes out of one input unlike what comes out of it twice as large; nothing where either is refused. */
function unlikeParts(calculator: Calculator, input: object): readonly unknown[] {
  const twice = mapLengths(calculator.input, input, (length) => 2 * length) as object;
  const [once, again] = [calculator.calculate(input), calculator.calculate(twice)];
  if (!once.ok || !again.ok) return [];
  const [small, large] = [quantitiesOf(once.value), quantitiesOf(again.value)];
  if (large.length !== small.length && MAY_LEAVE_OUT.includes(calculator.name)) return [];
  expect(large).toHaveLength(small.length);
  return small.flatMap((one, at) => (isAlike(one, large[at]!) ? [] : [[one, large[at]]]));
}

describe.each(
  calculators
    .filter(({ name }) => !BY_THE_INCH.includes(name))
    .map((calculator) => [calculator.name, calculator] as const),
)(
  '%s, twice as large with twice the seams and steps, comes out twice as large',
  (_name, calculator: Calculator) => {
    it('for any project', () => {
      fc.assert(
        fc.property(anyMeasurements, (measurements) => {
          expect(unlikeParts(calculator, calculator.fromProject(measurements))).toEqual([]);
        }),
        { numRuns: 20 },
      );
    });

    it('for whatever its input lets through', () => {
      fc.assert(
        fc.property(anyInputOf(calculator.input), (raw) => {
          const input = calculator.input.safeParse(raw);
          fc.pre(input.success);
          // A quarter of each length, so that twice it is no longer than a length may be; without what is fixed in inches: the
          // settings of cutting, and the quarter yard for a one-way print.
          const small = mapLengths(calculator.input, input.data, (length) => Math.ceil(length / 4)) as object;
          const exact = {
            ...withTwoDecimals(small),
            ...('rounding' in small ? { rounding: 'exact' } : {}),
            ...('isOneWay' in small ? { isOneWay: false } : {}),
          };
          expect(unlikeParts(calculator, exact)).toEqual([]);
        }),
        { numRuns: 40 },
      );
    });
  },
);
