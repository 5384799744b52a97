import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutList, type CutLine } from '#core/cutting/tree/cut-list';
import type { CutTree } from '#core/domain/cutting-plan';
import { cutSteps } from '#core/cutting/tree/cut-steps';
import { anyJob, plansAfter } from '#test/helpers/cutting-jobs';

const patch = (width: number, height: number, index = 0): CutTree => ({
  kind: 'patch',
  width,
  height,
  patch: index,
  turned: false,
});
const rest = (width: number, height: number, use: 'leftover' | 'scrap' | 'margin'): CutTree => ({
  kind: 'rest',
  width,
  height,
  use,
});
const split = (direction: 'across' | 'along', ...parts: readonly CutTree[]): CutTree => ({
  kind: 'split',
  direction,
  width: direction === 'along' ? parts.reduce((sum, { width }) => sum + width, 0) : parts[0]!.width,
  height: direction === 'across' ? parts.reduce((sum, { height }) => sum + height, 0) : parts[0]!.height,
  parts,
});
const brief = (lines: readonly CutLine[]) =>
  lines.map(({ depth, size, times, alike, result }) => [depth, size, times, alike, result.kind]);

describe('the list to cut by', () => {
  test('goes from the strip to its lengths to their trims, and counts equal parts', () => {
    const length = split('across', patch(5, 3), rest(5, 1, 'scrap'));
    const lines = cutList([
      rest(40, 1, 'margin'),
      split('along', patch(10, 4, 1), length, length, length, rest(15, 4, 'leftover')),
    ]);
    expect(brief(lines)).toEqual([
      [0, 1, 1, 1, 'rest'],
      [0, 4, 1, 1, 'part'],
      [1, 10, 1, 1, 'patch'],
      [1, 5, 3, 1, 'part'],
      [2, 3, 1, 3, 'patch'],
      [2, 1, 1, 3, 'rest'],
      [1, 15, 1, 1, 'rest'],
    ]);
  });

  test('is empty without parts', () => {
    expect(cutList([])).toEqual([]);
  });

  test('has every patch of a plan exactly once', () => {
    fc.assert(
      fc.property(anyJob, (asked) => {
        for (const { tree, placed } of plansAfter(asked, 40).leastFabric.pieces) {
          const lines = cutSteps(tree).flatMap(({ parts }) => cutList(parts));
          const patches = lines.filter(({ result }) => result.kind === 'patch');
          expect(patches.reduce((sum, { times, alike }) => sum + times * alike, 0)).toBe(placed.length);
        }
      }),
      { numRuns: 30 },
    );
  });
});
