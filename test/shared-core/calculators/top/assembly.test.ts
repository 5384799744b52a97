import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rectangleAt } from '#core/calculators/patches/cut-shapes';
import { findBlock, lengthTerm, tooLarge, tooManyBlocks, unknownBlock } from '#core/calculators/top/assembly';
import { top } from '#core/calculators/top/top';
import { workOutTop } from '#core/calculators/top/work';
import { polygonArea } from '#core/geometry/polygon';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromMillimeters, UNITS_PER_INCH } from '#core/units/length';
import { METRIC_SETTINGS } from '#test/helpers/measurements';
import { areaOnlyIn } from '../patches/clipper-reference';
import { border, detailsFor, inches, ninePatch, plainBlock, rowsOf, topWith } from './top-input';

const outline = { shape: 'rectangle', width: inches(45), length: inches(62) } as const;

describe('the assembly of a top', () => {
  it('finds a block by its full name, and the first of two with the same name', () => {
    const blocks = [plainBlock('Plain two', 6), plainBlock('Plain', 9), plainBlock('Plain', 12)];
    expect(findBlock(blocks, 'Plain')?.width).toBe(inches(9));
    expect(findBlock(blocks, 'Plain two')?.width).toBe(inches(6));
    expect(findBlock(blocks, 'plain')).toBeUndefined();
  });

  it('refuses with a code, the field to change and the name of the block', () => {
    expect(unknownBlock('Gone', ['layout', 'block'])).toMatchObject({
      code: 'unknown-block',
      field: ['layout', 'block'],
      values: {},
    });
    const most = { kind: 'length', rounded: lengthFromMillimeters(50_000), rounding: 'none' };
    expect(tooLarge()).toMatchObject({ code: 'too-large', field: ['layout'], values: { most } });
    const many = { code: 'too-many-blocks', field: ['layout'], values: {} };
    expect(tooManyBlocks()).toMatchObject(many);
    expect(tooManyBlocks().says).toContain('3600');
  });

  it('has lengths in its formulas that are exact and shown to the nearest unit', () => {
    expect(lengthTerm('W', 'width', 1_000.25)).toEqual({
      symbol: 'W',
      means: 'width',
      quantity: { kind: 'length', exact: 1_000.25, rounded: 1_000, rounding: 'nearest', use: 'size' },
    });
    expect(lengthTerm('W', 'width', 1_000.75).quantity).toMatchObject({ rounded: 1_001 });
  });

  it('has its top left corner and its outline around all rounds', () => {
    const rounds = [border(inches(2), 'butted'), border(inches(3), 'mitered')];
    const work = workOutTop(
      topWith({ blocks: [plainBlock('Plain', 10)], layout: rowsOf([['Plain', 2, 3]], { rounds }) }),
    );
    if (!work.ok) throw new Error(work.error.says);
    const { x, y, width, length, outline: round } = work.value.assembly;
    expect([x, y, width, length]).toEqual([-5, -5, 30, 40].map(inches));
    const [xs, ys] = [round.map((corner) => corner.x), round.map((corner) => corner.y)];
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([inches(-5), inches(25)]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([inches(-5), inches(35)]);
  });
});

describe('the starting input of a project', () => {
  it('has 9 in nine-patch blocks without sashing and rounds, with the settings of the workshop', () => {
    const start = top.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS });
    expect(start).toEqual({
      fabrics: ['Light', 'Dark'].map((label) => ({ label, isDirectional: false })),
      blocks: [ninePatch('Nine-patch', 3)],
      layout: rowsOf([['Nine-patch', 5, 6]]),
      seamAllowance: STARTING_SETTINGS.seamAllowance,
      fabricWidth: STARTING_SETTINGS.fabricWidth,
      rounding: 'customary',
      cutStep: inches(1 / 8),
      yardageStep: inches(4.5),
      safetyExtraPercent: STARTING_SETTINGS.safetyExtraPercent,
    });
  });

  it('has 7.5 cm patches in 22.5 cm blocks in metric units', () => {
    const start = top.fromProject({ outline, hole: null, hasSlit: false, settings: METRIC_SETTINGS });
    const [block] = start.blocks;
    expect(block!.units.map(({ unit }) => unit)).toEqual(
      [1, 2].map(() => ({ unit: 'square', side: lengthFromMillimeters(75) })),
    );
    expect([block!.width, block!.length]).toEqual([225, 225].map(lengthFromMillimeters));
    expect(top.calculate(start)).toMatchObject({ ok: true, value: { details: { misfits: 0 } } });
  });
});

