import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accuracy } from '#core/calculators/accuracy/accuracy';
import type { AccuracyInput } from '#core/calculators/accuracy/input';
import type { AccuracyDetails } from '#core/calculators/accuracy/work';
import { formatQuantity, formatSentence } from '#core/calculators/format-quantity';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { lengthFromInches, lengthFromMillimeters, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { wordsQuantity } from '#core/calculators/quantities';
import { answerOf } from '#test/helpers/answer-of';
import { METRIC_SETTINGS } from '#test/helpers/measurements';

const inches = lengthFromInches;

function inputWith(changes: Partial<AccuracyInput>): AccuracyInput {
  const outline = { shape: 'rectangle', width: inches(45), length: inches(60) } as const;
  return {
    ...accuracy.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
    ...changes,
  };
}

function detailsFor(changes: Partial<AccuracyInput>): AccuracyDetails {
  const answer = accuracy.calculate(inputWith(changes));
  if (!answer.ok) throw new Error(answer.error.says);
  return answer.value.details;
}

/** The sum for every combination of errors, each in full one way or the other: an independent count. */
function allWays(cuts: number, cutOff: number, seams: number, seamOff: number): readonly number[] {
  const errors = [
    ...Array.from({ length: cuts }, () => cutOff),
    ...Array.from({ length: seams }, () => 2 * seamOff),
  ];
  return Array.from({ length: 2 ** errors.length }, (_, ways) =>
    errors.reduce((sum, error, bit) => sum + ((ways >> bit) & 1 ? error : -error), 0),
  );
}

const anyOff = fc.integer({ min: 0, max: inches(1 / 8) }).map(lengthFromUnits);

describe('how far a block may be off', () => {
  it('is 7/32 in at worst and usually within 0.105 in for three patches cut and sewn to within 1/32 in (derived)', () => {
    const { block } = detailsFor({});
    expect(block.worst).toBe(inches(7 / 32));
    expect(block.likely / UNITS_PER_INCH).toBeCloseTo(Math.sqrt(3 + 8) / 32, 9);
  });

  it('is the largest and the root mean square of all combinations of errors', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5 }), anyOff, anyOff, (patches, cutOff, seamOff) => {
        const { block } = detailsFor({ patchesAcross: patches, cutOff, seamOff });
        const ways = allWays(patches, cutOff, patches - 1, seamOff);
        const square = ways.reduce((sum, way) => sum + way * way, 0) / ways.length;
        expect(block.worst).toBe(Math.max(...ways));
        expect(block.likely).toBeCloseTo(Math.sqrt(square), 6);
      }),
    );
  });

  it('is never larger usually than at worst, and grows with every patch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 39 }), anyOff, anyOff, (patchesAcross, cutOff, seamOff) => {
        const now = detailsFor({ patchesAcross, cutOff, seamOff });
        const more = detailsFor({ patchesAcross: patchesAcross + 1, cutOff, seamOff });
        for (const part of ['block', 'row', 'column', 'rowsApart'] as const) {
          expect(now[part].likely).toBeLessThanOrEqual(now[part].worst + 1e-6);
          expect(more[part].worst).toBeGreaterThanOrEqual(now[part].worst);
          expect(more[part].likely).toBeGreaterThanOrEqual(now[part].likely);
        }
      }),
    );
  });

  it('is 0 if cuts and seams are never off', () => {
    const { block, row, column } = detailsFor({ cutOff: lengthFromUnits(0), seamOff: lengthFromUnits(0) });
    expect([block, row, column]).toEqual(Array(3).fill({ worst: 0, likely: 0 }));
  });
});

describe('a row of blocks', () => {
  it('adds the errors of all patches and seams of its blocks', () => {
    const { row } = detailsFor({ patchesAcross: 3, blocksAcross: 4 });
    expect(row.worst).toBe(detailsFor({ patchesAcross: 12 }).block.worst);
  });

  it('does not count the errors inside blocks that are trimmed to size', () => {
    const { row } = detailsFor({ patchesAcross: 3, blocksAcross: 4, trimsBlocks: true });
    expect(row.worst).toBe(inches(4 / 32 + 6 / 32));
  });

  it('may differ from the next row by twice its error at worst and usually by √2 times its error', () => {
    const { row, rowsApart } = detailsFor({});
    expect(rowsApart.worst).toBe(2 * row.worst);
    expect(rowsApart.likely).toBeCloseTo(Math.SQRT2 * row.likely, 9);
  });
});

