import { describe, expect, it } from 'vitest';
import { pieceKindSchema } from '#core/domain/stash';
import { countOfLength, measureOfKind, ONE_THING } from '#core/domain/stash-kind';
import { lengthFromInches } from '#core/units/length';

describe('how a kind is told', () => {
  it('is by length off the roll, as one piece, as a pack of one size, or by number alone', () => {
    const told = (measure: string) =>
      pieceKindSchema.options.filter((kind) => measureOfKind(kind) === measure);
    expect(told('length')).toEqual(['yardage', 'bias-made-up', 'backing', 'wide-backing', 'batting']);
    expect(told('pack')).toEqual(['precut-strips', 'precut-squares']);
    expect(told('count')).toEqual(['thread', 'needles', 'notions']);
    expect(told('piece')).toContain('batting-package');
  });

  it('counts by the length of one, to hundredths', () => {
    expect(countOfLength(lengthFromInches(100), lengthFromInches(2.5))).toBe(40);
    expect(countOfLength(3.5 * ONE_THING, ONE_THING)).toBe(3.5);
    expect(countOfLength(1, lengthFromInches(3))).toBe(0);
  });
});
