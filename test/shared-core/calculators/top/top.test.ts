import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '#core/calculators/format-quantity';
import { top } from '#core/calculators/top/top';
import { workOutTop } from '#core/calculators/top/work';
import { patchListSchema } from '#core/domain/patch-list';
import { polygonArea } from '#core/geometry/polygon';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { areCongruent } from '../patches/any-unit';
import { areaOnlyIn, offsetByClipper } from '../patches/clipper-reference';
import {
  answerTo,
  border,
  detailsFor,
  inches,
  ninePatch,
  plainBlock,
  rowsOf,
  topWith,
  warningsFor,
} from './top-input';

const inInches = (units: number) => units / UNITS_PER_INCH;
const sizeOf = ({ width, length }: { readonly width: number; readonly length: number }) => [
  inInches(width),
  inInches(length),
];

describe('rows of blocks', () => {
  it('of 12 in, five by six, are 60 by 72 in; with 3 in sashing 72 by 87 in; with a 3 in border 78 by 93 in (common practice)', () => {
    const blocks = [plainBlock('Plain', 12)];
    const sashing = { width: inches(3), fabric: 'Dark', cornerFabric: '' };
    const rows = (more = {}) => rowsOf([['Plain', 5, 6]], more);
    expect(sizeOf(detailsFor({ blocks, layout: rows() }))).toEqual([60, 72]);
    expect(sizeOf(detailsFor({ blocks, layout: rows({ sashing }) }))).toEqual([72, 87]);
    const bordered = rows({ sashing, rounds: [border(inches(3), 'butted')] });
    expect(sizeOf(detailsFor({ blocks, layout: bordered }))).toEqual([78, 93]);
    expect(detailsFor({ blocks, layout: bordered }).steps.map(sizeOf)).toEqual([
      [72, 12],
      [72, 87],
      [78, 93],
    ]);
  });

  it('of nine-patches have 5 dark and 4 light patches for each block', () => {
    const blocks = [ninePatch('Nine', 3)];
    const { patchList: list } = detailsFor({ blocks, layout: rowsOf([['Nine', 4, 5]]) });
    const size = { width: inches(3.5), length: inches(3.5), mayTurn: true };
    expect(list).toEqual([
      { fabric: 'Dark', ...size, count: 100 },
      { fabric: 'Light', ...size, count: 80 },
    ]);
  });

  it('have one seam fewer than patches, and for 4 by 5 nine-patches the length counted by hand (derived)', () => {
    const blocks = [ninePatch('Nine', 3)];
    const { seams, seamLength } = detailsFor({ blocks, layout: rowsOf([['Nine', 4, 5]]) });
    expect(seams).toBe(4 * 5 * 9 - 1);
    // Twelve patches across and fifteen down: 11 seams of 45 in and 14 of 36 in.
    expect(inInches(seamLength)).toBeCloseTo(11 * 45 + 14 * 36, 6);
  });

  it('count what is cut in patches', () => {
    const blocks = [ninePatch('Nine', 3)];
    const { figures } = answerTo({ blocks, layout: rowsOf([['Nine', 5, 6]]) });
    const style = {
      display: { system: 'inch', inchStep: 8 },
      currency: currencyFromCode('USD'),
      locale: 'en-US',
    } as const;
    const cut = figures.find(({ label }) => label === 'Patches')!;
    expect(formatQuantity(cut.quantity, style)).toBe('270 patches');
  });

  it('have a warning if a row is narrower, with both widths', () => {
    const blocks = [plainBlock('Six', 6), plainBlock('Nine', 9)];
    const layout = rowsOf([
      ['Six', 7, 2],
      ['Nine', 5, 3],
    ]);
    expect(warningsFor({ blocks, layout })).toEqual([
      'Row 1 finishes 3 in narrower than the widest row: 42 in instead of 45 in.',
    ]);
    expect(detailsFor({ blocks, layout }).misfits).toBe(1);
  });

  it('have a warning if a block is shorter than the others of its row', () => {
    const blocks = [plainBlock('Six', 6), plainBlock('Half', 6.5)];
    const layout = {
      ...rowsOf([]),
      rows: [
        {
          blocks: [
            { block: 'Six', times: 1 },
            { block: 'Half', times: 1 },
          ],
          times: 4,
        },
      ],
    } as ReturnType<typeof rowsOf>;
    const [warning] = warningsFor({ blocks, layout });
    expect(warning).toContain('Row 1: Six is ½ in shorter');
  });

  it('are refused if a block is not in the list', () => {
    const answer = top.calculate(topWith({ layout: rowsOf([['Missing', 2, 2]]) }));
    expect(answer).toMatchObject({
      ok: false,
      error: { code: 'unknown-block', field: ['layout', 'rows', 0, 'blocks', 0, 'block'] },
    });
  });

  it('are refused if they are too large', () => {
    const blocks = [plainBlock('Plain', 12)];
    const many = top.calculate(
      topWith({
        blocks,
        layout: rowsOf([
          ['Plain', 60, 60],
          ['Plain', 1, 1],
        ]),
      }),
    );
    expect(many).toMatchObject({ ok: false, error: { code: 'too-many-blocks' } });
    const large = top.calculate(
      topWith({ blocks: [plainBlock('Plain', 390)], layout: rowsOf([['Plain', 60, 1]]) }),
    );
    expect(large).toMatchObject({ ok: false, error: { code: 'too-large' } });
  });
});