describe('the check sizes', () => {
  // Common practice: four 5 in squares make 9 1/2 in; three 2 1/2 in strips make 6 1/2 in.
  it('are 2½, 4½ and 6½ in for three strips cut at 2½ in', () => {
    const { checks } = detailsFor({ blockSize: inches(6), patchesAcross: 3, blocksAcross: 1 });
    expect(checks.slice(0, 3).map(({ size }) => size)).toEqual([2.5, 4.5, 6.5].map(inches));
  });

  it('end with the whole row and have different labels', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 20 }),
        fc.boolean(),
        (n, m, trimsBlocks) => {
          const input = { patchesAcross: n, blocksAcross: m, trimsBlocks, blockSize: inches(9) };
          const { checks } = detailsFor(input);
          expect(checks.at(-1)!.size).toBeCloseTo(inches(9 * m + 0.5), 6);
          expect(new Set(checks.map(({ label }) => label)).size).toBe(checks.length);
        },
      ),
    );
  });
});

describe('the allowed seam error', () => {
  it('makes the error of a block equal to the tolerance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), anyOff, (patchesAcross, cutOff) => {
        const tolerance = inches(2);
        const allowed = detailsFor({ patchesAcross, cutOff, tolerance });
        const worst = patchesAcross * cutOff + (patchesAcross - 1) * 2 * allowed.seamOffForWorst!;
        const likely = Math.sqrt(
          patchesAcross * cutOff ** 2 + (patchesAcross - 1) * (2 * allowed.seamOffForLikely!) ** 2,
        );
        expect(worst).toBeCloseTo(tolerance, 6);
        expect(likely).toBeCloseTo(tolerance, 6);
      }),
    );
  });

  it('is none if the cuts alone are off by more than the tolerance, and is not asked of a block of one patch', () => {
    const tight = detailsFor({ patchesAcross: 5, cutOff: inches(1 / 8), tolerance: inches(1 / 8) });
    expect([tight.seamOffForWorst, tight.seamOffForLikely]).toEqual([null, null]);
    const cutBadly = { seamOff: inches(0), cutOff: inches(1 / 8), tolerance: inches(1 / 8) };
    const { figures } = answerOf(accuracy, inputWith({ ...cutBadly, patchesAcross: 3 }));
    expect(figures.at(-1)?.quantity).toEqual(wordsQuantity('none: the cuts alone are off by more'));
    expect(detailsFor({ patchesAcross: 1 }).seamOffForWorst).toBeNull();
  });
});

it('warns with the size if a block is usually off by more than can be eased', () => {
  const answer = accuracy.calculate(inputWith({ seamOff: inches(1 / 16) }));
  const style = {
    display: { system: 'inch', inchStep: 32 },
    currency: currencyFromCode('EUR'),
    locale: 'en',
  } as const;
  const notes = answer.ok ? answer.value.notes : [];
  const warnings = notes.filter(({ kind }) => kind === 'warning').map((note) => formatSentence(note, style));
  expect(warnings).toHaveLength(1);
  expect(warnings[0]).toContain('off by up to 3/16 in');
});

const answerFor = (changes: Partial<AccuracyInput>) => {
  const answer = accuracy.calculate(inputWith(changes));
  if (!answer.ok) throw new Error(answer.error.says);
  return answer.value;
};

