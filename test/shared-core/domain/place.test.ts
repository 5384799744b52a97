import { describe, expect, it } from 'vitest';
import { isInPlace, placeNameSchema, placeNames, placePathSchema, placePathOf } from '#core/domain/place';

describe('a place in words', () => {
  it('is its names from the room down, whatever stands between them', () => {
    expect(placeNames(' Sewing room ,shelf 2,, bin ')).toEqual(['Sewing room', 'shelf 2', 'bin']);
    expect(placePathOf(['Sewing room', 'shelf 2'])).toBe('Sewing room, shelf 2');
    expect(placePathSchema.parse('Sewing room,shelf 2,')).toBe('Sewing room, shelf 2');
    expect(placePathSchema.parse(' , ')).toBe('');
    expect(placeNames('')).toEqual([]);
  });

  it('lies in itself and in the places above it, not in one whose name only begins alike', () => {
    const inside = (path: string) => isInPlace(path, 'Sewing room, shelf 2');
    expect(['Sewing room, shelf 2', 'Sewing room, shelf 2, bin'].map(inside)).toEqual([true, true]);
    expect(['Sewing room', 'Sewing room, shelf 21', 'shelf 2'].map(inside)).toEqual([false, false, false]);
  });

  it('is at most 120 characters, and one name has no comma', () => {
    expect(placePathSchema.safeParse('a'.repeat(121)).success).toBe(false);
    expect(placeNameSchema.safeParse('Shelf, 2').success).toBe(false);
    expect(placeNameSchema.safeParse('  ').success).toBe(false);
    expect(placeNameSchema.parse(' Shelf 2 ')).toBe('Shelf 2');
  });
});
