import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveStrain } from '#core/calculators/curves/curve-strain/curve-strain';
import type { CurveStrainInput } from '#core/calculators/curves/curve-strain/input';
import { turnedStrain } from '#core/calculators/curves/strain';
import type { Outline } from '#core/domain/outline';
import { CAUTIONS } from '#core/domain/cautions';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';

const ofProject = (outline: Outline, holeAcross: number | null) =>
  curveStrain.fromProject({
    outline,
    hole: holeAcross === null ? null : { diameter: inches(holeAcross) },
    hasSlit: false,
    settings: STARTING_SETTINGS,
  });
const starting = (change: Partial<CurveStrainInput> = {}): CurveStrainInput => ({
  ...ofProject({ shape: 'circle', diameter: inches(50) }, 6.5),
  ...change,
});
const answer = (change: Partial<CurveStrainInput> = {}) => {
  const result = curveStrain.calculate(starting(change));
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};

describe('a strip cut to the raw edge of a hole', () => {
  // Derived: stretch with a 1/4 in and with a 3/8 in seam.
  it.each([
    [0.75, 33.3, 50],
    [1, 25, 37.5],
    [1.5, 16.7, 25],
    [2, 12.5, 18.8],
    [3, 8.3, 12.5],
    [5, 5, 7.5],
  ])('of radius %d in would stretch %d%% or %d%%', (radius, quarter, threeEighths) => {
    const stretch = (seam: number) =>
      100 * answer({ radius: inches(radius), seamAllowance: inches(seam) }).details.cutToEdgeStrain;
    expect(stretch(1 / 4)).toBeCloseTo(quarter, 1);
    expect(Math.round(stretch(3 / 8) * 10) / 10).toBeCloseTo(threeEighths, 1);
  });

  it('is eased by less than 1.5% on an outside curve of 18 in or more (derived)', () => {
    const outside = (radius: number) =>
      answer({ side: 'outside', radius: inches(radius) }).details.cutToEdgeStrain;
    expect(outside(18)).toBeLessThan(0.015);
  });
});

describe('outside and inside', () => {
  it('have the same strains if their stitching has the same radius', () => {
    const inside = answer({ radius: inches(3.25) }).details;
    const outside = answer({ side: 'outside', radius: inches(3.75) }).details;
    expect(inside.seamRadius).toBe(inches(3.5));
    expect(outside.seamRadius).toBe(inches(3.5));
    expect(outside.strains).toEqual(inside.strains);
    expect(outside.verdict).toBe(inside.verdict);
  });

  it('swap stretching and easing', () => {
    const ways = (side: 'inside' | 'outside') =>
      answer({ side, radius: inches(6) }).tables[0]!.rows.map(([, how]) =>
        how?.kind === 'words' ? how.text : '',
      );
    expect(ways('inside')).toEqual(['stands up', 'eased', 'stretched']);
    expect(ways('outside')).toEqual(['stands up', 'stretched', 'eased']);
  });
});

describe('an arc', () => {
  it('is as long as its share of the circle and has the same strains', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 360 }), (arc) => {
        const part = answer({ arc }).details;
        const whole = answer({ arc: 360 }).details;
        expect(part.seamLine).toBeCloseTo((whole.seamLine * arc) / 360, 4);
        expect(part.strains).toEqual(whole.strains);
      }),
    );
  });

  it('of a quarter circle around a 3 in corner is 4.32 in along the stitching (derived)', () => {
    const corner = answer({ side: 'outside', radius: inches(3), arc: 90 });
    expect(corner.details.seamLine / UNITS_PER_INCH).toBeCloseTo((Math.PI / 2) * 2.75, 9);
  });
});