describe('the notes', () => {
  const notesFor = (changes: Partial<AccuracyInput>) =>
    answerFor(changes)
      .notes.filter(({ kind }) => kind !== 'caution')
      .map(({ says }) => says.slice(0, 12));
  const warning = 'A block is u';
  const atWorst = 'If all error';
  const trimming = 'Trimmed bloc';
  const always = 'A seam that ';

  // Four cuts, each off by c, are usually within 2c and off by 4c at worst (derived).
  const cutsOnly = { patchesAcross: 4, blocksAcross: 1, seamOff: inches(0), cutOff: inches(1 / 32) };

  it.each([
    [1 / 17, [warning, trimming, always]],
    [1 / 16, [atWorst, trimming, always]],
    [1 / 9, [atWorst, trimming, always]],
    [1 / 8, [always]],
    [1, [always]],
  ])(
    'for an error usually within 1/16 in and 1/8 in at worst, if %d in can be eased',
    (tolerance, starts) => {
      expect(
        notesFor({ ...cutsOnly, tolerance: lengthFromUnits(Math.round(tolerance * UNITS_PER_INCH)) }),
      ).toEqual(starts);
    },
  );

  it('do not suggest trimming if blocks are trimmed already', () => {
    const rows = { ...cutsOnly, blocksAcross: 5, tolerance: inches(1 / 8) };
    expect(notesFor(rows)).toEqual([trimming, always]);
    expect(notesFor({ ...rows, trimsBlocks: true, tolerance: inches(1 / 64) })).toEqual([warning, always]);
  });
});

describe('the sizes to measure', () => {
  it('are those after each patch of a block, then after one, two, half and all blocks of a row', () => {
    const namesOf = (blocksAcross: number) =>
      detailsFor({ patchesAcross: 2, blocksAcross, blockSize: inches(9) }).checks.map(({ label, size }) => [
        label,
        size / UNITS_PER_INCH,
      ]);
    // Common practice: two squares of 5 in make 9 1/2 in unfinished, 9 in finished.
    const block = [
      ['One patch, cut', 5],
      ['2 patches', 9.5],
      ['One block', 9.5],
    ];
    expect(namesOf(1)).toEqual(block);
    expect(namesOf(7)).toEqual([...block, ['2 blocks', 18.5], ['3 blocks', 27.5], ['7 blocks', 63.5]]);
    expect(namesOf(8)).toEqual([...block, ['2 blocks', 18.5], ['4 blocks', 36.5], ['8 blocks', 72.5]]);
  });

  it('name a block trimmed only if blocks are trimmed', () => {
    const labels = (trimsBlocks: boolean) => detailsFor({ trimsBlocks }).checks.map(({ label }) => label);
    expect(labels(false)).toContain('One block');
    expect(labels(true)).toContain('One block, trimmed');
  });

  it('print limits that allow no more than the error: a cut of 3 1/2 in, off by 1/32 in', () => {
    const style = {
      display: { system: 'inch', inchStep: 8 },
      currency: currencyFromCode('USD'),
      locale: 'en-US',
    } as const;
    const { tables, figures, explanation } = answerFor({ cutOff: inches(1 / 32), seamOff: inches(1 / 32) });
    const printed = tables[0]!.rows[0]!.map((cell) => formatQuantity(cell, style));
    expect(printed).toEqual(['One patch, cut', '3½ in', '1/32 in', '3 15/32 in', '3 17/32 in']);
    expect(formatQuantity(figures[0]!.quantity, style)).toBe('7/64 in');
    const terms = explanation[0]!.terms.map(({ symbol, quantity }) => [
      symbol,
      formatQuantity(quantity, style),
    ]);
    expect(terms).toEqual([
      ['n', '3'],
      ['c', '1/32 in'],
      ['e', '1/32 in'],
    ]);
  });

  it('have limits: a cut of 3 1/2 in may be off by 1/32 in', () => {
    const [row] = answerFor({ cutOff: inches(1 / 32), seamOff: inches(0), blockSize: inches(9) }).tables[0]!
      .rows;
    const exact = row!.map((cell) => (cell.kind === 'length' ? cell.exact / UNITS_PER_INCH : cell.kind));
    expect(exact).toEqual(['words', 3.5, 1 / 32, 3.5 - 1 / 32, 3.5 + 1 / 32]);
  });
});

it('shows the errors of block, row and top first, and then the allowed seam error if there is a seam', () => {
  const labels = (patchesAcross: number) => answerFor({ patchesAcross }).figures.map(({ label }) => label);
  expect(labels(3).at(-1)).toBe('Seams within this usually keep a block right');
  expect(labels(1)).toEqual(labels(3).slice(0, -1));
  expect(labels(1)).toHaveLength(7);
  expect(answerFor({ patchesAcross: 1 }).explanation).toHaveLength(7);
  expect(answerFor({ patchesAcross: 3 }).explanation).toHaveLength(9);
});

