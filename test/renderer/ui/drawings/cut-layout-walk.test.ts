import { describe, expect, test } from 'vitest';
import type { PlacedPatch } from '#core/cutting/tree/cut-plan';
import { patchAfterKey, patchUnder } from '#renderer/ui/drawings/cut-layout-walk';

const at = (x: number, y: number, width: number, height: number): PlacedPatch => ({
  ...{ x, y, width, height, patch: 0, turned: false },
});

/**
 * As drawn, with the length of the fabric to the right: two in the first strip, a tall one and one far behind it in the second.
 *
 *     0 | 2
 *     --+---+---
 *     1 | 2 | 3     (2 is as high as the fabric is wide)
 */
const PLACED = [at(0, 0, 10, 10), at(10, 0, 10, 10), at(0, 10, 20, 10), at(12, 20, 8, 10)];

const walk = (...keys: readonly string[]) =>
  keys.reduce<number | null>((current, key) => patchAfterKey(PLACED, current, key) ?? current, null);

describe('the keys on a drawn piece of fabric', () => {
  test('start at the first patch and go to the one beside it in the drawing', () => {
    expect(walk('ArrowRight')).toBe(0);
    expect(walk('ArrowRight', 'ArrowDown')).toBe(1);
    expect(walk('ArrowRight', 'ArrowDown', 'ArrowRight')).toBe(2);
    expect(walk('ArrowRight', 'ArrowDown', 'ArrowUp')).toBe(0);
    expect(walk('End', 'ArrowLeft')).toBe(2);
    expect(walk('End', 'ArrowLeft', 'ArrowLeft')).toBe(0);
  });

  test('follow the order of cutting if nothing is beside the patch, and stop at the ends', () => {
    expect(walk('End', 'ArrowUp')).toBe(2);
    expect(walk('End', 'ArrowRight')).toBe(3);
    expect(walk('Home', 'ArrowLeft')).toBe(0);
  });

  test('do nothing if they are other keys, or if there is no patch', () => {
    expect(patchAfterKey(PLACED, 0, 'a')).toBeUndefined();
    expect(patchAfterKey([], null, 'ArrowRight')).toBeUndefined();
  });
});

test('finds the patch under the pointer, and none over a leftover', () => {
  expect(patchUnder(PLACED, { x: 15, y: 5 })).toBe(1);
  expect(patchUnder(PLACED, { x: 5, y: 25 })).toBeNull();
});
