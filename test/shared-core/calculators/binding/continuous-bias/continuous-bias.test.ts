import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { continuousBias } from '#core/calculators/binding/continuous-bias/continuous-bias';
import {
  areaRuleLength,
  continuousBiasLength,
  continuousBiasRows,
  planContinuousBias,
  squaredBiasLength,
} from '#core/calculators/binding/continuous-bias/work';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { walkTube } from './tube-walk';

const square = (side: number, strip: number, seam = 1 / 4) => ({
  side: inches(side),
  strip: inches(strip),
  seam: inches(seam),
});
const lengthInches = (side: number, strip: number) =>
  continuousBiasLength(square(side, strip)) / UNITS_PER_INCH;
const plan = (needed: number, strip: number, squareStep = 1 / 2, largest = 42) =>
  planContinuousBias({
    needed: inches(needed),
    strip: inches(strip),
    seam: inches(1 / 4),
    squareStep: inches(squareStep),
    largest: inches(largest),
  });

/** Sizes as makers cut them: eighths of an inch. */
const anySquare = fc.record({
  side: fc.integer({ min: 5 * 8, max: 60 * 8 }).map((eighths) => eighths / 8),
  strip: fc.integer({ min: 6, max: 32 }).map((eighths) => eighths / 8),
  seam: fc.integer({ min: 1, max: 8 }).map((sixteenths) => sixteenths / 16),
});

describe('the length a square gives', () => {
  // Derived from the geometry: side, strip, whole rows, length.
  it.each([
    [12, 2, 4, 65.05],
    [15, 2, 5, 102.53],
    [18, 2.25, 5, 123.74],
    [19, 2.5, 5, 130.81],
    [20, 2, 6, 165.46],
    [22, 2.5, 6, 182.43],
    [24, 2.25, 7, 232.64],
    [30, 2.5, 8, 333.75],
    [36, 2, 12, 602.45],
  ])('of %d in cut %d in wide is %d rows and %d in (derived)', (side, strip, rows, length) => {
    expect(continuousBiasRows(square(side, strip))).toBe(rows);
    expect(lengthInches(side, strip)).toBeCloseTo(length, 1);
  });

  it('is what a walk around the sewn tube finds, to 1e-6 in, for 500 squares, strips and seams', () => {
    let [walks, wholeWalks] = [0, 0];
    fc.assert(
      fc.property(anySquare, ({ side, strip, seam }) => {
        const walk = walkTube({ side, strip, seam });
        const asked = square(side, strip, seam);
        expect(continuousBiasRows(asked)).toBe(walk.rounds);
        expect(Math.abs(continuousBiasLength(asked) / UNITS_PER_INCH - walk.length)).toBeLessThan(1e-6);
        walks += 1;
        wholeWalks += walk.rounds > 0 ? 1 : 0;
      }),
      { numRuns: 500, seed: 20 },
    );
    expect(wholeWalks / walks).toBeGreaterThan(0.8);
  });

  it('never takes more fabric than there is between the seams', () => {
    fc.assert(
      fc.property(anySquare, ({ side, strip, seam }) => {
        const area = continuousBiasLength(square(side, strip, seam)) * inches(strip);
        expect(area).toBeLessThanOrEqual(inches(side - 2 * seam) ** 2 * (1 + 1e-6));
      }),
    );
  });

  it('grows with the square and shrinks with the seam; twice the size gives twice the length', () => {
    fc.assert(
      fc.property(anySquare, ({ side, strip, seam }) => {
        const length = continuousBiasLength(square(side, strip, seam));
        expect(continuousBiasLength(square(side + 1 / 8, strip, seam))).toBeGreaterThanOrEqual(length);
        expect(continuousBiasLength(square(side, strip, seam + 1 / 16))).toBeLessThanOrEqual(length);
        expect(continuousBiasLength(square(2 * side, 2 * strip, 2 * seam))).toBeCloseTo(2 * length, 3);
      }),
    );
  });

  it('is 0 when the strip is wider than the parallelogram is high', () => {
    expect(continuousBiasLength(square(3, 2.5))).toBe(0);
    expect(squaredBiasLength(square(3, 2.5))).toBe(0);
    expect(continuousBiasRows(square(0.25, 2.5))).toBe(0);
  });
});

