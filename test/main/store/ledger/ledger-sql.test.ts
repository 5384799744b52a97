import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { freeOf, isWholeCount } from '#core/domain/stash';
import { FREE_LENGTH } from '#main/store/ledger/ledger-sql';
import { inches, openWorkshop } from '#test/helpers/workshop';

describe('the free length of a piece', () => {
  test('is the same in SQL as in the core', () => {
    const select = openWorkshop()
      .context.store.database.prepare<[number, number], number>(
        `SELECT ${FREE_LENGTH} FROM (SELECT CAST(? AS INTEGER) AS there, CAST(? AS INTEGER) AS held)`,
      )
      .pluck();
    fc.assert(
      fc.property(fc.nat(96_000_000), fc.nat(96_000_000), (there, held) => {
        expect(freeOf({ there, held })).toBe(select.get(there, held));
      }),
    );
  });

  test('is what is there less what is set aside, and never less than zero', () => {
    expect(freeOf({ there: inches(72), held: inches(50) })).toBe(inches(22));
    expect(freeOf({ there: inches(72), held: inches(80) })).toBe(0);
  });

  test('includes for a project what is set aside for it', () => {
    expect(freeOf({ there: inches(72), held: inches(50) }, inches(50))).toBe(inches(72));
    expect(freeOf({ there: inches(72), held: inches(80) }, inches(20))).toBe(inches(12));
  });
});

test('fabric counted in items has a whole number of them; other fabric has any length', () => {
  expect(isWholeCount(inches(90), inches(18))).toBe(true);
  expect(isWholeCount(inches(91), inches(18))).toBe(false);
  expect(isWholeCount(inches(91), null)).toBe(true);
});
