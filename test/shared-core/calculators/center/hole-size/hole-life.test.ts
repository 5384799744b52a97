import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holeSize } from '#core/calculators/center/hole-size/hole-size';
import type { HoleSizeInput } from '#core/calculators/center/hole-size/input';
import type { Quantity } from '#core/calculators/explanation';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, lengthFromMillimeters, UNITS_PER_INCH } from '#core/units/length';
import { answer, around, RING, starting } from './hole';

describe('the hole through its life', () => {
  const POLE: Partial<HoleSizeInput> = {
    from: 'across',
    measure: inches(2),
    ease: inches(1 / 4),
    bindingThickness: inches(1 / 32),
    washPercent: 4,
    rulerStep: inches(1 / 8),
  };
  const inInches = (change: Partial<HoleSizeInput>) => {
    const { exactDiameter, diameter, bound, washed } = answer({ ...POLE, ...change }).details;
    return [exactDiameter, diameter, bound, washed].map((size) => size / UNITS_PER_INCH);
  };

  // Common practice: 1/4 in of ease for a pole, 3 to 5% in the first wash with cotton batting.
  it.each([
    // 2.25 washed, 2.25 ÷ 0.96 = 2.34375 bound, and 1/16 in of binding.
    ['washed 4%', {}, [2.40625, 2.5, 2.4375, 2.34]],
    ['never washed', { washPercent: 0 }, [2.3125, 2.375, 2.3125, 2.3125]],
    ['faced, never washed', { washPercent: 0, bindingThickness: inches(0) }, [2.25, 2.25, 2.25, 2.25]],
    // 2.40625 ÷ 0.97
    ['cut before it is quilted', { drawUpPercent: 3 }, [2.480670103, 2.5, 2.3625, 2.268]],
  ])('for a pole of 2 in, %s (derived)', (_what, change, expected) => {
    const sizes = inInches(change);
    expect(sizes).toHaveLength(expected.length);
    sizes.forEach((size, at) => expect(size).toBeCloseTo(expected[at]!, 6));
  });

  const anyLife = fc.record({
    from: fc.constantFrom('around', 'across'),
    measure: fc.integer({ min: 8, max: 400 }).map((eighths) => inches(eighths / 8)),
    ease: fc.integer({ min: 0, max: 16 }).map((eighths) => inches(eighths / 8)),
    passes: fc.integer({ min: 0, max: 200 }).map((eighths) => inches(eighths / 8)),
    hasSlit: fc.boolean(),
    bindingThickness: fc.integer({ min: 0, max: 16 }).map((parts) => inches(parts / 64)),
    drawUpPercent: fc.integer({ min: 0, max: 100 }).map((tenths) => tenths / 10),
    washPercent: fc.integer({ min: 0, max: 100 }).map((tenths) => tenths / 10),
    rulerStep: fc.constantFrom(inches(1 / 8), inches(1 / 2), lengthFromMillimeters(5)),
  }) satisfies fc.Arbitrary<Partial<HoleSizeInput>>;

  it('leaves room for the thing and its ease once it has been drawn up, bound and washed, point by point', () => {
    fc.assert(
      fc.property(anyLife, (life) => {
        const { diameter, bound, washed } = answer(life).details;
        const points = Array.from({ length: 360 }, (_, degrees) => {
          const angle = (degrees * Math.PI) / 180;
          const drawnUp = (diameter / 2) * (1 - life.drawUpPercent / 100);
          // The binding stands in from the edge toward the middle.
          const edge = { x: drawnUp * Math.cos(angle), y: drawnUp * Math.sin(angle) };
          const inner = {
            x: edge.x - life.bindingThickness * Math.cos(angle),
            y: edge.y - life.bindingThickness * Math.sin(angle),
          };
          return { inner, after: inner.x * (1 - life.washPercent / 100) };
        });
        const widest = (xs: readonly number[]) => Math.max(...xs) - Math.min(...xs);
        expect(bound).toBeCloseTo(widest(points.map(({ inner }) => inner.x)), 5);
        expect(washed).toBeCloseTo(widest(points.map(({ after }) => after)), 5);
        const across = life.from === 'around' ? life.measure / Math.PI : life.measure;
        const widestThing = life.hasSlit ? across : Math.max(across, life.passes);
        expect(washed).toBeGreaterThan(widestThing + life.ease - 1);
        // One ruler step less would not do.
        const less = (diameter - life.rulerStep) * (1 - life.drawUpPercent / 100) - 2 * life.bindingThickness;
        expect(less * (1 - life.washPercent / 100)).toBeLessThan(widestThing + life.ease);
      }),
    );
  });

  it('is cut no smaller for more ease, thickness, draw-up or shrinkage', () => {
    const more = {
      ease: inches(3 / 8),
      bindingThickness: inches(1 / 16),
      drawUpPercent: 1,
      washPercent: 5,
      passes: inches(2.125),
    } as const;
    const [before] = inInches({});
    for (const [field, value] of Object.entries(more))
      expect(inInches({ [field]: value })[0], field).toBeGreaterThan(before!);
  });

  it('with a slit does not have to pass the foot of a stand', () => {
    const stand = { from: 'across', measure: inches(2), passes: inches(14) } as const;
    expect(answer({ ...POLE, ...stand }).details.through).toBe(inches(14));
    expect(answer({ ...POLE, ...stand, hasSlit: true }).details.through).toBe(inches(2));
    const [tip] = answer({ ...POLE, ...stand }).notes;
    expect(tip).toMatchObject({
      says: 'The thing it goes over decides. With a slit, a hole of {cut} is enough.',
      values: { cut: { rounded: answer({ ...POLE, ...stand, hasSlit: true }).details.diameter } },
    });
    expect(answer({ ...POLE, passes: inches(2) }).notes[0]?.says).not.toContain('decides');
  });

  // Common practice: a closed ring made 2 in too small for the foot of its stand.
  it('is warned of where a hole of a given size does not pass', () => {
    const says = (change: Partial<HoleSizeInput>) =>
      answer({ from: 'wish', measure: inches(8), ...change }).notes.map((note) => note.says);
    const warning: unknown = expect.stringContaining('Make the hole larger, or plan a slit.');
    const asks: unknown = expect.stringContaining('A closed ring goes on over an end.');
    expect(says({ passes: inches(10) })).toContainEqual(warning);
    expect(says({ passes: inches(10), hasSlit: true })).not.toContainEqual(warning);
    expect(says({ passes: inches(8) })).not.toContainEqual(warning);
    expect(says({ passes: inches(8), washPercent: 1 })).toContainEqual(warning);
    expect(says({})).toContainEqual(asks);
    expect(says({ hasSlit: true })).not.toContainEqual(asks);
  });

  it('has no answer where the binding fills it', () => {
    const result = holeSize.calculate(
      starting({ from: 'wish', measure: inches(1 / 4), bindingThickness: inches(1 / 8) }),
    );
    expect(result).toMatchObject({
      ok: false,
      error: { code: 'filled-by-binding', field: ['bindingThickness'] },
    });
  });

  it('starts with a binding, a wash and the slit of the project', () => {
    const start = holeSize.fromProject({ ...RING, hasSlit: true });
    expect(start).toMatchObject({
      bindingThickness: inches(1 / 32),
      washPercent: 4,
      drawUpPercent: 0,
      hasSlit: true,
    });
    expect(
      holeSize.fromProject({ ...RING, settings: { ...STARTING_SETTINGS, unitSystem: 'metric' } }),
    ).toMatchObject({
      bindingThickness: lengthFromMillimeters(1),
    });
  });

  it('of an answer saved without these fields reads as before', () => {
    const later = ['hasSlit', 'passes', 'bindingThickness', 'drawUpPercent', 'washPercent'];
    const input = starting(around(20));
    const older = Object.fromEntries(Object.entries(input).filter(([name]) => !later.includes(name)));
    expect(Object.keys(older)).toHaveLength(Object.keys(input).length - later.length);
    expect(holeSize.input.parse(older)).toEqual(input);
    expect(answer(holeSize.input.parse(older)).details.diameter).toBe(inches(7));
  });

  it('is one value in figures, table and working', () => {
    const { figures, tables, explanation, details } = answer(POLE);
    const exact = (quantity: Quantity | undefined) => (quantity?.kind === 'length' ? quantity.exact : NaN);
    expect(figures.map(({ quantity }) => exact(quantity))).toContain(details.washed);
    expect(tables[0]!.rows.map(([, across]) => exact(across))).toEqual([
      details.diameter,
      details.bound,
      details.washed,
      (details.washed - inches(2)) / 2,
    ]);
    expect(explanation.map(({ result }) => exact(result))).toEqual(
      expect.arrayContaining([details.bound, details.washed]),
    );
  });

  it('has its bound edge in the drawing', () => {
    const folds = (change: Partial<HoleSizeInput>) =>
      answer(change).diagram!.parts.filter((part) => part.part === 'circle' && part.tone === 'fold');
    expect(folds({ ...POLE, washPercent: 0 })).toMatchObject([
      { radius: answer(POLE).details.bound / 2 - inches(1 / 16) },
    ]);
    expect(folds({})).toEqual([]);
  });
});
