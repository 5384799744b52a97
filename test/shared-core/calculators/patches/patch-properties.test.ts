import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PatchSizeInput } from '#core/calculators/patches/patch-size/input';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import { patchUnits, planUnit, type UnitSizes } from '#core/calculators/patches/patch-units';
import { patchListSchema } from '#core/domain/patch-list';
import { PIECING_CAUTIONS } from '#core/calculators/patches/piecing-cautions';
import { CAUTIONS } from '#core/domain/cautions';
import { lengthFromInches, lengthFromMillimeters, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { anySeam, anySizesOf, startOf, unitKinds } from './any-unit';
import { detailsOf, patchInput } from './bench-input';

const anySettings: fc.Arbitrary<Partial<PatchSizeInput>> = fc.record({
  count: fc.integer({ min: 1, max: 60 }),
  seamAllowance: anySeam,
  rounding: fc.constantFrom('customary', 'exact'),
  cutStep: fc.constantFrom(
    ...[1 / 4, 1 / 8, 1 / 16, 1 / 32, 1 / 64].map(lengthFromInches),
    ...[1, 5].map(lengthFromMillimeters),
  ),
  fabricWidth: fc.constantFrom(...[20, 40, 42, 108].map(lengthFromInches)),
});

/** Every length of the sizes changed, counts and choices kept. */
function mapLengths(sizes: UnitSizes, change: (length: number) => number): UnitSizes {
  const counts = ['across', 'down', 'rounds'];
  return Object.fromEntries(
    Object.entries(sizes).map(([name, value]: [string, unknown]) => [
      name,
      typeof value === 'number' && !counts.includes(name)
        ? lengthFromUnits(Math.round(change(value)))
        : value,
    ]),
  ) as UnitSizes;
}

describe.each(unitKinds)('cut sizes of %s', (kind) => {
  it('are never smaller than the exact size, and less than a step larger than it or the customary size', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySettings, (unit, settings) => {
        const answer = patchSize.calculate(patchInput(unit, settings));
        if (!answer.ok) {
          expect(['wider-than-fabric', 'too-much-fabric']).toContain(answer.error.code);
          return;
        }
        const plan = planUnit(unit, patchInput(unit, settings).seamAllowance).patches;
        const isSetting = settings.rounding === 'customary';
        const fabric = plan.filter(({ source }) => source !== 'sewn');
        fabric.forEach(({ across, along }, index) => {
          const given = answer.value.details.patches[index]!;
          for (const [edge, rounded] of [
            [across, given.across],
            [along, given.along],
          ] as const) {
            const target = Math.max(edge.exact, isSetting ? (edge.customary?.exact ?? 0) : 0);
            expect(rounded).toBeGreaterThanOrEqual(edge.exact - 1e-6);
            expect(rounded - target).toBeLessThan(settings.cutStep!);
            expect(rounded % settings.cutStep!).toBe(0);
          }
        });
      }),
    );
  });

  it('grow with the finished size on every edge', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySeam, fc.integer({ min: 101, max: 200 }), (unit, seam, percent) => {
        const [small, large] = [
          planUnit(unit, seam),
          planUnit(
            mapLengths(unit, (size) => (size * percent) / 100),
            seam,
          ),
        ];
        small.patches.forEach((patch, index) => {
          expect(large.patches[index]!.across.exact).toBeGreaterThanOrEqual(patch.across.exact);
          expect(large.patches[index]!.along.exact).toBeGreaterThanOrEqual(patch.along.exact);
        });
      }),
    );
  });

  it('grow with the seam', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySeam, (unit, seam) => {
        const [thin, wide] = [planUnit(unit, seam), planUnit(unit, seam + 100)];
        thin.patches.forEach((patch, index) => {
          expect(wide.patches[index]!.across.exact).toBeGreaterThan(patch.across.exact);
          expect(wide.patches[index]!.along.exact).toBeGreaterThan(patch.along.exact);
        });
      }),
    );
  });

  it('do not depend on the unit of length: a unit twice as large with twice the seam is cut twice as large', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySeam, (unit, seam) => {
        const [once, twice] = [
          planUnit(unit, seam),
          planUnit(
            mapLengths(unit, (size) => 2 * size),
            2 * seam,
          ),
        ];
        once.patches.forEach((patch, index) => {
          expect(twice.patches[index]!.across.exact / patch.across.exact).toBeCloseTo(2, 9);
          expect(twice.patches[index]!.along.exact / patch.along.exact).toBeCloseTo(2, 9);
        });
      }),
    );
  });

  it('give the same finished size when calculated back', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySeam, (unit, seam) => {
        const cut = cutSizesOf(unit, seam);
        const back = patchUnits[unit.unit].fromCut(cut, seam).sizes as UnitSizes;
        for (const [name, size] of Object.entries(unit) as [string, unknown][]) {
          const found = Object.entries(back).find(([other]) => other === name)?.[1] as unknown;
          if (typeof size === 'number') expect(found, name).toBeCloseTo(size, 3);
          else expect(found, name).toBe(size);
        }
      }),
    );
  });

  it('give as many patches as needed from the strips, and take no strip too many for one kind of patch', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySettings, (unit, settings) => {
        const answer = patchSize.calculate(patchInput(unit, settings));
        if (!answer.ok) return;
        const { patches, patchList: list, fabricLengths } = answer.value.details;
        const input = patchInput(unit, settings);
        const area = list.reduce((sum, patch) => sum + patch.width * patch.length * patch.count, 0);
        const bought = fabricLengths.reduce((sum, { length }) => sum + length * input.fabricWidth, 0);
        expect(bought).toBeGreaterThanOrEqual(area);
        expect(list.every((patch) => patch.width <= input.fabricWidth)).toBe(true);
        expect(patchListSchema.safeParse(list).success).toBe(true);
        for (const patch of patches) {
          expect(Number.isInteger(patch.count) && patch.count >= 1).toBe(true);
          // Laid side by side they fit the strip, and one more would not.
          if (patch.perStrip > 0 && isRectangle(kind)) {
            expect(patch.perStrip * patch.along).toBeLessThanOrEqual(input.fabricWidth);
            expect((patch.perStrip + 1) * patch.along).toBeGreaterThan(input.fabricWidth);
          }
        }
      }),
    );
  });

  it('come with figures, steps, the usual cautions and a drawing inside its frame', () => {
    const answer = patchSize.calculate(patchInput(startOf(kind)));
    if (!answer.ok) throw new Error(answer.error.says);
    const { figures, tables, explanation, notes, diagram } = answer.value;
    expect(figures.length).toBeGreaterThan(2);
    for (const { columns, rows } of tables) {
      expect(rows.every((row) => row.length === columns.length)).toBe(true);
    }
    expect(explanation.every(({ formula, terms }) => formula !== '' && terms.length > 0)).toBe(true);
    expect(notes.filter(({ kind: note }) => note === 'caution')).toEqual(PIECING_CAUTIONS);
    expect(PIECING_CAUTIONS.map(({ says }) => says)).toContain(CAUTIONS.rotaryBlade);
    const points = diagram!.parts.flatMap((part) => (part.part === 'polygon' ? part.points : []));
    expect(points.length).toBeGreaterThan(2);
    for (const { x, y } of points) {
      expect(x >= 0 && x <= diagram!.width && y >= 0 && y <= diagram!.height).toBe(true);
    }
  });

  it('are refused with the field if the seams take the whole patch', () => {
    const tiny = mapLengths(startOf(kind), () => lengthFromInches(1 / 4));
    const answer = patchSize.calculate(patchInput(tiny, { sizesAre: 'cut' }));
    expect(answer).toMatchObject({ ok: false, error: { code: 'cut-too-small', field: ['unit'] } });
  });
});

