import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '#core/calculators/calculator';
import { calculators } from '#core/calculators/registry';
import { isMetByItem, type Need } from '#core/domain/need';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { lengthFromInches } from '#core/units/length';
import { anyInputOf } from '#test/helpers/any-input';
import { anyMeasurements } from '#test/helpers/measurements';
import { type NumericField, numericFields, withNumber } from '#test/helpers/numeric-fields';

/**
 * Numbers that do not say how much is asked for: the fabric there is, how it is printed and sold, the steps of the ruler and how
 * it is sewn. More of them may need less fabric. Every other number is held, in a new calculator too.
 */
const NOT_ASKED: readonly string[] = [
  ...['fabricWidth', 'wideWidth', 'pieceWidth', 'pieceLength', 'atHand', 'shortestStrip'],
  ...['packages.width', 'packages.length', 'rolls.width', 'strips.length', 'strips.count'],
  ...['repeatAcross', 'repeatAlong', 'printRepeat'],
  ...['cutStep', 'yardageStep', 'squareStep', 'lengthStep'],
  ...['stitchLength', 'threadLength'],
];

/** Real exceptions, by calculator and field, and why more of it may need less. */
const MAY_NEED_LESS: readonly (readonly [calculator: string, field: string, why: string])[] = [
  ['*', 'outline.cornerRadius', 'a rounder corner is shorter to go around'],
  ['patch-size', 'unit.width', 'a thin triangle of half a rectangle has a longer point than a wider one'],
  ['patch-size', 'unit.length', 'a thin triangle of half a rectangle has a longer point than a wider one'],
  ['top', 'blocks.units.unit.width', 'as in patch-size'],
  ['top', 'blocks.units.unit.length', 'as in patch-size'],
  [
    'top',
    'layout.rings.width',
    'fewer of the longer pieces lie in a strip, which can leave room for another ring',
  ],
  ['wedge-ring', 'wedges', 'more wedges are narrower, and pack better'],
  ['wedge-ring', 'innerRadius', 'the ring is narrower'],
  ['prairie-points', 'height', 'larger points are wider, and fewer go around'],
  ['prairie-points', 'seamAllowance', 'the square is rounded up, which can make the point wider'],
  ['ruffle', 'ruffle.spacing', 'pleats farther apart are fewer'],
  ['hanging-sleeve', 'outline.length', 'an oval that is longer is narrower just below its top'],
  ['hanging-sleeve', 'sideGap', 'the sleeve ends farther from the sides'],
  ['hanging-sleeve', 'sleeves', 'two sleeves leave a gap between them'],
  ['quilting-thread', 'spacing', 'lines farther apart are fewer'],
  ['hand-finish', 'seam', 'the stitching lies farther inside the edge'],
];

/** Kinds that stand for one another: batting comes from a package or, where none is large enough, from a roll. */
const IN_PLACE_OF: Readonly<Record<string, string>> = {
  'batting-package': 'batting',
  'wide-backing': 'backing',
};

interface More {
  /** Which of the numbers is raised, as a share of all of them. */
  readonly which: number;
  /** By how much of itself; nothing is the smallest amount there is. */
  readonly by: number;
}

const anyMore: fc.Arbitrary<More> = fc.record({
  which: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  by: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 2, noNaN: true })),
});

function nameOf({ path }: NumericField): string {
  return path.filter((key) => typeof key === 'string').join('.');
}

function isAsked(calculator: Calculator, field: NumericField): boolean {
  const name = nameOf(field);
  const isException = MAY_NEED_LESS.some(
    ([of, less]) => (of === '*' || of === calculator.name) && less === name,
  );
  return !NOT_ASKED.includes(name) && !isException;
}

function raised({ value, maximum, isWhole }: NumericField, by: number): number {
  const more = Math.min(
    maximum,
    value + Math.max(isWhole ? 1 : 0, (value === 0 ? lengthFromInches(1) : value) * by),
  );
  return isWhole ? Math.floor(more) : more;
}

/** Area or length of all that is bought of a kind; null where there is no answer. */
function bought(calculator: Calculator, input: object): ReadonlyMap<string, number> | null {
  const answer = calculator.calculate(input);
  if (!answer.ok) return null;
  const sums = new Map<string, number>();
  for (const need of calculator.needs?.(input, answer.value.details, lengthFromInches(42)) ?? []) {
    const kind = `${IN_PLACE_OF[need.kind] ?? need.kind} ${need.name}`;
    sums.set(kind, (sums.get(kind) ?? 0) + amountOf(need));
  }
  return sums;
}

function amountOf({ amount, fabricWidth, extraPercent, package: sold }: Need): number {
  if (sold !== null) return sold.width * sold.length;
  if (isMetByItem(amount)) return amount.length;
  const length = lengthFor(amount, { width: fabricWidth, turning: 'any' }) ?? Number.NaN;
  return length * fabricWidth * (1 + extraPercent / 100);
}

/** What less is bought of although more is asked for. */
function boughtLess(calculator: Calculator, input: object, { which, by }: More): readonly string[] {
  const fields = numericFields(calculator.input, input).filter((field) => isAsked(calculator, field));
  const field = fields[Math.floor(which * fields.length)];
  if (field === undefined) return [];
  const more = calculator.input.safeParse(withNumber(input, field.path, raised(field, by)));
  if (!more.success) return [];
  const [before, after] = [bought(calculator, input), bought(calculator, more.data)];
  if (before === null || after === null) return [];
  return [...before].flatMap(([kind, amount]) => {
    const now = after.get(kind) ?? 0;
    return now >= amount * (1 - 1e-9) - 1
      ? []
      : [`${nameOf(field)}: ${kind} ${String(amount)} -> ${String(now)}`];
  });
}

describe.each(
  calculators.filter((one) => 'needs' in one).map((calculator) => [calculator.name, calculator] as const),
)('asked for more of anything, %s', (_name, calculator) => {
  it('needs no less fabric, for any project', () => {
    fc.assert(
      fc.property(anyMeasurements, anyMore, (measurements, more) => {
        expect(boughtLess(calculator, calculator.fromProject(measurements), more)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  it('needs no less fabric, for whatever its input lets through', () => {
    fc.assert(
      fc.property(anyInputOf(calculator.input), anyMore, (raw, more) => {
        const input = calculator.input.safeParse(raw);
        if (input.success) expect(boughtLess(calculator, input.data, more)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});

it('finds the numbers of an input, and names those that may need less', () => {
  const names = new Set(
    calculators.flatMap((calculator) =>
      fc
        .sample(anyInputOf(calculator.input), { numRuns: 200, seed: 1 })
        .flatMap((input) => numericFields(calculator.input, input as object).map(nameOf)),
    ),
  );
  for (const name of [...NOT_ASKED, ...MAY_NEED_LESS.map(([, field]) => field)])
    expect(names).toContain(name);
});
