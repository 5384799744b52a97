import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centerFind } from '#core/calculators/center/center-find/center-find';
import type { CenterFindInput, Measured } from '#core/calculators/center/center-find/input';
import type { Measurements } from '#core/domain/measurements';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { anyMeasurements, METRIC_SETTINGS } from '#test/helpers/measurements';

const starting = (outline: Outline, settings = STARTING_SETTINGS) =>
  centerFind.fromProject({ outline, hole: null, hasSlit: false, settings });

describe('the way that a project starts with', () => {
  it.each<[Outline, Measured['way']]>([
    [{ shape: 'square', side: inches(48) }, 'four-sides'],
    [{ shape: 'rectangle', width: inches(48), length: inches(60) }, 'four-sides'],
    [{ shape: 'circle', diameter: inches(48) }, 'diameters'],
    [{ shape: 'hexagon', acrossFlats: inches(48) }, 'hexagon'],
    [{ shape: 'octagon', acrossFlats: inches(48) }, 'octagon'],
    [{ shape: 'ellipse', width: inches(48), length: inches(60) }, 'folding'],
    [{ shape: 'rounded', width: inches(48), length: inches(60), cornerRadius: inches(6) }, 'folding'],
    [
      { shape: 'sides', sides: [inches(30), inches(31), inches(32)], width: inches(30), length: inches(28) },
      'corners',
    ],
  ])('fits its outline: %o', (outline, way) => {
    expect(starting(outline).measured.way).toBe(way);
  });

  it('has lengths on the step of the ruler, which agree and need no second look', () => {
    const lengthsIn = (value: unknown): readonly number[] =>
      typeof value === 'number'
        ? [value]
        : typeof value === 'object' && value !== null
          ? Object.values(value).flatMap(lengthsIn)
          : [];
    fc.assert(
      fc.property(anyMeasurements, fc.constantFrom(4, 8, 16), (project: Measurements, inchStep) => {
        const settings = { ...project.settings, inchStep } as const;
        const input = centerFind.fromProject({ ...project, settings });
        const step = settings.unitSystem === 'inch' ? UNITS_PER_INCH / inchStep : 320;
        for (const length of lengthsIn(input.measured)) {
          // The shortest length a field takes is 1 in, which is no whole number of millimeters.
          if (length > UNITS_PER_INCH) expect(length % step).toBe(0);
        }
        // The corners of sides as measured are only a sketch, and six lengths between four of them may all round the same way.
        const answered = centerFind.calculate(input);
        if (!answered.ok || project.outline.shape === 'sides') return;
        expect(answered.value.notes.map(({ says }) => says).join()).not.toContain('do not fit together');
      }),
      { numRuns: 200 },
    );
  });

  it('has the finished lengths of that shape: a round, a hexagon and an octagon 48 in, an oval 48 by 60 in (derived)', () => {
    const inchesIn = (value: unknown): unknown =>
      typeof value === 'number'
        ? value / UNITS_PER_INCH
        : Array.isArray(value)
          ? value.map(inchesIn)
          : typeof value === 'object' && value !== null
            ? Object.values(value).map(inchesIn)
            : value;
    const lengthsOf = (outline: Outline) => inchesIn(starting(outline).measured);
    expect(lengthsOf({ shape: 'circle', diameter: inches(48) })).toEqual(['diameters', 48, 48, 48, 48]);
    // A side of 48 ÷ √3 = 27.713; past one corner √3 · 27 3/4 = 48.064, rounded so that the three add up to 144 1/4.
    const side = 27.75;
    expect(lengthsOf({ shape: 'hexagon', acrossFlats: inches(48) })).toEqual([
      'hexagon',
      ...[side, side, side, side, side, side],
      ...[55.5, 55.5, 55.5],
      ...[48.125, 48, 48.125],
    ]);
    // A side of 48 · (√2 − 1) = 19.882; long diagonals 2.6131 · 19 7/8 = 51.936, and 1.8478 · 19 7/8 = 36.724.
    const [short, past] = [19.875, 36.75];
    expect(lengthsOf({ shape: 'octagon', acrossFlats: inches(48) })).toEqual([
      'octagon',
      ...[short, short, short, short, short, short, short, short],
      ...[51.875, 51.875, 52, 52],
      ...[past, past, 36.625, past],
    ]);
    const between = [38.375, 38.5, 38.375, 38.375];
    expect(lengthsOf({ shape: 'ellipse', width: inches(48), length: inches(60) })).toEqual([
      'folding',
      60,
      48,
      ...between,
    ]);
  });

  it('is accurate to 1/8 in or 3 mm, or to the step of a coarser ruler', () => {
    const outline = { shape: 'square', side: inches(48) } as const;
    expect(starting(outline).accuracy).toBe(inches(1 / 8));
    expect(starting(outline, { ...STARTING_SETTINGS, inchStep: 4 }).accuracy).toBe(inches(1 / 4));
    expect(starting(outline, METRIC_SETTINGS).accuracy).toBe(960);
  });
});

it('is measured again by the same rules in every way: an input of one way has only its own fields', () => {
  const input: CenterFindInput = starting({ shape: 'circle', diameter: inches(48) });
  expect(centerFind.input.safeParse(input).success).toBe(true);
  expect(Object.keys(input.measured)).toEqual(['way', 'fromA', 'fromB', 'fromC', 'fromD']);
});