describe('a center with rounds', () => {
  it('takes border strips of 44 and 34½ in, then 46 and 38½ in (common practice)', () => {
    const center = {
      name: 'Top',
      width: inches(32),
      length: inches(43.5),
      units: [],
    };
    const layout = {
      layout: 'center',
      block: 'Top',
      rounds: [border(inches(1), 'butted', 'Light'), border(inches(2), 'butted', 'Dark')],
    } as const;
    const { steps, patchList: list } = detailsFor({ blocks: [center], layout, fabricWidth: inches(60) });
    expect(steps.slice(1).map(sizeOf)).toEqual([
      [34, 45.5],
      [38, 49.5],
    ]);
    expect(
      list.map((patch) => [patch.fabric, inInches(patch.width), inInches(patch.length), patch.count]),
    ).toEqual([
      ['Light', 44, 1.5, 2],
      ['Light', 34.5, 1.5, 2],
      ['Dark', 46, 2.5, 2],
      ['Dark', 38.5, 2.5, 2],
    ]);
  });

  it('has a warning by how much a round of blocks misses the side of the top', () => {
    const blocks = [plainBlock('Middle', 20), plainBlock('Small', 3)];
    const layout = {
      layout: 'center',
      block: 'Middle',
      rounds: [{ round: 'blocks', block: 'Small', corner: 'Small' }],
    } as const;
    const warnings = warningsFor({ blocks, layout });
    expect(warnings).toHaveLength(2);
    expect(warnings[0]).toContain('7 of Small are 1 in longer than the side of the top, which is 20 in.');
  });

  it('meets if a border makes the side a multiple of the blocks', () => {
    const blocks = [plainBlock('Middle', 20), plainBlock('Small', 3)];
    const rounds = [
      border(inches(2), 'cornerstones'),
      { round: 'blocks', block: 'Small', corner: 'Small' } as const,
    ];
    const details = detailsFor({ blocks, layout: { layout: 'center', block: 'Middle', rounds } });
    expect(details.misfits).toBe(0);
    expect(sizeOf(details)).toEqual([30, 30]);
    expect(details.seams).toBe(1 + 4 + 4 + 4 * 8 + 4 - 1);
  });
});

