import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batting } from '#core/calculators/batting/batting';
import { MOST_WIDTHS } from '#core/calculators/batting/work';
import type { BattingInput } from '#core/calculators/batting/input';
import { lengthFromInches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { CAUTIONS } from '#core/domain/cautions';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyOutline } from '#test/helpers/measurements';

const inches = lengthFromInches;
const plain: BattingInput = { ...batting.fromProject(SAMPLE_MEASUREMENTS), safetyExtraPercent: 0 };

function sheet(width: number, length: number, changes: Partial<BattingInput> = {}): BattingInput {
  const outline = { shape: 'rectangle', width: inches(width), length: inches(length) } as const;
  return { ...plain, overhang: inches(0), outline, ...changes };
}

const smallest = (input: BattingInput) => answerOf(batting, input).details.packages[0]?.name;

describe('packages', () => {
  // Common practice, with no standard: crib 45 × 60, throw 60 × 60, twin 72 × 93, full 81 × 96, queen 90 × 108, king 120 × 120.
  it.each([
    [45, 60, 'Crib'],
    [60, 45, 'Crib'],
    [45.125, 60, 'Throw'],
    [60.125, 60, 'Twin'],
    [72, 93, 'Twin'],
    [93, 72, 'Twin'],
    [72, 93.125, 'Full'],
    [81, 96, 'Full'],
    [90, 108, 'Queen'],
    [120, 120, 'King'],
    [120, 120.125, undefined],
  ])('%d × %d takes %s', (width, length, name) => {
    expect(smallest(sheet(width, length))).toBe(name);
  });

  // Common practice: packages vary: craft 34 × 45, full 84 × 96, king 124 × 120.
  it('goes by the maker’s own list of packages', () => {
    const own = [
      { name: 'Craft', width: inches(34), length: inches(45) },
      { name: 'Full', width: inches(84), length: inches(96) },
      { name: 'King', width: inches(124), length: inches(120) },
    ];
    const names = [sheet(34, 45), sheet(84, 96), sheet(120, 124)].map((one) =>
      smallest({ ...one, packages: own }),
    );
    expect(names).toEqual(['Craft', 'Full', 'King']);
  });

  it('covers the top with its overhang on every side', () => {
    expect(smallest(sheet(72, 90, { overhang: inches(4) }))).toBe('Queen');
    expect(smallest(sheet(64, 82, { overhang: inches(4) }))).toBe('Twin');
  });

  it('fits a hexagon by the rectangle around it', () => {
    const hexagon: BattingInput = {
      ...plain,
      overhang: inches(0),
      outline: { shape: 'hexagon', acrossFlats: inches(60) },
    };
    expect(answerOf(batting, hexagon).details.width / UNITS_PER_INCH).toBeCloseTo(69.375, 9);
    expect(smallest(hexagon)).toBe('Twin');
  });

  it('picks what a search through all packages, turned and not, picks', () => {
    fc.assert(
      fc.property(
        anyOutline(10, 120),
        fc.array(fc.record({ name: fc.constant('p'), width: size, length: size }), { maxLength: 20 }),
        (outline, packages) => {
          const { details } = answerOf(batting, { ...plain, outline, packages });
          const areas = packages
            .filter(({ width, length }) => {
              const [short, long] = [Math.min(width, length), Math.max(width, length)];
              const [needShort, needLong] = [
                Math.min(details.width, details.length),
                Math.max(details.width, details.length),
              ];
              return short >= needShort && long >= needLong;
            })
            .map(({ width, length }) => width * length);
          expect(details.packages.length).toBe(areas.length);
          if (areas.length > 0)
            expect(details.packages[0]!.width * details.packages[0]!.length).toBe(Math.min(...areas));
        },
      ),
    );
  });

  it('accounts for the whole package: the sheet and what is left over', () => {
    fc.assert(
      fc.property(anyOutline(10, 100), (outline) => {
        const { details } = answerOf(batting, { ...plain, outline });
        for (const { width, length, spare, isTurned } of details.packages) {
          expect(details.width * details.length + spare).toBe(width * length);
          expect(spare).toBeGreaterThanOrEqual(0);
          const [across, along] = isTurned ? [length, width] : [width, length];
          expect(across >= details.width && along >= details.length).toBe(true);
        }
      }),
    );
  });

  it('says in the table which cover, and which have to be turned', () => {
    const { tables } = answerOf(batting, sheet(90, 72));
    expect(tables[0]!.rows.map((row) => row[2])).toEqual(
      ['too small', 'too small', 'yes, turned', 'yes, turned', 'yes', 'yes'].map((text) => ({
        kind: 'words',
        text,
      })),
    );
  });
});

const size = fc.integer({ min: 20, max: 140 }).map((whole) => inches(whole));

