import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornerExtra, stitchStopBefore } from '#core/calculators/binding/outer-binding/corner-miters';
import { outerBinding } from '#core/calculators/binding/outer-binding/outer-binding';
import type { OuterBindingInput } from '#core/calculators/binding/outer-binding/input';
import { formatSentence } from '#core/calculators/format-quantity';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import {
  lengthAdd,
  lengthFromInches as inches,
  lengthFromMillimeters,
  lengthSubtract,
  UNITS_PER_INCH,
} from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { perimeterMovedIn } from '../clipped';

const throwSize: Outline = { shape: 'rectangle', width: inches(60), length: inches(72) };
const starting = (outline: Outline, change: Partial<OuterBindingInput> = {}): OuterBindingInput => ({
  ...outerBinding.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
  ...change,
});
const answer = (outline: Outline, change: Partial<OuterBindingInput> = {}) => {
  const result = outerBinding.calculate(starting(outline, change));
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const style = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
} as const;

describe('straight strips', () => {
  it('around 264 in are 8 with diagonal joins from 40 in fabric; plain division says 7 (derived)', () => {
    // A loop loses one join more than a row of strips; the overlap here is that join.
    const { details } = answer(throwSize, { fabricWidth: inches(40), overlap: inches(2.5) });
    expect(details.edge).toBe(inches(264));
    expect(details.strips).toBe(8);
    expect(details.fabric).toBe(inches(20));
  });

  it('never give less than is needed, and one strip fewer would', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 130 }),
        fc.integer({ min: 4, max: 130 }),
        fc.constantFrom('diagonal', 'straight'),
        (width, length, join) => {
          const outline: Outline = { shape: 'rectangle', width: inches(width), length: inches(length) };
          const { details } = answer(outline, { join });
          const given = [inches(42)];
          // Sewn on one by one, as at the machine: each strip after the first loses one join.
          const cost = join === 'diagonal' ? inches(2.5) : inches(1 / 2);
          while (given.at(-1)! < details.needed)
            given.push(lengthSubtract(lengthAdd(given.at(-1)!, inches(42)), cost));
          expect([details.strips, details.given]).toEqual([given.length, given.at(-1)]);
        },
      ),
    );
  });

  it('need fabric with the safety extra, rounded up to what shops cut', () => {
    const { details } = answer(throwSize);
    expect(details.fabricToBuy % starting(throwSize).yardageStep).toBe(0);
    expect(details.fabricToBuy).toBeGreaterThanOrEqual(details.fabric * 1.05);
    expect(details.fabricToBuy - details.fabric * 1.05).toBeLessThan(starting(throwSize).yardageStep);
  });
});

describe('the edge', () => {
  it('of a 50 in skirt with a slit and a 5 in hole is 157.08 + 2 · 22.5 (derived; common practice counts 157 and 50)', () => {
    const skirt: Outline = { shape: 'circle', diameter: inches(50) };
    const change = { hole: { diameter: inches(5) }, hasSlit: true, slitBoundWith: 'outside' } as const;
    expect(answer(skirt, change).details.edge / UNITS_PER_INCH).toBeCloseTo(202.08, 2);
    expect(answer(skirt, { ...change, slitBoundWith: 'hole' }).details.edge / UNITS_PER_INCH).toBeCloseTo(
      157.08,
      2,
    );
  });

  it('grows at inner corners by the extra length of the stitching line (offset by a polygon library)', () => {
    const corners = [
      [0, 0],
      [40, 0],
      [40, 20],
      [20, 20],
      [20, 40],
      [0, 40],
    ].map(([x = 0, y = 0]) => ({
      x: inches(x),
      y: inches(y),
    }));
    const seam = inches(1 / 4);
    const stitched = perimeterMovedIn(corners, seam);
    const edge = inches(160);
    expect(edge + cornerExtra(270, seam) - 5 * 2 * stitchStopBefore(90, seam)).toBeCloseTo(stitched, 0);
    const sides = [40, 20, 20, 20, 20, 40].map(inches);
    const lShape: Outline = { shape: 'sides', sides, width: inches(40), length: inches(40) };
    const { details } = answer(lShape, { innerCorners: 1 });
    expect(details.needed).toBeCloseTo(edge + inches(1 / 2) + inches(12), 6);
  });

  it('says where to stop at each corner', () => {
    const corners = (outline: Outline) =>
      answer(outline).tables.find(({ title }) => title === 'Corners')?.rows[0];
    expect(corners(throwSize)?.[2]).toMatchObject({ rounded: inches(1 / 4) });
    const hexagon = corners({ shape: 'hexagon', acrossFlats: inches(30) });
    expect(hexagon?.[0]).toMatchObject({ rounded: 6 });
    expect(hexagon?.[2]).toMatchObject({ exact: expect.closeTo(inches(1 / 4) / Math.sqrt(3), 6) as number });
    expect(corners({ shape: 'circle', diameter: inches(30) })).toBeUndefined();
  });
});