describe('rings', () => {
  const rings = (sides: 'six' | 'eight' | 'ten' | 'twelve', across: number, widths: readonly number[]) =>
    ({
      layout: 'rings',
      sides,
      centerAcross: inches(across),
      centerFabric: 'Light',
      rings: widths.map((width) => ({ width: inches(width), fabric: 'Dark' })),
    }) as const;

  it('add two widths each around a hexagon', () => {
    const { steps } = detailsFor({ layout: rings('six', 8, [3, 4]) });
    expect(steps.map(({ width }) => inInches(width))).toEqual([8, 14, 22]);
  });

  // Derived: the seam allowance reaches s ÷ cos(180°/n) beyond a point: 48 1/2 · 2/√3 = 56.0030, and not 55.9256.
  it('with six or ten sides are measured before quilting with the seam allowance beyond their points', () => {
    const answer = answerTo({ layout: rings('six', 8, [4, 6, 10]) });
    const before = answer.figures.find(({ label }) => label === 'Top before quilting')!.quantity;
    if (before.kind !== 'size') throw new Error('No size');
    expect(inInches(before.width.exact)).toBeCloseTo((48.5 * 2) / Math.sqrt(3), 9);
    expect(inInches(before.length.exact)).toBeCloseTo(48.5, 9);
    const step = answer.explanation.find(({ label }) => label.startsWith('Width before quilting'))!;
    expect(step.result).toEqual(before.width);
    for (const sides of ['six', 'eight', 'ten', 'twelve'] as const) {
      const work = workOutTop(topWith({ layout: rings(sides, 8, [4, 6, 10]) }));
      if (!work.ok) throw new Error(work.error.says);
      const grown = offsetByClipper(work.value.assembly.outline, inches(1 / 4));
      const xs = grown.map(({ x }) => x);
      expect(inInches(work.value.sewn.width)).toBeCloseTo(inInches(Math.max(...xs) - Math.min(...xs)), 3);
    }
  });

  // Derived: eight patches, 3 and 29 from the middle to their sides: cut 24.7727 and 2.8194, strip 26 1/2.
  it('give the long side, the short side and the angle of a patch, and count patches alike everywhere', () => {
    const answer = answerTo({ layout: rings('eight', 6, [26]) });
    const table = answer.tables.find(({ title }) => title === 'Patches of the rings, as cut')!;
    const row = table.rows[0]!;
    const exact = row.map((cell) => (cell.kind === 'length' ? inInches(cell.exact) : null));
    expect(exact[3]).toBeCloseTo(24.7727, 3);
    expect(exact[4]).toBeCloseTo(2.8194, 3);
    expect(exact[5]).toBeCloseTo(26.5, 9);
    expect(row[6]).toEqual({ kind: 'degrees', exact: 67.5 });
    const patches = answer.figures.find(({ label }) => label === 'Patches')!.quantity;
    const seams = answer.explanation.find(({ label }) => label === 'Seams to sew')!;
    expect(patches).toMatchObject({ rounded: 9 });
    expect(seams.terms[0]!.quantity).toEqual(patches);
  });

  it('have cut patches that are the finished ones grown by the seam, and cover the top exactly once', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('six', 'eight', 'ten', 'twelve'),
        fc.integer({ min: 2, max: 20 }),
        (sides, width) => {
          const work = workOutTop(topWith({ layout: rings(sides, 10, [width / 2, 3]) }));
          if (!work.ok) throw new Error(work.error.says);
          const { assembly } = work.value;
          for (const { patch, polygon } of assembly.patches) {
            const [piece] = patch.shape.patches;
            expect(areCongruent(piece!.cut, offsetByClipper(polygon, inches(1 / 4)))).toBe(true);
          }
          const polygons = assembly.patches.map(({ polygon }) => polygon);
          const covered = polygons.reduce((sum, polygon) => sum + polygonArea(polygon), 0);
          expect(covered / polygonArea(assembly.outline)).toBeCloseTo(1, 9);
          expect(areaOnlyIn([assembly.outline], polygons)).toBeLessThan(100);
        },
      ),
    );
  });
});

describe('fabric and patches', () => {
  it('are listed upright and may not turn for a directional print', () => {
    const tall = {
      name: 'Tall',
      width: inches(4),
      length: inches(8),
      units: [
        {
          unit: { unit: 'rectangle', width: inches(4), length: inches(8) } as const,
          times: 1,
          fabrics: ['Trees'],
        },
      ],
    };
    const changes = { blocks: [tall], layout: rowsOf([['Tall', 5, 2]]) };
    const upright = detailsFor({ ...changes, fabrics: [{ label: 'Trees', isDirectional: true }] });
    expect(upright.patchList).toEqual([
      { fabric: 'Trees', width: inches(4.5), length: inches(8.5), count: 10, mayTurn: false },
    ]);
    expect(inInches(upright.fabricLengths[0]!.length)).toBe(17);
    const free = detailsFor({ ...changes, fabrics: [{ label: 'Trees', isDirectional: false }] });
    expect(free.patchList[0]).toMatchObject({ length: inches(4.5), mayTurn: true });
  });

  it('come with a warning if they leave part of the block uncovered', () => {
    const block = { ...ninePatch('Nine', 3), units: ninePatch('Nine', 3).units.slice(0, 1) };
    expect(warningsFor({ blocks: [block], layout: rowsOf([['Nine', 2, 2]]) })).toEqual([
      'The patches of Nine leave 36 sq in of the block uncovered.',
    ]);
  });

  it('need four squares of each fabric for eight half-square triangles (derived)', () => {
    const unit = { unit: 'half-square-triangles', side: inches(3), atATime: 'two' } as const;
    const block = {
      name: 'Pinwheel',
      width: inches(6),
      length: inches(6),
      units: [{ unit, times: 4, fabrics: ['Light', 'Dark'] }],
    };
    const { patchList: list, seams } = detailsFor({ blocks: [block], layout: rowsOf([['Pinwheel', 2, 1]]) });
    expect(list.map(({ fabric, width, count }) => [fabric, inInches(width), count])).toEqual([
      ['Light', 3.875, 4],
      ['Dark', 3.875, 4],
    ]);
    expect(seams).toBe(2 * 8 - 1);
  });
});