describe('batting by the yard', () => {
  const rolls = (...widths: readonly number[]) => ({
    packages: [],
    rolls: widths.map((width) => ({ name: `${width} in`, width: inches(width) })),
  });

  it.each([
    [50, 80, 96, 1, 50],
    [80, 50, 96, 1, 50],
    [96, 130, 96, 1, 130],
    [97, 130, 96, 2, 97],
    [60, 60, 48, 2, 60],
  ])('%d × %d from a roll %d wide takes %d side by side, %d in each', (width, length, roll, widths, each) => {
    const [cut] = answerOf(batting, sheet(width, length, rolls(roll))).details.rolls;
    expect(cut).toMatchObject({ widths, each: inches(each), rollLength: inches(widths * each) });
  });

  it('covers with the fewest widths', () => {
    fc.assert(
      fc.property(anyOutline(10, 140), size, (outline, width) => {
        const { details } = answerOf(batting, { ...plain, outline, rolls: [{ name: 'roll', width }] });
        const cut = details.rolls[0]!;
        const isUp = cut.each === details.length;
        const [across, along] = isUp ? [details.width, details.length] : [details.length, details.width];
        expect(cut.each).toBe(along);
        expect(cut.widths * width).toBeGreaterThanOrEqual(across);
        expect((cut.widths - 1) * width).toBeLessThan(Math.min(details.width, details.length));
        expect(cut.rollLength).toBe(cut.widths * cut.each);
      }),
    );
  });

  it('warns of joins only when there are some', () => {
    const joined = (width: number) =>
      answerOf(batting, sheet(60, 60, rolls(width))).notes.some(({ kind }) => kind === 'warning');
    expect([joined(48), joined(96)]).toEqual([true, false]);
  });

  it('rounds up: never less than needed, never a whole step more', () => {
    fc.assert(
      fc.property(anyOutline(10, 140), fc.integer({ min: 0, max: 30 }), (outline, safetyExtraPercent) => {
        const { figures, details } = answerOf(batting, {
          ...plain,
          outline,
          safetyExtraPercent,
          packages: [],
        });
        const need = details.rolls[0]!.rollLength * (1 + safetyExtraPercent / 100);
        const bought = figures[0]!.quantity;
        const more = bought.kind === 'length' ? bought.rounded - need : NaN;
        expect(more >= -1e-6 && more < plain.yardageStep).toBe(true);
      }),
    );
  });
});

describe('the batting shown', () => {
  it('names only a package when there is no roll, with the caution for cribs', () => {
    const { figures, notes } = answerOf(batting, sheet(45, 60, { rolls: [] }));
    expect(figures.map(({ label }) => label)).toEqual(['Smallest package', 'Cut size of the batting']);
    expect(notes.map(({ kind }) => kind)).toEqual(['caution', 'caution', 'caution', 'caution', 'tip', 'tip']);
    expect(notes.map(({ says }) => says)).toContain(CAUTIONS.crib);
    const large = answerOf(batting, sheet(80, 90)).notes;
    expect(large.map(({ says }) => says)).not.toContain(CAUTIONS.crib);
  });

  it('says where the sizes come from, unless the maker cleared it', () => {
    const sources = (sizesFrom: string) =>
      answerOf(batting, { ...plain, sizesFrom }).notes.flatMap(({ values }) => values['source'] ?? []);
    expect(sources(plain.sizesFrom)).toEqual([{ kind: 'words', text: 'common sizes; there is no standard' }]);
    expect(sources('label of the roll')).toEqual([{ kind: 'words', text: 'label of the roll' }]);
    expect(sources('')).toEqual([]);
  });

  it('says what the sheet is drawn on', () => {
    expect(answerOf(batting, sheet(45, 60)).diagram?.title).toBe('The batting, cut from the package “Crib”');
    expect(answerOf(batting, sheet(45, 60, { packages: [] })).diagram?.title).toBe(
      'The batting under the top',
    );
  });

  it('refuses when nothing covers, and names the list to add to', () => {
    const none = { packages: [], rolls: [{ name: 'ribbon', width: inches(4) }] };
    expect(refusalOf(batting, sheet(60, 80, none))).toMatchObject({
      code: 'nothing-covers',
      field: ['rolls'],
    });
    const small = { ...none, packages: [{ name: 'doll', width: inches(10), length: inches(10) }] };
    expect(refusalOf(batting, sheet(60, 80, small))).toMatchObject({ field: ['packages'] });
    expect(answerOf(batting, sheet(4 * MOST_WIDTHS, 80, none)).details.rolls[0]?.widths).toBe(MOST_WIDTHS);
  });

  it('draws the sheet on the package, within it', () => {
    fc.assert(
      fc.property(anyOutline(10, 100), (outline) => {
        const { diagram, details } = answerOf(batting, { ...plain, outline });
        const corners = diagram!.parts.flatMap((part) =>
          part.part === 'polygon' && part.tone !== 'plan' ? [part.points] : [],
        );
        const [outer, inner] = corners.map((points) => {
          const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
          return { width: Math.max(...xs) - Math.min(...xs), length: Math.max(...ys) - Math.min(...ys) };
        });
        expect(inner).toEqual({ width: details.width, length: details.length });
        expect(outer!.width >= inner!.width && outer!.length >= inner!.length).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('cautions about blade and fire', () => {
    expect(answerOf(batting, plain).notes[0]).toMatchObject({ kind: 'caution' });
  });

  it('takes the largest input its fields allow', () => {
    const largest = { shape: 'hexagon', acrossFlats: lengthFromUnits(3_200_000) } as const;
    expect(
      batting.calculate({ ...plain, outline: largest, overhang: inches(24), safetyExtraPercent: 100 }).ok,
    ).toBe(true);
  });
});
