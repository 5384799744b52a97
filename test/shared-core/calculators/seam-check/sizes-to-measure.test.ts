import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accuracy } from '#core/calculators/accuracy/accuracy';
import type { AccuracyInput } from '#core/calculators/accuracy/input';
import { workOutAccuracy } from '#core/calculators/accuracy/work';
import type { PatchSizeInput } from '#core/calculators/patches/patch-size/input';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import { calculators } from '#core/calculators/registry';
import type { SeamCheckInput } from '#core/calculators/seam-check/input';
import { seamCheck } from '#core/calculators/seam-check/seam-check';
import { sizesToMeasure } from '#core/calculators/seam-check/sizes-to-measure';
import type { Layout, TopInput } from '#core/calculators/top/input';
import { top } from '#core/calculators/top/top';
import { workOutTop } from '#core/calculators/top/work';
import { wedgeRing } from '#core/calculators/wedge-ring/wedge-ring';
import { wedgePolygon, workOutWedgeRing } from '#core/calculators/wedge-ring/work';
import type { Point } from '#core/geometry/point';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf } from '#test/helpers/answer-of';
import { rotatePoint } from '#test/helpers/rotate-point';

const inches = lengthFromInches;

/** What the form of the seam check is filled with from one saved answer. */
function filledFrom(calculator: string, input: unknown, before: unknown = {}): Partial<SeamCheckInput> {
  const [filled, ...more] = sizesToMeasure([{ calculator, input }], before);
  expect(more).toEqual([]);
  expect(filled?.calculator).toBe(calculator);
  return filled?.fields ?? {};
}

/** Each place as `9.5 in: 2 seams, 3 patches`, with how often it is measured. */
function listOf({ measured = [] }: Partial<SeamCheckInput>): readonly string[] {
  const lines = measured.map(({ size, seams, patches, end }) => {
    const at = end === 'along' ? '' : `${end} `;
    return `${at}${String(Number((size / UNITS_PER_INCH).toFixed(3)))} in: ${String(seams)} of ${String(patches)}`;
  });
  return [...new Set(lines)].map((line) => `${String(lines.filter((one) => one === line).length)} × ${line}`);
}

const nine: AccuracyInput = {
  ...accuracy.fromProject(SAMPLE_MEASUREMENTS),
  blockSize: inches(9),
  patchesAcross: 3,
  blocksAcross: 8,
  seamAllowance: inches(1 / 4),
};

describe('from how accurate to sew', () => {
  it('come patches, blocks, two blocks and the row', () => {
    const filled = filledFrom('accuracy', nine);
    expect(listOf(filled)).toEqual([
      '4 × 3.5 in: 0 of 1',
      '3 × 9.5 in: 2 of 3',
      '1 × 18.5 in: 5 of 6',
      '1 × 72.5 in: 23 of 24',
    ]);
    expect(filled.top).toEqual({ size: inches(72.5), seams: 23, patches: 24 });
  });

  it('come blocks as single patches where they are trimmed, and no row of one block', () => {
    expect(listOf(filledFrom('accuracy', { ...nine, trimsBlocks: true }))).toEqual([
      '4 × 9.5 in: 0 of 1',
      '1 × 18.5 in: 1 of 2',
      '1 × 72.5 in: 7 of 8',
    ]);
    expect(listOf(filledFrom('accuracy', { ...nine, blocksAcross: 1 }))).toEqual([
      '4 × 3.5 in: 0 of 1',
      '3 × 9.5 in: 2 of 3',
    ]);
  });

  it('come the very sizes that the answer lists to measure', () => {
    const listed = new Set(workOutAccuracy(nine).checks.map(({ size }) => size));
    for (const { size } of filledFrom('accuracy', nine).measured ?? []) expect(listed).toContain(size);
  });
});

const start: TopInput = top.fromProject(SAMPLE_MEASUREMENTS);
const rows = (changes: Partial<Extract<Layout, { layout: 'rows' }>>): TopInput => ({
  ...start,
  layout: {
    layout: 'rows',
    rows: [{ blocks: [{ block: 'Nine-patch', times: 4 }], times: 4 }],
    sashing: null,
    rounds: [],
    ...changes,
  },
});
const border = (width: number) =>
  ({ round: 'border', width: inches(width), fabric: 'Dark', corners: 'butted', cornerFabric: '' }) as const;