const anyTop = fc
  .record({
    patch: fc.integer({ min: 1, max: 6 }),
    across: fc.integer({ min: 1, max: 8 }),
    down: fc.integer({ min: 1, max: 8 }),
    sashing: fc.option(fc.integer({ min: 1, max: 4 })),
    cornerFabric: fc.constantFrom('', 'Light'),
    borders: fc.array(
      fc.record({
        width: fc.integer({ min: 1, max: 6 }).map((width) => inches(width)),
        corners: fc.constantFrom('butted', 'mitered', 'cornerstones'),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ patch, across, down, sashing, cornerFabric, borders }) => ({
    blocks: [ninePatch('Nine', patch)],
    layout: rowsOf([['Nine', across, down]], {
      sashing: sashing === null ? null : { width: inches(sashing), fabric: 'Dark', cornerFabric },
      rounds: borders.map(({ width, corners }) => border(width, corners)),
    }),
  }));

describe('any top of blocks, sashing and borders', () => {
  it('is covered exactly once by its blocks and strips', () => {
    fc.assert(
      fc.property(anyTop, (changes) => {
        const work = workOutTop(topWith(changes));
        if (!work.ok) throw new Error(work.error.says);
        const { assembly } = work.value;
        const blocks = assembly.blocks.map(({ block, x, y }) => [
          { x, y },
          { x: x + block.width, y },
          { x: x + block.width, y: y + block.length },
          { x, y: y + block.length },
        ]);
        const all = [...blocks, ...assembly.patches.map(({ polygon }) => polygon)];
        const covered = all.reduce((sum, polygon) => sum + polygonArea(polygon), 0);
        expect(covered).toBeCloseTo(assembly.width * assembly.length, 0);
        expect(areaOnlyIn([assembly.outline], all)).toBeLessThan(1);
      }),
    );
  });

  it('needs at least as much fabric as is in it, and has a list that the cutting planner can read', () => {
    fc.assert(
      fc.property(anyTop, (changes) => {
        const { fabricLengths, patchList: list, width, length } = detailsFor(changes);
        const bought = fabricLengths.reduce((sum, { length: strip }) => sum + strip * inches(42), 0);
        const cut = list.reduce((sum, patch) => sum + patch.width * patch.length * patch.count, 0);
        expect(cut).toBeGreaterThan(width * length);
        expect(bought).toBeGreaterThanOrEqual(cut);
        expect(patchListSchema.safeParse(list).success).toBe(true);
      }),
    );
  });

  it('needs no less fabric if cut sizes are rounded to a coarser step', () => {
    fc.assert(
      fc.property(anyTop, (changes) => {
        const total = (step: number) =>
          detailsFor({
            ...changes,
            cutStep: lengthFromInches(step),
            seamAllowance: inches(3 / 16),
          }).patchList.reduce((sum, patch) => sum + patch.width * patch.length * patch.count, 0);
        expect(total(1 / 4)).toBeGreaterThanOrEqual(total(1 / 16));
      }),
    );
  });

  it('explains every size with a finite number', () => {
    fc.assert(
      fc.property(anyTop, (changes) => {
        const { explanation, figures, tables, diagram } = answerTo(changes);
        for (const { columns, rows } of tables) {
          expect(rows.every((row) => row.length === columns.length)).toBe(true);
        }
        expect(explanation.length).toBeGreaterThan(3);
        expect(figures[0]?.label).toBe('Finished top');
        const points = diagram?.parts.flatMap((part) => (part.part === 'polygon' ? part.points : [])) ?? [];
        expect(points.every(({ x, y }) => x >= 0 && y >= 0 && Number.isFinite(x + y))).toBe(true);
      }),
    );
  });
});