describe('the rule of area, a²/w, which promises too much', () => {
  // LEW: length = side² / width. A 36 in square at 2 in is printed as 648 in; 602 is what there is.
  it.each([
    [36, 2, 648],
    [20, 2, 200],
    [12, 2, 72],
  ])('says of %d in at %d in that it gives %d in, and the square gives less', (side, strip, printed) => {
    expect(areaRuleLength(square(side, strip)) / UNITS_PER_INCH).toBeCloseTo(printed, 9);
    expect(lengthInches(side, strip)).toBeLessThan(printed);
  });

  it('always promises more than there is', () => {
    fc.assert(
      fc.property(anySquare, ({ side, strip, seam }) => {
        const asked = square(side, strip, seam);
        expect(areaRuleLength(asked)).toBeGreaterThan(continuousBiasLength(asked));
      }),
    );
  });
});

describe('the smallest square', () => {
  // Derived, in whole inches: the rule of area would have cut 19, 23 and 19.
  it.each([
    [135, 2.5, 20, 19],
    [250, 2, 24, 23],
    [100, 3.5, 21, 19],
    [230, 2.25, 24, 23],
  ])('for %d in of %d in strip is %d in, not the %d in of the rule of area', (needed, strip, side, ruled) => {
    expect(plan(needed, strip, 1)?.side).toBe(inches(side));
    expect(lengthInches(ruled, strip)).toBeLessThan(needed);
  });

  it('for 260 in at 2 1/2 in is 27 1/2 in: a square of 36 in gives plenty over (common practice)', () => {
    expect(lengthInches(36, 2.5)).toBeGreaterThan(260 * 1.8);
    expect(plan(260, 2.5)?.side).toBe(inches(27.5));
  });

  it('for the 496 in of eight place mats at 2 in fits in the 36 in that LEW cuts, and is smaller', () => {
    expect(lengthInches(36, 2)).toBeGreaterThan(496);
    expect(plan(496, 2)!.side).toBeLessThan(inches(36));
  });

  it('for 135 in at 2 1/2 in is within the 22 in that APQ-B cuts, 19 in and 3 in for seaming', () => {
    expect(lengthInches(22, 2.5)).toBeGreaterThan(135);
    expect(plan(135, 2.5)!.side).toBeLessThanOrEqual(inches(22));
  });

  it('is the one a step-by-step search finds', () => {
    const anyNeed = fc.record({
      needed: fc.integer({ min: 8, max: 8 * 600 }).map((eighths) => inches(eighths / 8)),
      strip: fc.integer({ min: 6, max: 24 }).map((eighths) => inches(eighths / 8)),
      seam: fc.integer({ min: 1, max: 8 }).map((sixteenths) => inches(sixteenths / 16)),
    });
    fc.assert(
      fc.property(anyNeed, ({ needed, strip, seam }) => {
        const squareStep = inches(1 / 2);
        const found = planContinuousBias({ needed, strip, seam, squareStep, largest: inches(108) });
        let side = squareStep;
        while (squaredBiasLength({ side, strip, seam }) < needed)
          side = inches(side / UNITS_PER_INCH + 1 / 2);
        expect(found).toMatchObject({ squares: 1, side });
        expect(found!.gives).toBeGreaterThanOrEqual(needed);
      }),
    );
  });

  it('becomes several equal ones when the fabric is too narrow for one', () => {
    const found = plan(900, 2.5, 1 / 2, 36)!;
    expect(found.squares).toBe(2);
    expect(found.side).toBeLessThanOrEqual(inches(36));
    expect(found.gives).toBeGreaterThanOrEqual(inches(900));
    expect(2 * squaredBiasLength({ side: found.side, strip: inches(2.5), seam: inches(1 / 4) })).toBeCloseTo(
      found.gives,
      6,
    );
  });

  it('does not exist when the fabric is narrower than a row', () => {
    expect(plan(100, 8, 1 / 2, 10)).toBeNull();
  });
});

