import { describe, expect, it } from 'vitest';
import type { CutCheck } from '#core/cutting/check/check-cut-plan';
import type { CutTree } from '#core/domain/cutting-plan';
import { areCuttable, checkCutPlan } from '#core/cutting/check/check-cut-plan';

const patch = (index: number, width: number, height: number, turned = false): CutTree => {
  return { kind: 'patch', patch: index, width, height, turned };
};
const rest = (width: number, height: number): CutTree => ({ kind: 'rest', width, height, use: 'scrap' });
const across = (width: number, height: number, ...parts: CutTree[]): CutTree => {
  return { kind: 'split', direction: 'across', width, height, parts };
};
const along = (width: number, height: number, ...parts: CutTree[]): CutTree => {
  return { kind: 'split', direction: 'along', width, height, parts };
};

const check: CutCheck = {
  width: 10,
  height: 6,
  patches: [
    { width: 4, height: 3, copies: 2, mayTurn: false },
    { width: 10, height: 3, copies: 1, mayTurn: true },
  ],
  rule: '2-stage',
  needsAllCopies: true,
};
const sound = across(10, 6, along(10, 3, patch(0, 4, 3), patch(0, 4, 3), rest(2, 3)), patch(1, 10, 3));

const codes = (tree: CutTree, changes: Partial<CutCheck> = {}) =>
  checkCutPlan(tree, { ...check, ...changes }).map(({ code }) => code);

describe('the checker of cut plans', () => {
  it('finds no fault in a sound layout', () => {
    expect(codes(sound)).toEqual([]);
  });

  it('finds parts that do not fill their fabric', () => {
    const gap = across(10, 6, along(10, 3, patch(0, 4, 3), patch(0, 4, 3)), patch(1, 10, 3));
    expect(codes(gap)).toContain('tree-has-gap');
  });

  it('finds a patch that reaches beyond the fabric', () => {
    const far = across(10, 6, patch(1, 10, 3), along(10, 6, patch(0, 4, 6), patch(0, 4, 6), rest(2, 6)));
    expect(codes(sound, { height: 5 })).toContain('tree-has-gap');
    expect(codes(far)).toEqual(expect.arrayContaining(['tree-has-gap', 'outside']));
  });

  it('finds a patch of the wrong size', () => {
    const small = across(10, 6, along(10, 3, patch(0, 4, 3), patch(0, 3, 3), rest(3, 3)), patch(1, 10, 3));
    expect(codes(small)).toEqual(['wrong-size']);
  });

  it('finds missing and extra copies, but no missing ones where the piece may hold only some', () => {
    const patches = check.patches.map((type) => ({ ...type, copies: 3 }));
    expect(codes(sound, { patches })).toEqual(['wrong-copies', 'wrong-copies']);
    expect(codes(sound, { patches, needsAllCopies: false })).toEqual([]);
    expect(
      codes(sound, { patches: check.patches.map((type) => ({ ...type, copies: 1 })), needsAllCopies: false }),
    ).toEqual(['wrong-copies']);
  });

  it('finds a patch turned against its print, but allows a turned square', () => {
    const patches = [
      { width: 4, height: 3, copies: 1, mayTurn: false },
      { width: 4, height: 4, copies: 1, mayTurn: false },
    ];
    const tree = along(7, 4, patch(0, 3, 4, true), patch(1, 4, 4, true));
    expect(codes(tree, { width: 7, height: 4, patches })).toEqual(['turned-against-print']);
  });

  it('finds a third stage under the 2-stage rule', () => {
    const stacked = across(10, 6, along(10, 6, across(4, 6, patch(0, 4, 3), patch(0, 4, 3)), rest(6, 6)));
    const patches = check.patches.slice(0, 1);
    const tree = along(10, 6, across(4, 6, patch(0, 4, 3), patch(0, 4, 3)), patch(1, 6, 6));
    const both = [...patches, { width: 6, height: 6, copies: 1, mayTurn: false }];
    expect(codes(tree, { patches: both })).toEqual(['too-many-stages']);
    expect(codes(tree, { patches: both, rule: 'guillotine' })).toEqual([]);
    expect(codes(stacked, { patches, rule: 'guillotine' })).toEqual(['tree-has-gap']);
  });

  it('finds a cut longer than the ruler, unless it is the edge of a patch of the same length', () => {
    const patches = [{ width: 5, height: 3, copies: 4, mayTurn: false }];
    const column = across(5, 6, patch(0, 5, 3), patch(0, 5, 3));
    const tree = along(10, 6, column, column);
    expect(codes(tree, { patches, rule: 'guillotine', longestAlong: 5 })).toEqual(['cut-too-long']);
    expect(codes(tree, { patches, rule: 'guillotine', longestAlong: 6 })).toEqual([]);
    expect(codes(sound, { longestAlong: 2 })).toEqual([]);
  });

  it('rejects a pinwheel layout, which no cut from edge to edge can start, and accepts three of its patches', () => {
    const pinwheel = [
      { x: 0, y: 0, width: 2, height: 1 },
      { x: 2, y: 0, width: 1, height: 2 },
      { x: 1, y: 2, width: 2, height: 1 },
      { x: 0, y: 1, width: 1, height: 2 },
    ];
    expect(areCuttable(pinwheel)).toBe(false);
    expect(areCuttable(pinwheel.slice(0, 3))).toBe(true);
  });
});