describe('the bend of a circle', () => {
  const circle = (across: number): Outline => ({ shape: 'circle', diameter: inches(across) });

  it('takes bias whatever its size, also where the turned strip gives less than straight grain would (common practice)', () => {
    for (const across of [14, 38, 50, 76, 110]) {
      const { details } = answer(circle(across), { stripWidth: inches(2.5) });
      expect(details.isBiasNeeded).toBe(true);
      expect(details.biasWay?.way).toBe('continuous-bias');
    }
    // Derived: at 110 in the edge gives 1/4 of 54 3/4 and the fold on the back 3/8 of it, 0.7%.
    const { bend } = answer(circle(110), { stripWidth: inches(2.5) }).details;
    expect(100 * bend!.strain).toBeCloseTo(37.5 / 54.75, 9);
    expect(answer(throwSize).details.bend).toBeNull();
  });

  it('says so in words and puts the square first', () => {
    const { figures, notes } = answer(circle(50));
    expect(figures[0]?.label).toBe('Square for continuous bias');
    const words = notes.map((note) => formatSentence(note, style)).join(' ');
    expect(words).toContain('A curved edge takes bias, whatever its size.');
    expect(words).toContain('stretches or eases by 1.5%');
  });

  it('is judged at the ends of an ellipse', () => {
    const { bend } = answer({ shape: 'ellipse', width: inches(40), length: inches(60) }).details;
    expect(bend?.radius).toBeCloseTo((400 / 30) * UNITS_PER_INCH, 6);
  });
});

describe('the ways to cut it', () => {
  it('all give enough strip, and none more than its fabric holds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 100 }), fc.integer({ min: 8, max: 100 }), (width, length) => {
        const { needed, ways } = answer({
          shape: 'rectangle',
          width: inches(width),
          length: inches(length),
        }).details;
        expect(ways[0]?.way).toBe('straight-strips');
        for (const way of ways) {
          expect(way.gives).toBeGreaterThanOrEqual(needed);
          expect(way.spare).toBeCloseTo(way.gives - needed, 6);
          expect(way.scraps).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 50 },
    );
  });

  it('are four for a throw, the continuous one with two seams', () => {
    const { details, tables } = answer(throwSize);
    expect(details.ways.map(({ way, seams }) => [way, seams])).toEqual([
      ['straight-strips', 6],
      ['bias-strips', expect.any(Number)],
      ['bias-strips-of-square', expect.any(Number)],
      ['continuous-bias', 2],
    ]);
    expect(tables[0]?.rows).toHaveLength(4);
  });
});

describe('what has no answer', () => {
  it.each([
    ['hole-too-wide', { hole: { diameter: inches(60) } }],
    ['strip-too-narrow', { stripWidth: inches(1 / 2), seamAllowance: inches(1 / 4) }],
    ['strips-too-short', { stripWidth: inches(5), fabricWidth: inches(4) }],
  ] as const)('is refused as %s', (code, change) => {
    expect(outerBinding.calculate(starting(throwSize, change))).toMatchObject({ ok: false, error: { code } });
  });

  it('is a seam wider than the tightest bend', () => {
    const button: Outline = { shape: 'circle', diameter: inches(1 / 2) };
    expect(outerBinding.calculate(starting(button))).toMatchObject({
      ok: false,
      error: { code: 'bend-too-tight' },
    });
  });
});

it('gives the same strips in inches and in metric', () => {
  const metric = outerBinding.fromProject({
    outline: throwSize,
    hole: null,
    hasSlit: false,
    settings: { ...STARTING_SETTINGS, unitSystem: 'metric' },
  });
  const result = outerBinding.calculate(metric);
  expect(result.ok && result.value.details.strips).toBe(answer(throwSize).details.strips);
  expect(metric.squareStep).toBe(lengthFromMillimeters(10));
  expect(result.ok && result.value.details.fabricToBuy % lengthFromMillimeters(50)).toBe(0);
});

it('warns when the fold does not reach the stitching on the back, and calls no strip just right for a seam that wants another', () => {
  const words = (seam: number, stripWidth = STARTING_SETTINGS.bindingStripWidth) =>
    answer(throwSize, { seamAllowance: inches(seam), stripWidth })
      .notes.map((note) => formatSentence(note, style))
      .join(' ');
  expect(words(1 / 2)).toContain('the fold stops ⅜ in before the stitching on the back');
  expect(words(1 / 4)).toContain(
    'With a seam allowance of ¼ in, the fold passes the stitching on the back by ⅜ in. This strip would fill a seam of 21/64 in; a strip of 2 in fits your seam.',
  );
  expect(words(1 / 4, inches(2))).toContain('by ⅛ in: this strip fits this seam.');
  expect(words(1 / 4, inches(4))).toContain('This strip would fill a seam of 37/64 in;');
  expect(words(3 / 8)).toContain('by 0 in, which is less cover than you asked for.');
});