describe('from the whole top', () => {
  it('come its patches, blocks and rows, and the top after each border', () => {
    const filled = filledFrom('top', rows({ rounds: [border(2), border(5)] }));
    expect(listOf(filled)).toEqual([
      '4 × 3.5 in: 0 of 1',
      '3 × 9.5 in: 2 of 3',
      '1 × 18.5 in: 5 of 6',
      '1 × 36.5 in: 11 of 12',
      '1 × 40.5 in: 13 of 14',
      '1 × 50.5 in: 15 of 16',
    ]);
    expect(filled.top).toEqual({ size: inches(50.5), seams: 15, patches: 16 });
  });

  it('come sashing strips as patches, and a round of blocks on either side', () => {
    const sashing = { width: inches(1.5), fabric: 'Dark', cornerFabric: '' };
    const round = { round: 'blocks', block: 'Nine-patch', corner: 'Nine-patch' } as const;
    const filled = filledFrom('top', rows({ sashing, rounds: [round] }));
    expect(listOf(filled)).toEqual([
      '4 × 3.5 in: 0 of 1',
      '3 × 9.5 in: 2 of 3',
      '1 × 11 in: 3 of 4',
      '1 × 41 in: 14 of 15',
      '1 × 59 in: 20 of 21',
    ]);
  });

  it('comes a block of unknown make as one patch, and the rings of a ring-shaped top', () => {
    const units = [{ unit: { unit: 'square', side: inches(2) }, times: 3, fabrics: ['Dark'] }] as const;
    const odd = { name: 'Nine-patch', width: inches(9), length: inches(9), units };
    expect(listOf(filledFrom('top', { ...rows({}), blocks: [odd] }))).toEqual([
      '4 × 9.5 in: 0 of 1',
      '1 × 18.5 in: 1 of 2',
      '1 × 36.5 in: 3 of 4',
    ]);
    const layout = {
      layout: 'rings',
      sides: 'eight',
      centerAcross: inches(10),
      centerFabric: 'Dark',
      rings: [2, 3].map((width) => ({ width: inches(width), fabric: 'Light' })),
    } as const;
    expect(listOf(filledFrom('top', { ...start, layout }))).toEqual([
      '4 × 10.5 in: 0 of 1',
      '1 × 14.5 in: 2 of 3',
      '1 × 20.5 in: 4 of 5',
    ]);
  });

  it('comes the block in the middle with its rounds', () => {
    const layout = { layout: 'center', block: 'Nine-patch', rounds: [border(3)] } as const;
    expect(listOf(filledFrom('top', { ...start, layout }))).toEqual([
      '4 × 3.5 in: 0 of 1',
      '3 × 9.5 in: 2 of 3',
      '1 × 15.5 in: 4 of 5',
    ]);
  });

  it('is as wide as the top as sewn, whatever its rows and borders (independent: the grown outline)', () => {
    const anyRow = fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 3 });
    const anyBorders = fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 3 });
    const anyStrip = fc.option(fc.integer({ min: 1, max: 4 }), { nil: null });
    fc.assert(
      fc.property(anyRow, anyBorders, anyStrip, (counts, borders, strip) => {
        const input = rows({
          rows: counts.map((times) => ({ blocks: [{ block: 'Nine-patch', times }], times: 1 })),
          sashing: strip === null ? null : { width: inches(strip), fabric: 'Dark', cornerFabric: '' },
          rounds: borders.map(border),
        });
        const work = workOutTop(input);
        if (!work.ok) throw new Error(work.error.says);
        expect(filledFrom('top', input).top?.size).toBe(Math.round(work.value.sewn.width));
      }),
      { numRuns: 40 },
    );
  });
});

describe('from the size of patches', () => {
  const patches = patchSize.fromProject(SAMPLE_MEASUREMENTS);
  const sized = (change: Partial<PatchSizeInput>) => ({
    ...patches,
    seamAllowance: inches(1 / 4),
    ...change,
  });
  it('come squares and rectangles as they are cut, alone and three side by side', () => {
    // Common practice: a square that finishes at 3 in is cut 3 1/2 in, and three of them sewn side by side measure 9 1/2 in.
    const squares = filledFrom(
      'patch-size',
      sized({ unit: { unit: 'square', side: inches(3) }, sizesAre: 'finished' }),
    );
    expect(listOf(squares)).toEqual(['4 × 3.5 in: 0 of 1', '3 × 9.5 in: 2 of 3']);
    expect(squares.top).toBeNull();
    const asCut = filledFrom(
      'patch-size',
      sized({ unit: { unit: 'square', side: inches(2.5) }, sizesAre: 'cut' }),
    );
    expect(listOf(asCut)).toEqual(['4 × 2.5 in: 0 of 1', '3 × 6.5 in: 2 of 3']);
  });

  it('comes nothing where other seams run through the unit, or nothing is left between the seams', () => {
    const triangles = { unit: 'half-square-triangles', side: inches(3), atATime: 'two' } as const;
    const asked = [
      sized({ unit: triangles }),
      sized({ unit: { unit: 'square', side: inches(1 / 2) }, sizesAre: 'cut' }),
    ];
    expect(
      sizesToMeasure(
        asked.map((input) => ({ calculator: 'patch-size', input })),
        {},
      ),
    ).toEqual([]);
  });
});

