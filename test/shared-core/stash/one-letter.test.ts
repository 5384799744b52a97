import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { isWithinOneLetter } from '#core/stash/one-letter';

describe('a word typed with one slip', () => {
  it.each([
    ['kettel', 'kettle', 'two turned round'],
    ['ketle', 'kettle', 'one missing'],
    ['kettlle', 'kettle', 'one too many'],
    ['kattle', 'kettle', 'one wrong'],
    ['xkettle', 'kettle', 'one too many in front'],
    ['ettle', 'kettle', 'the first missing'],
    ['ketl', 'kettle', 'a beginning with one missing'],
    ['ekt', 'kettle', 'a beginning with two turned round'],
    ['kettlex', 'kettle', 'one too many at the end'],
  ])('%s is meant for %s: %s', (typed, word) => {
    expect(isWithinOneLetter(typed, word)).toBe(true);
  });

  it.each([
    ['kottal', 'kettle'],
    ['blue', 'brown'],
    ['kettlexx', 'kettle'],
    ['eltkte', 'kettle'],
  ])('%s is not meant for %s', (typed, word) => {
    expect(isWithinOneLetter(typed, word)).toBe(false);
  });

  it('agrees with the Damerau-Levenshtein distance to some beginning of the word (optimal string alignment, by table)', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(word, word, (typed, other) => {
        const beginnings = Array.from({ length: other.length + 1 }, (_one, length) => other.slice(0, length));
        expect(isWithinOneLetter(typed, other)).toBe(beginnings.some((part) => distance(typed, part) <= 1));
      }),
      { seed: 7, numRuns: 2_000 },
    );
  });
});

function distance(one: string, other: string): number {
  const table = [Array.from({ length: other.length + 1 }, (_at, column) => column)];
  for (let row = 1; row <= one.length; row += 1) {
    table[row] = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const isSame = one[row - 1] === other[column - 1];
      let least = Math.min(
        table[row - 1]![column]! + 1,
        table[row]![column - 1]! + 1,
        table[row - 1]![column - 1]! + (isSame ? 0 : 1),
      );
      if (row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1]) {
        least = Math.min(least, table[row - 2]![column - 2]! + 1);
      }
      table[row]![column] = least;
    }
  }
  return table[one.length]![other.length]!;
}
