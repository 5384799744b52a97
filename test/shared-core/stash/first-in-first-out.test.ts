import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstInFirstOut, type StockStep } from '#core/stash/first-in-first-out';
import { costAgain } from '#core/stash/replacement';

type Step = StockStep<number>;
const came = (area: number, costMinor: number | null): Step => ({ kind: 'in', area, costMinor });
const known = (minor: number) => ({ minor, unpricedArea: 0 });
const went = (area: number, use = 0): Step => ({ kind: 'out', area, use });

describe('the cost of fabric, first in, first out', () => {
  test('charges the oldest fabric first, at its own cost', () => {
    // 10 at 1.00 and 10 at 3.00: 15 used are 10 of the first and 5 of the second (arithmetic).
    const { used, left } = firstInFirstOut([came(10, 1_000), came(10, 3_000), went(15), went(5)]);
    expect(used.map(({ cost }) => cost.minor)).toEqual([2_500, 1_500]);
    expect(left).toEqual([]);
  });

  test('loses no cent when a cost does not divide evenly', () => {
    const { used, left } = firstInFirstOut([came(3, 100), went(1), went(1)]);
    expect(used.map(({ cost }) => cost.minor)).toEqual([33, 34]);
    expect(left).toEqual([{ area: 1, cost: known(33) }]);
  });

  test('charges fabric used before any was bought to the next purchase', () => {
    const { used, left } = firstInFirstOut([went(4, 7), came(10, 1_000)]);
    expect(used).toEqual([{ use: 7, cost: known(400) }]);
    expect(left).toEqual([{ area: 6, cost: known(600) }]);
  });

  test('costs nothing when no fabric came in', () => {
    expect(firstInFirstOut([went(4, 7)])).toEqual({ used: [{ use: 7, cost: known(0) }], left: [] });
  });

  test('says of how much the cost is not known, on both sides', () => {
    const { used, left } = firstInFirstOut([came(10, null), came(10, 1_000), went(4), went(8), went(1)]);
    expect(used.map(({ cost }) => cost)).toEqual([
      { minor: 0, unpricedArea: 4 },
      { minor: 200, unpricedArea: 6 },
      { minor: 100, unpricedArea: 0 },
    ]);
    expect(left).toEqual([{ area: 7, cost: known(700) }]);
  });

  test('stays exact when area times price is more than a double can hold', () => {
    const bolt = 96_000_000 * 341_376;
    const { used, left } = firstInFirstOut([came(bolt, 99_999_999), went(bolt / 3), went(bolt / 3)]);
    expect(used.map(({ cost }) => cost.minor)).toEqual([33_333_333, 33_333_333]);
    expect(left).toEqual([{ area: bolt / 3, cost: known(33_333_333) }]);
  });
});

const step: fc.Arbitrary<Step> = fc.oneof(
  fc.record({
    kind: fc.constant('in' as const),
    area: fc.integer({ min: 1, max: 40 }),
    costMinor: fc.option(fc.nat(500)),
  }),
  fc.record({ kind: fc.constant('out' as const), area: fc.integer({ min: 0, max: 40 }), use: fc.nat(5) }),
);
const sum = (numbers: readonly number[]): number => numbers.reduce((so, one) => so + one, 0);

describe('any sequence of fabric in and out', () => {
  test('conserves area and money exactly', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        const { used, left } = firstInFirstOut(steps);
        const paid = sum(steps.map((one) => (one.kind === 'in' ? (one.costMinor ?? 0) : 0)));
        expect(sum(used.map(({ cost }) => cost.minor)) + sum(left.map(({ cost }) => cost.minor))).toBe(paid);
        const balance = sum(steps.map((one) => (one.kind === 'in' ? one.area : -one.area)));
        expect(sum(left.map(({ area }) => area))).toBe(Math.max(0, balance));
        const unpriced = sum(
          steps.map((one) => (one.kind === 'in' && one.costMinor === null ? one.area : 0)),
        );
        expect(sum([...used, ...left].map(({ cost }) => cost.unpricedArea))).toBe(unpriced);
        expect(used.every(({ cost }) => cost.minor >= 0)).toBe(true);
      }),
    );
  });

  test('agrees with a queue of single units within one minor unit for each purchase', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        const units: number[] = [];
        const owed: number[] = [];
        const costs: number[] = [];
        for (const one of steps) {
          if (one.kind === 'in')
            units.push(...Array.from({ length: one.area }, () => (one.costMinor ?? 0) / one.area));
          else {
            owed.push(...Array.from({ length: one.area }, () => costs.length));
            costs.push(0);
          }
          while (units.length > 0 && owed.length > 0) {
            const who = owed.shift() ?? 0;
            costs[who] = (costs[who] ?? 0) + (units.shift() ?? 0);
          }
        }
        const purchases = steps.filter(({ kind }) => kind === 'in').length;
        const { used } = firstInFirstOut(steps);
        used.forEach(({ cost: { minor } }, index) =>
          expect(Math.abs(minor - (costs[index] ?? 0))).toBeLessThanOrEqual(purchases + 1e-6),
        );
      }),
    );
  });
});

test('replacement cost follows the area, to the nearest minor unit', () => {
  expect(costAgain(3, { minor: 1_000, area: 2 })).toBe(1_500);
  expect(costAgain(1, { minor: 1_000, area: 3 })).toBe(333);
  expect(costAgain(1, { minor: 1_000, area: 0 })).toBe(0);
});