function isRectangle(kind: UnitSizes['unit']): boolean {
  return planUnit(startOf(kind), lengthFromInches(1 / 4)).patches.every(({ shape }) => shape.isRectangle);
}

/** What a maker would measure on the cut pieces: for each size field the edge of the patch that has it. */
function cutSizesOf(unit: UnitSizes, seam: number): UnitSizes {
  const patches = planUnit(unit, seam).patches;
  const first = patches[0]!;
  if (unit.unit === 'half-rectangle-triangles') {
    return { ...unit, width: first.across.exact, length: first.along.exact } as UnitSizes;
  }
  const isEveryPartGiven = [
    'rectangle',
    'log-cabin',
    'courthouse-steps',
    'sashing',
    'butted-border',
    'mitered-border',
    'on-point-set',
  ];
  return withNumbers(unit, (size) =>
    isEveryPartGiven.includes(unit.unit) ? size + 2 * seam : first.across.exact,
  );
}

function withNumbers(unit: UnitSizes, change: (size: number) => number): UnitSizes {
  const counts = ['across', 'down', 'rounds'];
  return Object.fromEntries(
    Object.entries(unit).map(([name, value]: [string, unknown]) => [
      name,
      typeof value === 'number' && !counts.includes(name) ? change(value) : value,
    ]),
  ) as UnitSizes;
}

describe('units of length', () => {
  it('a size in millimeters and the same size in inches give the same cut', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (tenths) => {
        const inInches = lengthFromInches(tenths * 5);
        const inMillimeters = lengthFromMillimeters(tenths * 127);
        expect(inInches).toBe(inMillimeters);
        const side = lengthFromInches(tenths / 4);
        const metric = lengthFromMillimeters((tenths * 25.4) / 4);
        expect(detailsOf({ unit: 'square', side })).toEqual(detailsOf({ unit: 'square', side: metric }));
      }),
    );
  });

  it('a 9 1/2 in unfinished block finishes at 9 in and is cut at 9 1/2 in again (common practice)', () => {
    const [unfinished, block] = [lengthFromInches(9.5), lengthFromInches(9)];
    expect(detailsOf({ unit: 'square', side: unfinished }, { sizesAre: 'cut' }).finishedWidth).toBe(block);
    expect(detailsOf({ unit: 'square', side: block }).patches[0]!.across).toBe(unfinished);
  });

  it('precut squares of 5 and 10 in and 2½ in strips give well-known sizes (common practice)', () => {
    const finished = (unit: UnitSizes) => detailsOf(unit, { sizesAre: 'cut' }).finishedWidth / UNITS_PER_INCH;
    expect(finished({ unit: 'square', side: lengthFromInches(5) })).toBe(4.5);
    expect(
      finished({ unit: 'half-square-triangles', side: lengthFromInches(5), atATime: 'two' }),
    ).toBeCloseTo(4.1464, 4);
    expect(
      finished({ unit: 'half-square-triangles', side: lengthFromInches(10), atATime: 'eight' }),
    ).toBeCloseTo(4.1464, 4);
    const strip: UnitSizes = {
      unit: 'rectangle',
      width: lengthFromInches(2.5),
      length: lengthFromInches(4.5),
    };
    expect(finished(strip)).toBe(2);
  });
});