describe('starting from a project', () => {
  it.each([
    [45, 60, 5, 6],
    [44, 8, 4, 1],
    [120, 300, 13, 33],
  ])('of %d by %d in starts with %d by %d blocks of 9 in', (width, length, blocksAcross, blocksDown) => {
    const outline = { shape: 'rectangle', width: inches(width), length: inches(length) } as const;
    const start = accuracy.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS });
    expect(start).toMatchObject({ blocksAcross, blocksDown, blockSize: inches(9), tolerance: inches(1 / 8) });
  });

  it('in metric units starts with 22.5 cm blocks sewn to within 0.8 mm, and no more blocks than the field allows', () => {
    const outline = { shape: 'square', side: lengthFromMillimeters(20_000) } as const;
    const settings = METRIC_SETTINGS;
    expect(accuracy.fromProject({ outline, hole: null, hasSlit: false, settings })).toMatchObject({
      blockSize: lengthFromMillimeters(225),
      seamOff: lengthFromMillimeters(0.8),
      cutOff: lengthFromMillimeters(0.8),
      tolerance: lengthFromMillimeters(3),
      blocksAcross: 60,
      blocksDown: 60,
    });
  });
});

describe('the drawing of a block', () => {
  const boundsOf = (points: readonly { readonly x: number; readonly y: number }[]) => {
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  };

  it('shows its patches side by side in two fabrics by turns, the outer ones with their seam allowance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), (patchesAcross) => {
        const { diagram } = answerFor({ patchesAcross, blockSize: inches(9), seamAllowance: inches(1 / 4) });
        const polygons = diagram!.parts.filter((part) => part.part === 'polygon');
        const fabric = polygons.filter(({ tone }) => tone !== 'seam');
        expect(fabric.map(({ tone }) => tone)).toEqual(
          Array.from({ length: patchesAcross }, (_, index) =>
            index % 2 === 0 ? 'fabric' : 'fabric-alternate',
          ),
        );
        const boxes = fabric.map(({ points }) => boundsOf(points));
        const widths = boxes.map(({ left, right }) => (right - left) / UNITS_PER_INCH);
        const ends = patchesAcross === 1 ? 1 / 2 : 1 / 4;
        widths.forEach((width, index) => {
          const isOuter = index === 0 || index === patchesAcross - 1;
          expect(width).toBeCloseTo(9 / patchesAcross + (isOuter ? ends : 0), 6);
        });
        boxes.slice(1).forEach(({ left }, index) => expect(left).toBeCloseTo(boxes[index]!.right, 6));
        const seam = boundsOf(polygons.at(-1)!.points);
        const edge = boxes[0]!.left;
        expect(edge).toBeCloseTo(inches(9.5) / 6, 6);
        expect(seam).toEqual({
          left: edge + inches(1 / 4),
          right: edge + inches(9.25),
          top: boxes[0]!.top + inches(1 / 4),
          bottom: boxes[0]!.top + inches(9.25),
        });
      }),
    );
  });

  it('has a dimension line above it for each of its first six widths, all from its left edge, none on top of another', () => {
    for (const patchesAcross of [1, 3, 6, 9]) {
      const { diagram, details } = answerFor({ patchesAcross, blockSize: inches(9) });
      const edge = inches(9.5) / 6;
      const lines = diagram!.parts.filter((part) => part.part === 'dimension');
      const count = Math.min(patchesAcross, 6);
      expect(lines.map(({ length }) => length)).toEqual(
        details.checks.slice(0, count).map(({ size }) => Math.round(size)),
      );
      lines.forEach(({ from, offset }, index) => {
        expect(from).toEqual({ x: edge, y: edge * count });
        expect(offset).toBeCloseTo(edge * (index + 1 / 2), 6);
      });
      expect(diagram!.height).toBeCloseTo(edge * count + inches(9.5) + edge, 6);
      expect(diagram!.width).toBeCloseTo(inches(9.5) + 2 * edge, 6);
    }
  });
});