describe('the smallest radius and the widest strip', () => {
  it('are where the verdict changes', () => {
    fc.assert(
      fc.property(fc.constantFrom('inside', 'outside'), fc.integer({ min: 14, max: 32 }), (side, eighths) => {
        const stripWidth = inches(eighths / 8);
        const { smallestRadius } = answer({ side, stripWidth, radius: inches(20) }).details;
        const verdict = (radius: number) =>
          answer({ side, stripWidth, radius: inches(radius / UNITS_PER_INCH) }).details.verdict;
        expect(['comfortable', 'with care']).toContain(verdict(smallestRadius * 1.001));
        expect(['hard', 'too tight']).toContain(verdict(smallestRadius * 0.999));
      }),
    );
  });

  it('are listed for both folds', () => {
    expect(answer({ stripWidth: inches(1.5) }).tables[1]?.rows).toHaveLength(2);
    const narrow = answer({ stripWidth: inches(3 / 4), fold: 'double', seamAllowance: inches(5 / 16) });
    expect(narrow.tables[1]?.rows).toHaveLength(2);
  });
});

describe('common practice', () => {
  const round = (across: number, change: Partial<CurveStrainInput> = {}) =>
    answer({ side: 'outside', radius: inches(across / 2), stripWidth: inches(2.25), ...change }).details;

  it('binds rounds of 4 1/2 and 5 in with 2 1/4 in bias: 12.5% and 11.1%, with care', () => {
    expect(100 * turnedStrain(round(4.5).strains)).toBeCloseTo(12.5, 9);
    expect(100 * turnedStrain(round(5).strains)).toBeCloseTo(11.11, 2);
    expect([round(4.5).verdict, round(5).verdict]).toEqual(['with care', 'with care']);
    expect(round(14).verdict).toBe('comfortable');
  });

  it('binds a 6 1/2 in hole with 2 1/2 in bias: 10.7%, with care', () => {
    const { strains, verdict } = answer({ stripWidth: inches(2.5) }).details;
    expect(100 * strains.back).toBeCloseTo(10.714, 3);
    expect(verdict).toBe('with care');
  });

  it('takes straight grain around no curve, however wide', () => {
    for (const radius of [2, 19, 60, 400]) {
      const refused = curveStrain.calculate(
        starting({ side: 'outside', grain: 'straight', radius: inches(radius) }),
      );
      expect(refused).toMatchObject({ ok: false, error: { code: 'needs-bias', field: ['grain'] } });
    }
  });

  it('feeds the strip in around an outside curve and never pulls it hard inside', () => {
    const words = (change: Partial<CurveStrainInput>) =>
      answer(change)
        .notes.map(({ says }) => says)
        .join(' ');
    expect(words({ side: 'outside', radius: inches(5) })).toContain('never stretch it');
    expect(words({ side: 'inside' })).toContain('never pulled hard');
  });
});

describe('input without an answer', () => {
  it('is refused with the field to change', () => {
    expect(curveStrain.calculate(starting({ side: 'outside', radius: inches(1 / 4) }))).toMatchObject({
      ok: false,
      error: { code: 'bend-too-tight', field: ['radius'] },
    });
    expect(curveStrain.calculate(starting({ stripWidth: inches(1 / 2) }))).toMatchObject({
      ok: false,
      error: { code: 'strip-too-narrow' },
    });
  });
});

it('starts with the hole, the outside curve or a rounded corner of the project', () => {
  const round: Outline = { shape: 'circle', diameter: inches(50) };
  expect(ofProject(round, 6.5)).toMatchObject({ side: 'inside', radius: inches(3.25), arc: 360 });
  expect(ofProject(round, null)).toMatchObject({ side: 'outside', radius: inches(25), arc: 360 });
  expect(ofProject({ shape: 'square', side: inches(40) }, null)).toMatchObject({ side: 'outside', arc: 90 });
});

it('has a tip that no figure for bias stretch was found, a warning if the turned strip gives too much, and the usual cautions', () => {
  const notes = (change: Partial<CurveStrainInput>) => answer(change).notes.map(({ says }) => says);
  expect(notes({}).join(' ')).toContain('No published figure');
  expect(notes({ stripWidth: inches(4) })[0]).toContain('Once turned');
  const { rotaryBlade, machineNeedle, pins, iron, usedBlades } = CAUTIONS;
  expect(notes({})).toEqual(expect.arrayContaining([rotaryBlade, machineNeedle, pins, iron, usedBlades]));
});

it('draws the given arc', () => {
  const arcs = answer({ arc: 90 }).diagram!.parts.filter((part) => part.part === 'arc');
  expect(arcs.map(({ toDegrees }) => toDegrees)).toEqual([90, 90, 90]);
});