describe('the calculator', () => {
  const asked = {
    needed: inches(312 + 12),
    stripWidth: inches(2.5),
    seamAllowance: inches(1 / 4),
    squareStep: inches(1 / 2),
    fabricWidth: inches(42),
    pieceWidth: inches(18),
    pieceLength: inches(22),
  };
  const answer = (change: Partial<typeof asked> = {}) => {
    const result = continuousBias.calculate({ ...asked, ...change });
    if (!result.ok) throw new Error(result.error.code);
    return result.value;
  };

  it('gives at least what is needed, rounded down', () => {
    const { details, figures } = answer();
    expect(details.gives).toBeGreaterThanOrEqual(asked.needed);
    const gives = figures.find(({ label }) => label === 'Strip it gives')!.quantity;
    expect(gives).toMatchObject({ kind: 'length', rounding: 'down' });
  });

  it('draws one line for each row, a strip width apart', () => {
    const { details, tables } = answer();
    const lines = tables.find(({ title }) => title === 'Lines to draw')!.rows;
    expect(lines).toHaveLength(details.rows);
    expect(lines[2]?.[1]).toMatchObject({ rounded: inches(7.5) });
  });

  it('has an 18 in square from a fat quarter and a 36 in one from a yard (common practice)', () => {
    const rows = answer().tables.find(({ title }) => title === 'What to cut it from')!.rows;
    const largest = (name: string) =>
      rows.find(([fabric]) => fabric?.kind === 'words' && fabric.text === name)?.[2];
    expect(largest('a fat quarter')).toMatchObject({ rounded: inches(18) });
    expect(largest('a yard')).toMatchObject({ rounded: inches(36) });
    expect(largest('the piece you have')).toMatchObject({ rounded: inches(18) });
  });

  it('says when a piece of fabric is too small', () => {
    const enough = (needed: number) =>
      answer({ needed: inches(needed) }).tables.find(({ title }) => title === 'What to cut it from')!
        .rows[0]?.[4];
    expect(enough(300)).toEqual({ kind: 'words', text: 'too little' });
    expect(enough(80)).toEqual({ kind: 'words', text: 'enough' });
  });

  it('sews no tube for a single row', () => {
    const work = (needed: number) =>
      JSON.stringify(answer({ needed: inches(needed) }).tables.find(({ title }) => title === 'How to do it'));
    expect(work(2)).not.toContain('shifted by one line');
    expect(work(100)).toContain('shifted by one line');
  });

  it('refuses fabric narrower than a row, and names the field', () => {
    const result = continuousBias.calculate({ ...asked, stripWidth: inches(8), fabricWidth: inches(10) });
    expect(result).toMatchObject({ ok: false, error: { code: 'fabric-too-narrow', field: ['fabricWidth'] } });
  });

  it('draws every part within its drawing', () => {
    const { diagram, details } = answer();
    const lines = diagram!.parts.filter((part) => part.part === 'line' && part.tone === 'mark');
    expect(lines).toHaveLength(details.rows);
    for (const part of diagram!.parts) {
      const points = part.part === 'polygon' ? part.points : part.part === 'line' ? [part.from, part.to] : [];
      for (const { x, y } of points) {
        expect(x).toBeGreaterThanOrEqual(-1e-6);
        expect(x).toBeLessThanOrEqual(diagram!.width + 1e-6);
        expect(y).toBeGreaterThanOrEqual(-1e-6);
        expect(y).toBeLessThanOrEqual(diagram!.height + 1e-6);
      }
    }
  });
});