describe('from a ring of wedges', () => {
  const input = {
    ...wedgeRing.fromProject(SAMPLE_MEASUREMENTS),
    wedges: 8,
    innerRadius: inches(3),
    outerRadius: inches(29),
  };

  /** The wedge as cut from its strip, with its middle line turned by half a wedge to one side of the seam. */
  function placedCorners(side: -1 | 1): readonly Point[] {
    const { fromStrip, half } = workOutWedgeRing(input);
    const bottom = input.innerRadius - input.seamAllowance;
    return wedgePolygon(fromStrip).map(({ x, y }) => {
      const [beside, up] = [x - fromStrip.long / 2, bottom + fromStrip.height - y];
      return rotatePoint({ x: beside, y: up }, -side * half);
    });
  }

  it('come pairs from corner to corner at both ends, as the placed wedges measure (independent: rotated corners)', () => {
    const filled = filledFrom('wedge-ring', input);
    expect(filled.top).toBeNull();
    const both = [...placedCorners(-1), ...placedCorners(1)];
    const byHeight = both.toSorted((one, other) => one.y - other.y);
    const widest = (corners: readonly Point[]) =>
      Math.max(...corners.map(({ x }) => x)) - Math.min(...corners.map(({ x }) => x));
    const sizeAt = (end: string) =>
      filled.measured?.find((one) => one.seams === 1 && one.end === end)?.size ?? 0;
    expect(Math.abs(sizeAt('inner') - widest(byHeight.slice(0, 4)))).toBeLessThanOrEqual(1);
    expect(Math.abs(sizeAt('outer') - widest(byHeight.slice(4)))).toBeLessThanOrEqual(1);
    const farthest = (corners: readonly Point[]) => corners.toSorted((one, other) => other.x - one.x)[0]!;
    const leg = farthest(byHeight.slice(4)).y - farthest(byHeight.slice(0, 4)).y;
    expect(Math.abs(filled.ring!.leg - leg)).toBeLessThanOrEqual(1);
    expect(filled.ring).toMatchObject({ wedges: 8, radius: inches(29) });
    const { fromStrip } = workOutWedgeRing(input);
    const singles = (filled.measured ?? []).filter(({ seams }) => seams === 0).map(({ size }) => size);
    expect(singles).toEqual(
      [fromStrip.short, fromStrip.long, fromStrip.short, fromStrip.long].map(Math.round),
    );
    expect(filled.measured).toHaveLength(10);
  });

  it('measured as planned lies flat, and is an input that has an answer', () => {
    const filled = filledFrom('wedge-ring', input);
    const measured = (filled.measured ?? []).map((one) => ({ ...one, found: one.size }));
    const asked = { ...seamCheck.fromProject(SAMPLE_MEASUREMENTS), ...filled, measured, cutsAreRight: true };
    expect(answerOf(seamCheck, asked).details.ring).toMatchObject({ lacks: 0, rise: 0 });
  });
});

describe('what is filled in', () => {
  it('keeps what was measured where the place is the same, and nothing else', () => {
    const planned = filledFrom('accuracy', nine).measured ?? [];
    const typed = planned.map((one, at) => ({
      ...one,
      found: at === 0 ? inches(3.5) : at === 4 ? inches(9.4) : null,
      size: at === 4 ? inches(10) : one.size,
    }));
    const found = filledFrom('accuracy', nine, { measured: [...typed, 'half typed'] }).measured ?? [];
    expect(found.map((one) => one.found).filter((one) => one !== null)).toEqual([inches(3.5)]);
    for (const before of [null, 'text', { measured: 7 }, { measured: [null] }])
      expect(filledFrom('accuracy', nine, before).measured).toEqual(planned);
  });

  it('is nothing from answers that no longer read, have no answer or know no sizes', () => {
    const asked = [
      { calculator: 'accuracy', input: {} },
      { calculator: 'top', input: null },
      { calculator: 'top', input: rows({ rows: [{ blocks: [{ block: 'Unknown', times: 1 }], times: 1 }] }) },
      { calculator: 'wedge-ring', input: 'words' },
      {
        calculator: 'wedge-ring',
        input: {
          ...wedgeRing.fromProject(SAMPLE_MEASUREMENTS),
          innerRadius: inches(9),
          outerRadius: inches(8),
        },
      },
      { calculator: 'backing', input: {} },
    ];
    expect(sizesToMeasure(asked, {})).toEqual([]);
  });

  it('reads as an input of the seam check, from the starting answer of every calculator that has sizes', () => {
    const answers = calculators.map((one) => ({
      calculator: one.name,
      input: one.fromProject(SAMPLE_MEASUREMENTS),
    }));
    const filled = sizesToMeasure(answers, {});
    expect(filled.map(({ calculator }) => calculator)).toEqual([
      'patch-size',
      'top',
      'wedge-ring',
      'accuracy',
    ]);
    for (const { fields } of filled) {
      const asked = { ...seamCheck.fromProject(SAMPLE_MEASUREMENTS), ...fields };
      expect(seamCheck.input.safeParse(asked).success).toBe(true);
      expect(answerOf(seamCheck, asked).figures.length).toBeGreaterThan(0);
    }
  });

  it('leaves out a size or a count beyond the fields', () => {
    const wide = { ...nine, blockSize: inches(30), blocksAcross: 20, patchesAcross: 20 };
    const filled = filledFrom('accuracy', wide);
    expect(listOf(filled)).toEqual(['4 × 2 in: 0 of 1', '3 × 30.5 in: 19 of 20', '1 × 60.5 in: 39 of 40']);
    expect(filled.top).toBeUndefined();
  });
});
