import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCuttingList } from '#core/cutting-list/read-cutting-list';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import {
  anyMeantList,
  type Manner,
  MANNERS,
  type MeantList,
  meantPatches,
} from '#test/helpers/written-lists';

function expectReadAsMeant(manner: Manner, list: MeantList): void {
  const reading = readCuttingList(manner.write(list), 'in');
  const unit = (size: number) =>
    manner.unit === 'eighths' ? lengthFromInches(size / 8) : lengthFromMillimeters(size);
  const marks = reading.lines.flatMap(({ text, marks: found }) =>
    found.map(({ code, from, to }) => `${code}: ${text.slice(from, to)}`),
  );
  expect(marks).toEqual([]);
  const read = reading.patches.map(({ shape, width, length, count, role }) => [
    shape,
    width,
    length,
    count,
    role?.toLowerCase(),
  ]);
  const meant = meantPatches(list, manner.hasDiagonals).map(({ shape, width, length, count, role }) => [
    shape,
    unit(width),
    unit(length),
    count,
    role.toLowerCase(),
  ]);
  expect(read).toEqual(meant);
}

describe('a list in any manner', () => {
  it('is written in twenty manners', () => {
    expect(new Set(MANNERS.map(({ name }) => name)).size).toBe(20);
  });

  it.each(MANNERS)('$name: says what was meant, with no mark', (manner) => {
    fc.assert(
      fc.property(anyMeantList, (list) => expectReadAsMeant(manner, list)),
      { numRuns: 40 },
    );
  });
});
