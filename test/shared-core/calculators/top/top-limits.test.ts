import { describe, expect, it } from 'vitest';
import { formatSentence } from '#core/calculators/format-quantity';
import { top } from '#core/calculators/top/top';
import type { Layout, TopInput } from '#core/calculators/top/input';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromMillimeters } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { METRIC_SETTINGS } from '#test/helpers/measurements';
import { border, detailsFor, inches, plainBlock, rowsOf, topWith, warningsFor } from './top-input';

const INCH = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('EUR'),
  locale: 'en',
} as const;

/** The field to change and what is said of it, or nothing where there is an answer. */
function refusal(changes: Partial<TopInput>): readonly [string, string] | null {
  const answer = top.calculate(topWith(changes));
  return answer.ok ? null : [answer.error.field.join(' '), formatSentence(answer.error, INCH)];
}

function centerOf(block: string, rounds: Extract<Layout, { layout: 'center' }>['rounds']): Layout {
  return { layout: 'center', block, rounds };
}

const TOO_LARGE =
  'The top is wider or longer than 1968½ in, or its seams are longer than 1,000 yards. Check the sizes and counts.';

describe('a block that is not in the list', () => {
  const blocks = [plainBlock('Plain', 10), plainBlock('Small', 2)];
  const round = (block: string, corner: string) => ({ round: 'blocks', block, corner }) as const;

  it.each([
    ['as the center', centerOf('Gone', []), 'layout block'],
    ['in a round', centerOf('Plain', [round('Gone', 'Small')]), 'layout rounds 0 block'],
    [
      'in the corners',
      centerOf('Plain', [border(inches(1), 'butted'), round('Small', 'Gone')]),
      'layout rounds 1 corner',
    ],
    ['in a row', rowsOf([['Gone', 2, 2]]), 'layout rows 0 blocks 0 block'],
  ])('is named %s, with its place', (_where, layout, place) => {
    expect(refusal({ blocks, layout })).toEqual([
      place,
      'There is no block called Gone. Add it to the blocks, or choose one of them.',
    ]);
  });
});

describe('a top that is too large', () => {
  it('has more than 3,600 blocks in rows and rounds', () => {
    const blocks = [plainBlock('Plain', 1)];
    const more = ['layout', 'This is more than 3600 blocks. Check the counts.'];
    expect(refusal({ blocks, layout: rowsOf([['Plain', 60, 60]]) })).toBeNull();
    const rows = rowsOf([
      ['Plain', 60, 60],
      ['Plain', 1, 1],
    ]);
    expect(refusal({ blocks, layout: rows })).toEqual(more);
    // 58 by 58 with one round of 4 × 58 + 4 are 60 by 60; of 59 by 60 with a round of 242 there are 3,782.
    const rounds = [{ round: 'blocks', block: 'Plain', corner: 'Plain' }] as const;
    expect(refusal({ blocks, layout: rowsOf([['Plain', 58, 58]], { rounds }) })).toBeNull();
    expect(refusal({ blocks, layout: rowsOf([['Plain', 60, 59]], { rounds }) })).toEqual(more);
    expect(refusal({ blocks, layout: rowsOf([['Plain', 60, 57]], { rounds }) })).toEqual(more);
  });

  it('is more than 50 m wide or long', () => {
    const blocks = [plainBlock('Plain', 10)];
    const meters = (count: number) => lengthFromMillimeters(count * 1_000);
    const long = { ...plainBlock('Plain', 10), width: meters(1), length: meters(10) };
    const wide = { ...long, width: meters(10), length: meters(1) };
    const of = (block: typeof long, across: number, down: number) =>
      refusal({ blocks: [{ ...block, units: [] }], layout: rowsOf([['Plain', across, down]]) });
    expect([of(long, 1, 5), of(wide, 5, 1)]).toEqual([null, null]);
    expect(of(long, 1, 6)).toEqual(['layout', TOO_LARGE]);
    expect(of(wide, 6, 1)).toEqual(['layout', TOO_LARGE]);
    const sashing = { width: meters(1), fabric: 'Light', cornerFabric: '' };
    const sashed = { blocks: [{ ...long, units: [] }], layout: rowsOf([['Plain', 1, 5]], { sashing }) };
    expect(refusal(sashed)?.[0]).toBe('layout');
    const rounds = [border(meters(2), 'butted')];
    const bordered = { blocks: [{ ...long, units: [] }], layout: rowsOf([['Plain', 1, 5]], { rounds }) };
    expect(refusal(bordered)?.[0]).toBe('layout');
    expect(refusal({ blocks, layout: rowsOf([['Plain', 2, 2]]) })).toBeNull();
  });

  it('has a patch that is wider than the fabric', () => {
    const blocks = [plainBlock('Plain', 60)];
    expect(refusal({ blocks, layout: rowsOf([['Plain', 1, 1]]) })?.[0]).toBe('fabricWidth');
  });
});

