import { describe, expect, test } from 'vitest';
import { cutSteps } from '#core/cutting/tree/cut-steps';
import type { JobPiece } from '#core/cutting/tree/cutting-job';
import { bolt42, fabric, INCH, job, patch, piece, plansAfter } from '#test/helpers/cutting-jobs';

/** A pack with this number of sheets, sizes in inches. */
const pack = (sheets: number, width: number, length: number, changes: Partial<JobPiece> = {}) =>
  piece('pack', width, length * sheets, { sheetLength: length * INCH, ...changes });

describe('a pack of sheets', () => {
  test('holds what fits its sheets, and no patch larger than one sheet', () => {
    const strips = fabric([pack(8, 42, 2.5)]);
    const { leastFabric } = plansAfter(
      job([strips], [patch('a', [2.5, 2.5], 40), patch('b', [5, 5], 1)]),
      200,
    );
    expect(leastFabric.unplaced).toMatchObject([{ patch: 'b', copies: 1, reason: 'longer-than-any-fabric' }]);
    const [cut] = leastFabric.pieces;
    // A strip of 42 in holds 16 patches of 2½ in, so 40 need three of the eight strips.
    expect(cut?.length).toBe(3 * 2.5 * INCH);
    expect(cut?.placed).toHaveLength(40);
    expect(cut?.tree).toMatchObject({ kind: 'sheets', parts: { length: 3 } });
  });

  test('counts as one piece, and the rest of a sheet is kept if it is large enough', () => {
    const squares = fabric([pack(42, 10, 10)]);
    const { simplestCuts } = plansAfter(job([squares], [patch('a', [6, 10], 5)]), 200);
    expect(simplestCuts.totals).toMatchObject({ pieces: 1, usedArea: 5 * 60 * INCH ** 2 });
    expect(simplestCuts.pieces[0]?.leftovers).toHaveLength(5);
  });

  test('is cut in stacks: sheets that are cut alike share their cuts, and no cut runs between sheets', () => {
    const squares = fabric([pack(42, 10, 10)]);
    const { simplestCuts } = plansAfter(job([squares], [patch('a', [5, 5], 32)]), 300);
    const [cut] = simplestCuts.pieces;
    expect(cutSteps(cut!.tree).map(({ length }) => length / INCH)).toEqual([40, 40]);
    // One cut across and one through each half, for each of two stacks of four.
    expect(cut).toMatchObject({ foldedCuts: 6, stages: 2 });
    expect(cut?.cuts).toHaveLength(8 * 3);
    expect(cut?.cuts.every(({ direction, y }) => direction === 'along' || y % (10 * INCH) !== 0)).toBe(true);
  });

  test('is planned on its side where its print runs across, sheet by sheet', () => {
    const strips = fabric([pack(4, 42, 2.5, { printRuns: 'across' })], { isDirectional: true });
    const { leastFabric } = plansAfter(job([strips], [patch('a', [2.5, 9], 12, { mayTurn: false })]), 300);
    expect(leastFabric.unplaced).toEqual([]);
    expect(leastFabric.pieces[0]?.placed.every(({ width, turned }) => width === 9 * INCH && turned)).toBe(
      true,
    );
  });

  test('keeps the sheets that are already cut, and plans the others beyond them', () => {
    const asked = [patch('a', [2.5, 2.5], 20)];
    const first = plansAfter(job([fabric([pack(8, 42, 2.5)])], asked), 200).simplestCuts.pieces[0]!;
    if (first.tree.kind !== 'sheets') throw new Error('No sheets');
    const [locked] = first.tree.parts;
    const begun = fabric([pack(8, 42, 2.5, { lockedParts: [locked!] })]);
    const again = plansAfter(job([begun], [patch('a', [2.5, 2.5], 50)]), 200).simplestCuts.pieces[0]!;
    expect(again.tree).toMatchObject({ kind: 'sheets', parts: { 0: locked } });
    expect(again.placed).toHaveLength(50);
    expect(again.length).toBe(4 * 2.5 * INCH);
    expect(again.cuts.some(({ isDone, y }) => isDone && y < 2.5 * INCH)).toBe(true);
    expect(again.cuts.filter(({ y }) => y >= 2.5 * INCH).every(({ isDone }) => !isDone)).toBe(true);
  });

  test('stays in the plan as it was cut when all its sheets are cut', () => {
    const whole = plansAfter(job([fabric([pack(1, 5, 5)])], [patch('a', [5, 5], 1)]), 50).simplestCuts
      .pieces[0]!;
    if (whole.tree.kind !== 'sheets') throw new Error('No sheets');
    const used = fabric([pack(1, 5, 5, { lockedParts: whole.tree.parts })], { toBuy: bolt42 });
    const { simplestCuts } = plansAfter(job([used], [patch('a', [5, 5], 3)]), 200);
    expect(simplestCuts.pieces.map(({ piece: id, placed }) => [id, placed.length])).toEqual([
      [undefined, 2],
      ['pack', 1],
    ]);
  });
});
