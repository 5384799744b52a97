import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fussyCutting } from '#core/calculators/patches/fussy-cutting/fussy-cutting';
import type { FussyCuttingInput } from '#core/calculators/patches/fussy-cutting/input';
import { patchesFrom } from '#core/calculators/patches/fussy-cutting/work';
import { lengthFromInches } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const inches = lengthFromInches;
const plain = {
  ...fussyCutting.fromProject(SAMPLE_MEASUREMENTS),
  seam: inches(1 / 4),
  fabricWidth: inches(42),
};

describe('patches that show the same figure', () => {
  // Published: DID: 96 in of a print that repeats every 27 in takes 4 repeats, 108 in, and the order one repeat more.
  it('takes whole repeats from cut to cut, and one more', () => {
    const long = { windowLength: inches(59.5), repeatAlong: inches(27), count: 2, windowWidth: inches(30) };
    const { details } = answerOf(fussyCutting, { ...plain, ...long });
    expect(details).toMatchObject({ across: 1, rows: 2, stepAlong: inches(81) });
    expect(details.fabricLength).toBe(inches(27 + 81 + 60));
  });

  // Derived: 4 in windows cut 4 1/2, repeat 6: (42 − 6 − 4 1/2) ÷ 6 = 5.25, so 6 across; 12 take two rows, 6 + 6 + 4 1/2 in.
  it('takes 16 1/2 in for twelve of 4 in on a print that repeats every 6 in', () => {
    const { details } = answerOf(fussyCutting, plain);
    expect(details).toMatchObject({ across: 6, rows: 2, fabricLength: inches(16.5) });
    const { figures } = answerOf(fussyCutting, plain);
    const atHand = figures.find(({ label }) => label === 'Patches from the length at hand');
    // Derived: (36 − 6 − 4 1/2) ÷ 6 = 4.25, so five rows of 6.
    expect(atHand?.quantity).toMatchObject({ rounded: 30 });
  });

  it('refuses a patch that is not sure to fit across', () => {
    const wide = { ...plain, windowWidth: inches(36), repeatAcross: inches(6) };
    expect(refusalOf(fussyCutting, wide).code).toBe('no-patch-across');
  });
});

/** Patches along one side, marked one after the other on a print that starts `start` in: a figure is passed over if it overlaps. */
function marked(room: number, start: number, repeat: number, cut: number): number {
  let count = 0;
  let free = 0;
  for (let at = start; at + cut <= room; at += repeat) {
    if (at < free) continue;
    count += 1;
    free = at + cut;
  }
  return count;
}

const quarter = (most: number) =>
  fc.integer({ min: 1, max: most * 4 }).map((quarters) => inches(quarters / 4));
const anyInput: fc.Arbitrary<FussyCuttingInput> = fc.record({
  windowWidth: quarter(20),
  windowLength: quarter(20),
  seam: fc.constant(inches(1 / 4)),
  repeatAcross: quarter(20),
  repeatAlong: quarter(20),
  count: fc.integer({ min: 1, max: 60 }),
  atHand: quarter(60),
  fabricWidth: fc.constant(inches(42)),
  yardageStep: fc.constant(inches(4.5)),
});

describe('the drawing of the patches on the print', () => {
  const drawing = (change: Partial<FussyCuttingInput>) => {
    const { diagram, details } = answerOf(fussyCutting, { ...plain, ...change });
    const polygons = (tone: string) =>
      diagram!.parts.flatMap((part) => (part.part === 'polygon' && part.tone === tone ? [part.points] : []));
    const figures = diagram!.parts.flatMap((part) => (part.part === 'circle' ? [part.center] : []));
    return { diagram: diagram!, details, patches: polygons('fabric'), windows: polygons('seam'), figures };
  };

  it('shows as many patches as the rows hold, each with its figure in the middle of its window', () => {
    const { patches, windows, figures, diagram } = drawing({});
    expect([patches.length, windows.length, figures.length]).toEqual([12, 12, 12]);
    expect(windows[0]).toContainEqual({ x: inches(6.25), y: inches(6.25) });
    expect(figures[0]).toEqual({ x: inches(8.25), y: inches(8.25) });
    expect(diagram).toMatchObject({ width: inches(42), height: inches(16.5) });
  });

  // Derived: patches cut 8 in on a print of 6 in take every second figure: 12 in on. Between two of them lies one passed over.
  it('shows the figures that are passed over', () => {
    const { patches, figures } = drawing({ windowWidth: inches(7.5), windowLength: inches(4), count: 3 });
    expect(patches).toHaveLength(3);
    expect(figures.map(({ x }) => x)).toEqual([10, 16, 22, 28, 34].map(inches));
  });

  it('stays readable: six rows at most, and on a fine print only the figures that are cut', () => {
    const { diagram, patches, figures } = drawing({ count: 300 });
    expect(diagram.title).toBe('The first 6 rows of patches on the print');
    expect(patches).toHaveLength(36);
    const fine = drawing({ repeatAcross: inches(1 / 2), repeatAlong: inches(1 / 2) });
    expect(fine.figures).toHaveLength(fine.patches.length);
    expect(figures).toHaveLength(36);
  });

  it('keeps every patch apart from the others and inside the fabric', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        if (!fussyCutting.calculate(input).ok) return;
        const { patches, diagram, details } = drawing(input);
        const corners = patches.map(([first]) => first!);
        for (const { x, y } of corners) {
          expect(x + details.cutWidth).toBeLessThanOrEqual(diagram.width);
          expect(y + details.cutLength).toBeLessThanOrEqual(diagram.height);
          const others = corners.filter((one) => one.x !== x || one.y !== y);
          const overlaps = (one: { readonly x: number; readonly y: number }) =>
            Math.abs(one.x - x) < details.cutWidth && Math.abs(one.y - y) < details.cutLength;
          expect(others.some(overlaps)).toBe(false);
        }
      }),
    );
  });
});

describe('wherever the print starts', () => {
  it('finds as many figures as marking them one after the other from the worst start', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const answer = fussyCutting.calculate(input);
        if (!answer.ok) return;
        const { across, rows, cutWidth, cutLength, fabricLength } = answer.value.details;
        const worst = (room: number, repeat: number, cut: number) =>
          Math.min(
            ...Array.from({ length: 33 }, (_, part) => marked(room, (repeat * part) / 32, repeat, cut)),
          );
        expect(across).toBe(worst(input.fabricWidth, input.repeatAcross, cutWidth));
        expect(worst(fabricLength, input.repeatAlong, cutLength)).toBe(rows);
        expect(worst(fabricLength - 1, input.repeatAlong, cutLength)).toBe(rows - 1);
      }),
    );
  });

  it('gives the patches asked for from the length it asks for, and never takes less for more of them', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const answer = fussyCutting.calculate(input);
        if (!answer.ok) return;
        const { details } = answer.value;
        const enough = patchesFrom(details.fabricLength, details, input.repeatAlong);
        expect(enough).toBeGreaterThanOrEqual(input.count);
        expect(enough - input.count).toBeLessThan(details.across);
        expect(patchesFrom(details.fabricLength - 1, details, input.repeatAlong)).toBeLessThan(input.count);
        const more = answerOf(fussyCutting, { ...input, count: input.count + 1 }).details;
        expect(more.fabricLength).toBeGreaterThanOrEqual(details.fabricLength);
      }),
    );
  });
});