it('covers the top exactly once with a round of blocks that meet, those on the sides turned by a quarter', () => {
  const few = fc.integer({ min: 1, max: 5 });
  const anyRound = fc.record({
    across: few,
    down: few,
    wide: few,
    depth: few,
    frame: fc.integer({ min: 0, max: 3 }),
  });
  fc.assert(
    fc.property(anyRound, ({ across, down, wide, depth, frame }) => {
      const middle = {
        ...plainBlock('Middle', 1),
        width: inches(across * wide),
        length: inches(down * wide),
      };
      const part = { ...plainBlock('Part', 1), width: inches(wide), length: inches(depth) };
      const blocks = [middle, part, plainBlock('Corner', depth)];
      const rounds = [
        // A frame as wide as a part keeps the sides whole multiples of it.
        ...(frame === 0 ? [] : [border(inches(frame * wide), 'butted')]),
        { round: 'blocks', block: 'Part', corner: 'Corner' } as const,
      ];
      const work = workOutTop(topWith({ blocks, layout: { layout: 'center', block: 'Middle', rounds } }));
      if (!work.ok) throw new Error(work.error.says);
      const { assembly } = work.value;
      expect(assembly.misfits).toEqual([]);
      const [wider, longer] = [across + 2 * frame, down + 2 * frame];
      expect(assembly.blocks).toHaveLength(1 + 2 * (wider + longer) + 4);
      const placed = assembly.blocks.map(({ block, x, y }) => rectangleAt(x, y, block.width, block.length));
      const all = [...placed, ...assembly.patches.map(({ polygon }) => polygon)];
      const covered = all.reduce((sum, polygon) => sum + polygonArea(polygon), 0);
      expect(covered).toBe(polygonArea(assembly.outline));
      expect(areaOnlyIn([assembly.outline], all)).toBeLessThan(1);
      expect(areaOnlyIn(all, [assembly.outline])).toBeLessThan(1);
    }),
    { numRuns: 25 },
  );
});

describe('the seams of a top', () => {
  const anyGrid = fc.record({
    patch: fc.integer({ min: 1, max: 6 }),
    across: fc.integer({ min: 1, max: 8 }),
    down: fc.integer({ min: 1, max: 8 }),
    gap: fc.integer({ min: 0, max: 4 }),
  });

  it('are as long as the lines of a grid, with and without long sashing strips (derived)', () => {
    fc.assert(
      fc.property(anyGrid, ({ patch, across, down, gap }) => {
        const sashing = gap === 0 ? null : { width: inches(gap), fabric: 'Dark', cornerFabric: '' };
        const blocks = [ninePatch('Nine', patch)];
        const { seams, seamLength } = detailsFor({
          blocks,
          layout: rowsOf([['Nine', across, down]], { sashing }),
        });
        const [side, width] = [3 * patch, across * 3 * patch + (across - 1) * gap];
        // In each block two seams each way; then upright lines between blocks and lines across the whole width between rows.
        const inBlocks = across * down * 4 * side;
        const perGap = gap === 0 ? 1 : 2;
        const upright = (across - 1) * perGap * down * side;
        const level = (down - 1) * perGap * width;
        expect(seamLength / UNITS_PER_INCH).toBeCloseTo(inBlocks + upright + level, 6);
        const sashes = gap === 0 ? 0 : (across - 1) * down + (down - 1);
        expect(seams).toBe(across * down * 9 + sashes - 1);
      }),
    );
  });

  it('grow with every border by its corners and the sides it is sewn to (derived)', () => {
    const around = (corners: 'butted' | 'mitered' | 'cornerstones') => {
      const rounds = [border(inches(3), corners)];
      const blocks = [plainBlock('Plain', 10)];
      const { seams, seamLength } = detailsFor({ blocks, layout: rowsOf([['Plain', 1, 1]], { rounds }) });
      return [seams, seamLength / UNITS_PER_INCH];
    };
    // Four sides of 10 in; butted: 3 in at both ends of either side border; stones: two of 3 in each; miters: 3√2 in each.
    expect(around('butted')).toEqual([4, expect.closeTo(40 + 4 * 3, 6)]);
    expect(around('cornerstones')).toEqual([8, expect.closeTo(40 + 8 * 3, 6)]);
    expect(around('mitered')).toEqual([4, expect.closeTo(40 + 4 * 3 * Math.SQRT2, 6)]);
  });
});