it('explains every step with a formula, its numbers and a rule', () => {
  const { explanation } = answer(throwSize, { innerCorners: 2 });
  expect(explanation.map(({ label }) => label)).toEqual([
    'Length of the edge',
    'Extra at inner corners',
    'Strip needed',
    'Strips',
    'What they give',
    'Fabric for straight strips',
    'Fabric to buy',
    'Strip width that fits your seam',
    'Front width your strip fits',
    'Cover your strip gives on the back',
  ]);
  for (const { formula, terms, rule } of explanation) {
    expect(terms.length).toBeGreaterThan(0);
    for (const { symbol } of terms)
      expect(`${formula} ${terms.map(({ means }) => means).join(' ')}`).toContain(symbol);
    expect(rule.says).toMatch(/^[A-Z].+\.$/);
  }
});

describe('what is bought for a curved edge', () => {
  const round: Outline = { shape: 'circle', diameter: inches(58) };

  it('is the fabric for its bias, the same in figure, working, need and cuts, and never the straight strips', () => {
    const { details, figures, explanation } = answer(round, { safetyExtra: 0 });
    const asked = { ...starting(round), safetyExtra: 0 };
    const square = details.biasWay!;
    expect([square.width, square.length]).toEqual([inches(24), inches(24)]);
    expect(figures.find(({ label }) => label === 'Fabric to buy')?.quantity).toEqual(
      explanation.find(({ label }) => label === 'Fabric to buy')?.result,
    );
    expect(details.fabric).toBe(inches(24));
    expect(details.fabricToBuy).toBe(inches(27));
    expect(explanation.map(({ label }) => label)).not.toContain('Fabric for straight strips');
    const [need] = outerBinding.needs!(asked, details, asked.fabricWidth);
    expect(need?.amount).toMatchObject({ patches: [{ width: inches(24), length: inches(24), count: 1 }] });
    expect(outerBinding.cuts!(asked, details)).toMatchObject([{ width: inches(24), length: inches(24) }]);
  });

  it('is one value in figure, working, need and cuts for every circle that can be bound', () => {
    for (let across = 4; across <= 120; across += 1) {
      const outline: Outline = { shape: 'circle', diameter: inches(across) };
      const { details, figures, explanation } = answer(outline);
      const { biasWay: bias, fabric, fabricToBuy } = details;
      const figure = figures.find(({ label }) => label === 'Fabric to buy')?.quantity;
      expect(figure).toMatchObject({ rounded: fabricToBuy });
      expect(explanation.find(({ label }) => label === 'Fabric to buy')?.result).toEqual(figure);
      expect(fabric).toBe(bias!.length * Math.ceil(bias!.pieces / Math.floor(inches(42) / bias!.width)));
      const [need] = outerBinding.needs!(starting(outline), details, inches(42));
      const patch = { width: bias!.width, length: bias!.length, count: bias!.pieces };
      expect(need?.amount).toMatchObject({ patches: [patch] });
      expect(outerBinding.cuts!(starting(outline), details)).toMatchObject([patch]);
    }
  });

  it('is never straight strips, also where fabric only 4 in wide gives no square', () => {
    const narrow = { fabricWidth: inches(4), stripWidth: inches(2.5) };
    const result = outerBinding.calculate({ ...starting(round), ...narrow });
    if (result.ok) {
      const [need] = outerBinding.needs!({ ...starting(round), ...narrow }, result.value.details, inches(42));
      expect(need?.amount.measure).toBe('patches');
    } else expect(result.error).toMatchObject({ code: 'fabric-too-narrow', field: ['fabricWidth'] });
  });
});

it('still reads an answer that was saved with a limit for straight grain', () => {
  const saved = { ...starting(throwSize), straightGrainGive: 2 };
  const read = outerBinding.input.safeParse(JSON.parse(JSON.stringify(saved)));
  expect(read.data).toEqual(starting(throwSize));
});

it('has tips and steps for corners, a start in the middle of a side, and an edge basted first', () => {
  const words = (outline: Outline, own: Partial<OuterBindingInput> = {}) =>
    answer(outline, own)
      .notes.map((note) => formatSentence(note, style))
      .join(' ');
  expect(words({ shape: 'hexagon', acrossFlats: inches(30) })).toContain('at a corner of 120°');
  expect(words({ shape: 'octagon', acrossFlats: inches(30) })).toContain('in line with the next edge');
  expect(words(throwSize)).not.toContain('in line with the next edge');
  expect(words(throwSize)).toContain('baste ⅛ in to 3/16 in inside the edge');
  expect(words(throwSize)).toContain('start in the middle of a side');
  expect(words(throwSize, { hasSlit: true })).toContain('can be bound in one');
  const howTo = (outline: Outline) =>
    answer(outline)
      .tables.find(({ title }) => title === 'How to do it')!
      .rows.flat();
  expect(howTo(throwSize)).toContainEqual(
    expect.objectContaining({ kind: 'count', of: ['strip', 'strips'] }),
  );
  expect(howTo({ shape: 'circle', diameter: inches(58) })).toContainEqual(
    expect.objectContaining({ kind: 'size' }),
  );
});
