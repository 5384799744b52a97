import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysToCut } from '#core/stash/cut-rectangle';
import { lengthFromInches as inches, lengthFromUnits } from '#core/units/length';

const piece = (width: number, length: number) => ({ width: inches(width), length: inches(length) });

describe('a rectangle cut off a piece', () => {
  it('leaves two ways for a corner: along the width first, or along the length first', () => {
    // A fat quarter of 22 by 18 in, and 5 by 8 in off its corner.
    expect(waysToCut(piece(22, 18), piece(5, 8))).toEqual([
      { first: 'across', length: inches(8), leftovers: [piece(17, 8)], stays: piece(22, 10) },
      { first: 'along', length: inches(18), leftovers: [piece(17, 18), piece(5, 10)], stays: null },
    ]);
  });

  it('has one way off a side, off the end, and for the whole piece', () => {
    expect(waysToCut(piece(22, 18), piece(5, 18))).toEqual([
      { first: 'across', length: inches(18), leftovers: [piece(17, 18)], stays: null },
    ]);
    expect(waysToCut(piece(22, 18), piece(22, 5))).toEqual([
      { first: 'across', length: inches(5), leftovers: [], stays: piece(22, 13) },
    ]);
    expect(waysToCut(piece(22, 18), piece(22, 18))).toEqual([
      { first: 'across', length: inches(18), leftovers: [], stays: null },
    ]);
  });

  it('has none for a rectangle that is larger than the piece', () => {
    expect(waysToCut(piece(22, 18), piece(23, 1))).toEqual([]);
    expect(waysToCut(piece(22, 18), piece(1, 18.5))).toEqual([]);
  });

  it('loses no fabric: what is cut, left and kept is the piece, and every part fits the cut', () => {
    const side = fc.integer({ min: 1, max: 1_000_000 }).map(lengthFromUnits);
    fc.assert(
      fc.property(side, side, side, side, (width, length, wide, long) => {
        const wanted = { width: wide < width ? wide : width, length: long < length ? long : length };
        const area = (one: { width: number; length: number }) => one.width * one.length;
        for (const way of waysToCut({ width, length }, wanted)) {
          const parts = [wanted, ...way.leftovers, ...(way.stays === null ? [] : [way.stays])];
          expect(parts.reduce((sum, one) => sum + area(one), 0)).toBe(width * length);
          for (const leftover of way.leftovers) {
            expect(leftover.width).toBeLessThanOrEqual(width);
            expect(leftover.length).toBeLessThanOrEqual(way.length);
          }
        }
      }),
    );
  });
});
