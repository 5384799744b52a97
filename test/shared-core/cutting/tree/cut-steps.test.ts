import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CutTree } from '#core/domain/cutting-plan';
import { sheetsTree } from '#core/cutting/tree/cut-tree';
import { cutSteps, lengthCut } from '#core/cutting/tree/cut-steps';
import { anyJob, job, fabric, patch, piece, plansAfter } from '#test/helpers/cutting-jobs';

const rest = (height: number, use: 'leftover' | 'scrap' | 'margin'): CutTree => ({
  kind: 'rest',
  width: 40,
  height,
  use,
});
const strip = (height: number): CutTree => ({
  kind: 'patch',
  width: 40,
  height,
  patch: 0,
  turned: false,
});
const pieceOf = (...parts: readonly CutTree[]): CutTree => ({
  kind: 'split',
  width: 40,
  direction: 'across',
  height: parts.reduce((sum, part) => sum + part.height, 0),
  parts,
});

describe('the steps in which a piece is cut', () => {
  test('begin with the margin, include a scrap at the far end, and leave a leftover there uncut', () => {
    const scrapped = cutSteps(pieceOf(rest(1, 'margin'), strip(5), strip(6), rest(2, 'scrap')));
    expect(scrapped.map(({ from, length }) => [from, length])).toEqual([
      [0, 6],
      [6, 8],
    ]);
    const kept = cutSteps(pieceOf(rest(1, 'margin'), strip(5), rest(20, 'leftover')));
    expect(kept.map(({ from, length }) => [from, length])).toEqual([[0, 6]]);
    expect(kept[0]?.leftovers).toEqual([]);
  });

  test('are none where the piece is not cut', () => {
    expect(cutSteps(pieceOf(rest(1, 'margin'), rest(30, 'leftover')))).toEqual([]);
    expect(cutSteps(rest(30, 'leftover'))).toEqual([]);
    expect(cutSteps(rest(0, 'scrap'))).toEqual([]);
  });

  test('keep their settled parts, whatever rests are among them', () => {
    const tree = pieceOf(rest(1, 'leftover'), strip(5), rest(2, 'leftover'), strip(6), rest(9, 'leftover'));
    expect(cutSteps(tree, [3]).map(({ from, length }) => [from, length])).toEqual([
      [0, 8],
      [8, 6],
    ]);
  });

  test('count the patches of each strip, the most frequent first', () => {
    const plan = plansAfter(
      job([fabric([piece('p', 20, 30)])], [patch('a', [4, 5], 8), patch('b', [4, 5], 3)]),
      200,
    ).simplestCuts;
    const steps = cutSteps(plan.pieces[0]!.tree);
    const total = (index: number) =>
      steps
        .flatMap(({ patches }) => patches)
        .reduce((sum, one) => sum + (one.patch === index ? one.copies : 0), 0);
    expect([total(0), total(1)]).toEqual([8, 3]);
    for (const { patches } of steps) {
      const copies = patches.map((one) => one.copies);
      expect(copies).toEqual(copies.toSorted((a, b) => b - a));
    }
  });

  test('take sheets of a pack that are cut alike in stacks of four, with all their leftovers', () => {
    const [small, whole] = [pieceOf(strip(5), rest(5, 'leftover')), strip(10)];
    const pack = sheetsTree([small, small, small, small, small, whole]);
    const steps = cutSteps(pack);
    expect(steps.map(({ isStack, from, length }) => [isStack, from, length])).toEqual([
      [true, 0, 40],
      [true, 40, 10],
      [true, 50, 10],
    ]);
    expect(steps[0]?.leftovers.map(({ y, length }) => [y, length])).toEqual([
      [5, 5],
      [15, 5],
      [25, 5],
      [35, 5],
    ]);
    expect(cutSteps(pack, [1]).map(({ length }) => length)).toEqual([10, 40, 10]);
  });

  test('hold every patch and every leftover once, except the leftovers at the uncut end', () => {
    fc.assert(
      fc.property(anyJob, (asked) => {
        const { leastFabric, simplestCuts } = plansAfter(asked, 60);
        for (const { tree, placed, leftovers, length } of [...leastFabric.pieces, ...simplestCuts.pieces]) {
          const steps = cutSteps(tree);
          const copies = steps.flatMap(({ patches }) => patches).reduce((sum, one) => sum + one.copies, 0);
          expect(copies).toBe(placed.length);
          const taken = lengthCut(steps);
          const inSteps = steps.flatMap((step) => step.leftovers);
          const atTheEnd = leftovers.filter(({ y }) => y >= taken);
          expect(inSteps.length + atTheEnd.length).toBe(leftovers.length);
          expect(taken).toBeLessThanOrEqual(length);
          expect(placed.every(({ y, height }) => y + height <= taken)).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });
});
