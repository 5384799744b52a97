import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accuracy } from '#core/calculators/accuracy/accuracy';
import type { AccuracyInput } from '#core/calculators/accuracy/accuracy-input';
import type { AccuracyDetails } from '#core/calculators/accuracy/accuracy-work';
import { formatSentence } from '#core/calculators/format-quantity';
import { STARTING_HABITS } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { lengthFromInches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';

const inches = lengthFromInches;

function inputWith(changes: Partial<AccuracyInput>): AccuracyInput {
  const outline = { shape: 'rectangle', width: inches(45), length: inches(60) } as const;
  return {
    ...accuracy.fromProject({ outline, hole: null, hasSlit: false, habits: STARTING_HABITS }),
    ...changes,
  };
}

function detailsFor(changes: Partial<AccuracyInput>): AccuracyDetails {
  const answer = accuracy.calculate(inputWith(changes));
  if (!answer.ok) throw new Error(answer.error.says);
  return answer.value.details;
}

/** Every way the errors may fall, each fully one way or the other: an independent count of what can happen. */
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
  it('is, for three patches cut and sewn within 1/32 in: 7/32 in at worst, 0.105 in as a rule (derived)', () => {
    const { block } = detailsFor({});
    expect(block.worst).toBe(inches(7 / 32));
    expect(block.likely / UNITS_PER_INCH).toBeCloseTo(Math.sqrt(3 + 8) / 32, 9);
  });

  it('is the largest and the root-mean-square of all ways the errors can fall', () => {
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

  it('never is more as a rule than at worst, and grows with every error and every patch', () => {
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

  it('is nothing for a maker who is never off', () => {
    const { block, row, column } = detailsFor({ cutOff: lengthFromUnits(0), seamOff: lengthFromUnits(0) });
    expect([block, row, column]).toEqual(Array(3).fill({ worst: 0, likely: 0 }));
  });
});

describe('a row of blocks', () => {
  it('adds up all patches and seams of its blocks', () => {
    const { row } = detailsFor({ patchesAcross: 3, blocksAcross: 4 });
    expect(row.worst).toBe(detailsFor({ patchesAcross: 12 }).block.worst);
  });

  it('forgets what happened inside blocks that are trimmed to size', () => {
    const { row } = detailsFor({ patchesAcross: 3, blocksAcross: 4, trimsBlocks: true });
    expect(row.worst).toBe(inches(4 / 32 + 6 / 32));
  });

  it('may differ from the next row by twice as much at worst and by √2 as a rule', () => {
    const { row, rowsApart } = detailsFor({});
    expect(rowsApart.worst).toBe(2 * row.worst);
    expect(rowsApart.likely).toBeCloseTo(Math.SQRT2 * row.likely, 9);
  });
});

describe('the check sizes', () => {
  // Common practice: four 5 in squares make 9 1/2 in; three 2 1/2 in strips make 6 1/2 in.
  it('of three strips cut 2½ in are 2½, 4½ and 6½ in', () => {
    const { checks } = detailsFor({ blockSize: inches(6), patchesAcross: 3, blocksAcross: 1 });
    expect(checks.slice(0, 3).map(({ size }) => size)).toEqual([2.5, 4.5, 6.5].map(inches));
  });

  it('end with the whole row and never name one width twice', () => {
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

describe('the seam error that is allowed', () => {
  it('brings the block back to just the tolerance', () => {
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

  it('is nothing where cutting alone uses the tolerance up, and not asked of a block of one patch', () => {
    const tight = detailsFor({ patchesAcross: 5, cutOff: inches(1 / 8), tolerance: inches(1 / 8) });
    expect([tight.seamOffForWorst, tight.seamOffForLikely]).toEqual([0, 0]);
    expect(detailsFor({ patchesAcross: 1 }).seamOffForWorst).toBeNull();
  });
});

it('warns where a block is as a rule further off than can be eased, with the size', () => {
  const answer = accuracy.calculate(inputWith({ seamOff: inches(1 / 16) }));
  const style = {
    display: { system: 'inch', inchStep: 32 },
    currency: currencyFromCode('EUR'),
    locale: 'en',
  } as const;
  const notes = answer.ok ? answer.value.notes : [];
  const warnings = notes.filter(({ kind }) => kind === 'warning').map((note) => formatSentence(note, style));
  expect(warnings).toHaveLength(1);
  expect(warnings[0]).toContain('off by 3/16 in');
});