describe('the starting input of a project', () => {
  const from = (width: number, length: number, settings = STARTING_SETTINGS) => {
    const outline = { shape: 'rectangle', width: inches(width), length: inches(length) } as const;
    return top.fromProject({ outline, hole: null, hasSlit: false, settings });
  };
  const rows = ({ layout }: TopInput) =>
    layout.layout === 'rows' ? layout.rows.map((row) => [row.blocks[0]?.times, row.times]) : [];

  it('has as many 9 in nine-patch blocks in two fabrics as fit into the project, but at least one', () => {
    expect(rows(from(45, 62))).toEqual([[5, 6]]);
    expect(rows(from(4, 30))).toEqual([[1, 3]]);
    expect(from(45, 62).blocks[0]?.units.map(({ times, fabrics }) => [times, fabrics])).toEqual([
      [5, ['Dark']],
      [4, ['Light']],
    ]);
    expect(from(45, 62).fabrics.map(({ label }) => label)).toEqual(['Light', 'Dark']);
  });

  it('has at most 1,600 blocks and 60 in a row', () => {
    expect(rows(from(390, 390))).toEqual([[43, 37]]);
    expect(rows(from(5_000, 390))).toEqual([[60, 26]]);
  });

  it('has 22.5 cm blocks in metric units', () => {
    const metric = from(45, 62, METRIC_SETTINGS);
    expect(metric.blocks[0]?.width).toBe(lengthFromMillimeters(225));
    expect(metric.rounding).toBe('exact');
    expect(from(45, 62).rounding).toBe('customary');
  });
});

describe('blocks that do not meet', () => {
  it('have a warning that a round is too long or too short, with the count of blocks', () => {
    const blocks = [plainBlock('Middle', 20), plainBlock('Seven', 7), plainBlock('Eight', 8)];
    const warnings = (block: string) =>
      warningsFor({ blocks, layout: centerOf('Middle', [{ round: 'blocks', block, corner: block }]) });
    expect(warnings('Seven')[0]).toContain(
      '3 of Seven are 1 in longer than the side of the top, which is 20 in. First add a border ½ in wide, or use a smaller block.',
    );
    expect(warnings('Eight')[0]).toContain('3 of Eight are 4 in longer');
    const shorter = [plainBlock('Middle', 20), plainBlock('Six', 6)];
    const six = { round: 'blocks', block: 'Six', corner: 'Six' } as const;
    expect(warningsFor({ blocks: shorter, layout: centerOf('Middle', [six]) })[0]).toContain(
      '3 of Six are 2 in shorter than the side of the top, which is 20 in. Use a larger block.',
    );
  });

  it('have a warning that patches cover more or less than the block, but not for a rounding error', () => {
    const block = (side: number) => ({ ...plainBlock('Odd', 4), width: inches(side), length: inches(side) });
    const warnings = (side: number) =>
      warningsFor({ blocks: [block(side)], layout: rowsOf([['Odd', 2, 2]]) });
    expect(warnings(3)).toEqual(['The patches of Odd cover 7 sq in more than the block.']);
    expect(warnings(5)).toEqual(['The patches of Odd leave 9 sq in of the block uncovered.']);
    const hair = { ...plainBlock('Odd', 4), width: lengthFromMillimeters(101.603125) };
    expect(warningsFor({ blocks: [hair], layout: rowsOf([['Odd', 2, 2]]) })).toEqual([]);
  });

  it('have one warning for each different row', () => {
    const blocks = [plainBlock('Six', 6), plainBlock('Five', 5)];
    const row = (times: number) => ({
      blocks: [
        { block: 'Six', times: 1 },
        { block: 'Five', times: 1 },
      ],
      times,
    });
    const layout: Layout = { layout: 'rows', rows: [row(3), row(2)], sashing: null, rounds: [] };
    expect(warningsFor({ blocks, layout }).map((warning) => warning.slice(0, 5))).toEqual(['Row 1', 'Row 2']);
  });
});

describe('kinds of blocks', () => {
  const blockRows = (changes: Partial<TopInput>) => {
    const answer = top.calculate(topWith(changes));
    const table = answer.ok ? answer.value.tables.find(({ title }) => title === 'Blocks') : undefined;
    return table?.rows.map(([name, count]) => [
      name?.kind === 'words' ? name.text : '',
      count?.kind === 'count' ? count.rounded : 0,
    ]);
  };

  it('are listed once by name, the first of two with the same name, and only if they are in the top', () => {
    const blocks = [plainBlock('Plain', 6), plainBlock('Idle', 6), { ...plainBlock('Plain', 9), units: [] }];
    expect(blockRows({ blocks, layout: rowsOf([['Plain', 2, 3]]) })).toEqual([['Plain', 6]]);
  });

  it('use the last of their fabrics for patches without one of their own, and no fabric for sewn blocks', () => {
    const unit = { unit: 'sashing', across: 2, down: 2, cornerstones: true, outside: false } as const;
    const sizes = { blockWidth: inches(9), blockLength: inches(9), sashing: inches(2) };
    const parts = [{ unit: { ...unit, ...sizes }, times: 1, fabrics: ['Light', 'Dark'] }];
    const blocks = [{ name: 'Sashed', width: inches(20), length: inches(20), units: parts }];
    const { patchList } = detailsFor({ blocks, layout: rowsOf([['Sashed', 1, 1]]) });
    // The strips are from the second fabric, and so is the cornerstone, since there is no third. No 9 in block is cut.
    expect(patchList.every(({ fabric }) => fabric === 'Dark')).toBe(true);
    expect(patchList.every(({ width, length }) => Math.min(width, length) === inches(2.5))).toBe(true);
  });
});
