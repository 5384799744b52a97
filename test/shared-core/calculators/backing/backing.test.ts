import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { backing } from '#core/calculators/backing/backing';
import type { BackingInput } from '#core/calculators/backing/input';
import { leftoverArea, MOST_PANELS, type PanelWay } from '#core/calculators/backing/work';
import type { DiagramPoint } from '#core/calculators/diagram';
import {
  type Length,
  lengthFromInches,
  lengthFromUnits,
  UNITS_PER_INCH,
  UNITS_PER_YARD,
} from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { CAUTIONS } from '#core/domain/cautions';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyOutline } from '#test/helpers/measurements';

const inches = lengthFromInches;
const noWishes = {
  hole: null,
  hasSlit: false,
  holeClearance: inches(1),
  noMiddleSeam: false,
  printRepeat: inches(0),
} as const;
const plain: BackingInput = {
  ...backing.fromProject(SAMPLE_MEASUREMENTS),
  ...noWishes,
  safetyExtraPercent: 0,
};

function rectangle(width: number, length: number, changes: Partial<BackingInput> = {}): BackingInput {
  return {
    ...plain,
    outline: { shape: 'rectangle', width: inches(width), length: inches(length) },
    ...changes,
  };
}

const shortestWhole = (ways: readonly PanelWay[]) => ways.find(({ last }) => last === 'whole')!;
const yardsOf = (units: number, step = 1 / 8) => Math.ceil(units / UNITS_PER_YARD / step - 1e-9) * step;

describe('a backing against figures worked out elsewhere', () => {
  // Derived: 4 in on each side, 42 in fabric with 1/2 in seams, whole widths, the cheaper direction, yards rounded up to 1/8.
  it.each([
    [36, 45, [44, 53], 2, 44, 2.5, 1, 1.25],
    [50, 65, [58, 73], 2, 58, 3.25, 1, 1.625],
    [70, 90, [78, 98], 2, 98, 5.5, 1, 2.25],
    [84, 92, [92, 100], 3, 92, 7.75, 1, 2.625],
    [90, 108, [98, 116], 3, 98, 8.25, 1, 3.25],
    [110, 108, [118, 116], 3, 116, 9.75, 2, 6.5],
  ])(
    '%d × %d takes the panels and yards of the table',
    (width, length, cut, panels, panelLength, yards, widePanels, wideYards) => {
      const { details } = answerOf(backing, rectangle(width, length));
      expect([details.width, details.length]).toEqual(cut.map((side) => inches(side)));
      const way = shortestWhole(details.ways);
      expect([way.panels, way.panelLength, yardsOf(way.fabricLength)]).toEqual([
        panels,
        inches(panelLength),
        yards,
      ]);
      const wide = shortestWhole(details.wideWays);
      expect([wide.panels, yardsOf(wide.fabricLength)]).toEqual([widePanels, wideYards]);
    },
  );

  // Published: TQA: with 6 in added, 2(W+6)/36 yards up to a longest side of 80,
  // 2(L+6)/36 where only the width is, 3(W+6)/36 beyond that. It holds for fabric that gives 86 in from two widths.
  it.each([
    [60, 76],
    [72, 80],
    [70, 90],
    [78, 104],
    [84, 92],
    [90, 108],
  ])('%d × %d follows the newsletter’s three cases', (width, length) => {
    const input = rectangle(width, length, { overhang: inches(3), fabricWidth: inches(43.5) });
    const published = length <= 80 ? 2 * (width + 6) : width <= 80 ? 2 * (length + 6) : 3 * (width + 6);
    expect(shortestWhole(answerOf(backing, input).details.ways).fabricLength).toBe(inches(published));
  });

  // Common practice: 50 × 60 with 6 in added across and 8 along; two widths of 44 or one of 102, 108 or 120.
  it.each([102, 108, 120])('56 × 68 takes one width of %d in, 1.556 yd', (wide) => {
    const input = rectangle(50, 62, {
      overhang: inches(3),
      fabricWidth: inches(44),
      wideWidth: inches(wide),
    });
    const { details } = answerOf(backing, input);
    expect(shortestWhole(details.ways).fabricLength).toBe(inches(112));
    expect(yardsOf(shortestWhole(details.ways).fabricLength, 1 / 4)).toBe(3.25);
    expect(shortestWhole(details.wideWays).fabricLength / UNITS_PER_YARD).toBeCloseTo(1.556, 3);
  });

  // Common practice: 65 × 78 overall is 2 × 65 = 130 in or 2 × 78 = 156 in, by seam direction.
  it('shows both directions', () => {
    const { details } = answerOf(backing, rectangle(65, 78, { overhang: inches(0) }));
    const whole = details.ways.filter(({ last }) => last === 'whole');
    expect(whole.map(({ panelsRun, fabricLength }) => [panelsRun, fabricLength / UNITS_PER_INCH])).toEqual([
      ['across', 130],
      ['up', 156],
    ]);
    expect(whole.map(({ fabricLength }) => yardsOf(fabricLength))).toEqual([3.625, 4.375]);
  });

  // Published: STC: a 40 × 45 top takes about 1 1/2 yd of 44/45 in fabric.
  it('takes about 1 1/2 yd of 44 in fabric for a 40 × 45 top', () => {
    const { details } = answerOf(
      backing,
      rectangle(40, 45, { overhang: inches(2), fabricWidth: inches(44) }),
    );
    expect(shortestWhole(details.ways).panels).toBe(1);
    expect(yardsOf(shortestWhole(details.ways).fabricLength)).toBe(1.375);
  });

  // A slip met in print: 72 + 5 + 5 + 2 is 84, not 82.
  it('adds the overhang on both sides', () => {
    expect(answerOf(backing, rectangle(72, 90, { overhang: inches(6) })).details.width).toBe(inches(84));
    expect(answerOf(backing, rectangle(72, 90, { overhang: inches(6) })).details.width).not.toBe(inches(82));
  });
});

/** Least fabric for whole panels, found by laying 1, 2, 3 … of them down and looking for bare backing. */
function leastByLaying(width: number, length: number, fabric: number, seam: number): number {
  const layings = [
    [width, length],
    [length, width],
  ].map(([span = 0, along = 0]) => {
    for (let panels = 1; ; panels += 1) {
      const laid = Array.from({ length: panels }, (_, index) => {
        const from = index * (fabric - 2 * seam) + (index === 0 ? 0 : seam);
        const to = index * (fabric - 2 * seam) + fabric - (index === panels - 1 ? 0 : seam);
        return box(from, 0, to, along);
      });
      const bare = polygonClipping.difference([box(0, 0, span, along)], ...laid.map((one) => [one]));
      if (bare.length === 0) return panels * along;
    }
  });
  return Math.min(...layings);
}

type Ring = [number, number][];
const box = (left: number, top: number, right: number, bottom: number): Ring => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];
const ringOf = (points: readonly DiagramPoint[]): Ring => points.map(({ x, y }) => [x, y]);
const areaOf = (shapes: readonly Ring[][]) =>
  shapes.flat().reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0);
const ringArea = (ring: Ring) =>
  ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length]!;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/** Least fabric with the last panel joined from strips, by trying every number of them both ways; one panel stays whole. */
function leastByTryingStrips(whole: PanelWay, most = 200): number {
  const { fabric, lastWidth, panelLength, panels } = whole;
  const full = (panels - 1) * panelLength;
  if (panels === 1) return panelLength;
  const tries = [full + panelLength];
  for (let strips = 1; strips <= most; strips += 1) {
    if (strips * fabric.width - (strips - 1) * 2 * fabric.seam >= panelLength)
      tries.push(full + strips * lastWidth);
    const each = Math.ceil((panelLength + (strips - 1) * 2 * fabric.seam) / strips);
    if (strips * lastWidth <= fabric.width) tries.push(full + each);
  }
  return Math.min(...tries);
}

const side = fc.integer({ min: 8, max: 160 * 8 }).map((eighths) => inches(eighths / 8));
const anyBacking: fc.Arbitrary<BackingInput> = fc.record({
  hole: fc.constant(noWishes.hole),
  hasSlit: fc.constant(noWishes.hasSlit),
  holeClearance: fc.constant(noWishes.holeClearance),
  noMiddleSeam: fc.constant(noWishes.noMiddleSeam),
  printRepeat: fc.constant(noWishes.printRepeat),
  outline: anyOutline(8, 130),
  overhang: fc.integer({ min: 0, max: 6 * 8 }).map((eighths) => inches(eighths / 8)),
  fabricWidth: fc.integer({ min: 36, max: 60 }).map((whole) => inches(whole)),
  wideWidth: fc.integer({ min: 90, max: 120 }).map((whole) => inches(whole)),
  seam: fc.constantFrom(inches(1 / 4), inches(1 / 2), inches(5 / 8)),
  printRuns: fc.constantFrom('any-way', 'up-the-fabric', 'across-the-fabric'),
  mayJoinLast: fc.boolean(),
  safetyExtraPercent: fc.integer({ min: 0, max: 20 }),
  cutStep: fc.constantFrom(inches(1 / 8), inches(1 / 16), lengthFromUnits(320)),
  yardageStep: fc.constantFrom(inches(4.5), lengthFromUnits(16_000)),
});

describe('every way of panels', () => {
  it('needs as little fabric as laying panels side by side', () => {
    fc.assert(
      fc.property(side, side, fc.integer({ min: 36, max: 60 }), (width, length, fabric) => {
        const outline = { shape: 'rectangle', width, length } as const;
        const { details } = answerOf(backing, { ...plain, outline, fabricWidth: inches(fabric) });
        const least = leastByLaying(details.width, details.length, inches(fabric), plain.seam);
        expect(shortestWhole(details.ways).fabricLength).toBe(least);
      }),
      { numRuns: 150 },
    );
  });

  it('needs as little fabric as trying every number of strips', () => {
    fc.assert(
      fc.property(side, side, (width, length) => {
        const outline = { shape: 'rectangle', width, length } as const;
        const { details } = answerOf(backing, { ...plain, outline, cutStep: lengthFromUnits(1) });
        const least = details.ways
          .filter(({ last }) => last === 'whole')
          .map((way) => leastByTryingStrips(way));
        expect(details.ways[0]!.fabricLength).toBe(Math.min(...least));
      }),
      { numRuns: 150 },
    );
  });

  it('lists the shortest first, each way once', () => {
    fc.assert(
      fc.property(anyBacking, (input) => {
        const { ways } = answerOf(backing, input).details;
        const lengths = ways.map(({ fabricLength }) => fabricLength);
        expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
        expect(new Set(ways.map(({ panelsRun, last }) => panelsRun + last)).size).toBe(ways.length);
      }),
    );
  });

  it('covers the backing, and accounts for all fabric', () => {
    fc.assert(
      fc.property(anyBacking, (input) => {
        const { details } = answerOf(backing, input);
        for (const way of [...details.ways, ...details.wideWays]) {
          const panelArea = (way.panels - 1) * way.fabric.width * way.panelLength;
          const lastArea = way.lastStrips * way.lastWidth * way.lastStripLength;
          const leftover = leftoverArea(way);
          expect(leftover).toBeGreaterThanOrEqual(0);
          expect(panelArea + lastArea + leftover).toBe(way.fabric.width * way.fabricLength);
          const joins = (way.panels - 1) * way.panelLength + (way.lastStrips - 1) * way.lastWidth;
          expect(way.seamLength).toBe(joins);
          const sewnIn = 2 * way.fabric.seam * way.seamLength;
          expect(panelArea + lastArea - sewnIn).toBeGreaterThanOrEqual(details.width * details.length);
          const lastLength =
            way.lastStrips * way.lastStripLength - (way.lastStrips - 1) * 2 * way.fabric.seam;
          expect(lastLength).toBeGreaterThanOrEqual(way.panelLength);
          expect(way.lastWidth).toBeLessThanOrEqual(way.fabric.width);
        }
      }),
    );
  });

  it('joins the last panel from strips only when that saves fabric, and never a single panel', () => {
    fc.assert(
      fc.property(anyBacking, (input) => {
        const { ways } = answerOf(backing, input).details;
        for (const way of ways.filter(({ last }) => last !== 'whole')) {
          const whole = ways.find(({ last, panelsRun }) => last === 'whole' && panelsRun === way.panelsRun)!;
          expect(way.fabricLength).toBeLessThan(whole.fabricLength);
          expect(way.panels).toBeGreaterThan(1);
          if (way.last === 'along') expect(way.lastStrips).toBeGreaterThan(1);
        }
      }),
    );
  });

  it('keeps a print upright: panels lengthwise for a print up the fabric, crosswise for a print across it, and no strip turned', () => {
    fc.assert(
      fc.property(anyBacking, (input) => {
        const up = answerOf(backing, { ...input, printRuns: 'up-the-fabric' }).details.ways;
        expect(up.every(({ panelsRun, last }) => panelsRun === 'up' && last !== 'across')).toBe(true);
        const across = answerOf(backing, { ...input, printRuns: 'across-the-fabric' }).details.ways;
        expect(across.every(({ panelsRun, last }) => panelsRun === 'across' && last !== 'across')).toBe(true);
        const any = answerOf(backing, { ...input, printRuns: 'any-way' }).details.ways;
        expect(any[0]!.fabricLength).toBeLessThanOrEqual(
          Math.min(up[0]!.fabricLength, across[0]!.fabricLength),
        );
      }),
    );
  });

  it('never takes less for a larger quilt, a wider overhang or a wider seam', () => {
    fc.assert(
      fc.property(side, side, fc.integer({ min: 0, max: 8 * UNITS_PER_INCH }), (width, length, more) => {
        const least = (w: Length, l: Length, changes: Partial<BackingInput> = {}) => {
          const outline = { shape: 'rectangle', width: w, length: l } as const;
          return answerOf(backing, { ...plain, ...changes, outline }).details.ways[0]!.fabricLength;
        };
        const base = least(width, length);
        expect(least(lengthFromUnits(width + more), length)).toBeGreaterThanOrEqual(base);
        expect(least(width, lengthFromUnits(length + more))).toBeGreaterThanOrEqual(base);
        expect(
          least(width, length, { overhang: lengthFromUnits(plain.overhang + more) }),
        ).toBeGreaterThanOrEqual(base);
        expect(least(width, length, { seam: inches(1) })).toBeGreaterThanOrEqual(base);
      }),
      { numRuns: 60 },
    );
  });
});

describe('what is bought and shown', () => {
  it('rounds up: never less than fabric and extra, never a whole step more', () => {
    fc.assert(
      fc.property(anyBacking, (input) => {
        const { figures, details } = answerOf(backing, input);
        const first = figures[0]!.quantity;
        const chosen = details.ways.find(({ last }) => input.mayJoinLast || last === 'whole')!;
        const need = chosen.fabricLength * (1 + input.safetyExtraPercent / 100);
        const bought = first.kind === 'length' ? first.rounded : NaN;
        expect(bought - need).toBeGreaterThanOrEqual(-1e-6);
        expect(bought - need).toBeLessThan(input.yardageStep);
        expect(bought % input.yardageStep).toBe(0);
      }),
    );
  });

  it('joins the last panel from strips only when the maker asks for it, and says what it would save', () => {
    const narrow = rectangle(59, 43, { overhang: inches(0), printRuns: 'up-the-fabric' });
    const whole = answerOf(backing, narrow);
    expect(whole.figures.find(({ label }) => label === 'Pieced from')?.quantity).toMatchObject({
      text: '2 panels, lengthwise (vertical) seams',
    });
    expect(whole.notes.some(({ says }) => says.includes('saves {less} of fabric'))).toBe(true);
    const joined = answerOf(backing, { ...narrow, mayJoinLast: true });
    expect(joined.notes.some(({ says }) => says.includes('saves {less} of fabric'))).toBe(false);
    expect(joined.details).toEqual(whole.details);
    const [first, second] = [whole, joined].map(({ figures }) => figures[0]!.quantity);
    expect(first?.kind === 'length' && second?.kind === 'length' && second.exact < first.exact).toBe(true);
  });

  it('draws panels that tile the backing exactly, with seams between them', () => {
    fc.assert(
      fc.property(anyBacking, (input) => {
        const { diagram, details } = answerOf(backing, input);
        const fabric = diagram!.parts.flatMap((part) =>
          part.part === 'polygon' && part.tone !== 'plan' ? [[ringOf(part.points)]] : [],
        );
        const laid = polygonClipping.union(fabric[0]!, ...fabric.slice(1));
        const total = fabric.reduce((sum, shape) => sum + areaOf([shape]), 0);
        expect(total / (details.width * details.length)).toBeCloseTo(1, 9);
        expect(areaOf(laid) / total).toBeCloseTo(1, 9);
        const seams = diagram!.parts.filter((part) => part.part === 'line').length;
        const way = details.ways.find(({ last }) => input.mayJoinLast || last === 'whole')!;
        expect(seams).toBe(way.panels - 1 + way.lastStrips - 1);
      }),
      { numRuns: 60 },
    );
  });

  it('warns of blade and iron, and of strips that turn a print sideways', () => {
    const turned = answerOf(backing, rectangle(50, 60, { mayJoinLast: true }));
    expect(turned.notes.filter(({ kind }) => kind === 'caution').map(({ says }) => says)).toEqual([
      CAUTIONS.rotaryBlade,
      CAUTIONS.iron,
    ]);
    const isAcross = turned.details.ways[0]!.last === 'across';
    expect(turned.notes.some(({ says }) => says.includes('sideways'))).toBe(isAcross);
    expect(isAcross).toBe(true);
    const upright = answerOf(backing, rectangle(50, 60, { mayJoinLast: true, printRuns: 'up-the-fabric' }));
    expect(upright.notes.some(({ says }) => says.includes('sideways'))).toBe(false);
  });

  it('refuses fabric too narrow for its seams or for thirty panels, and uses wide backing when that works', () => {
    const eaten = { fabricWidth: inches(4), seam: inches(2), wideWidth: inches(4) };
    expect(refusalOf(backing, rectangle(60, 80, eaten))).toMatchObject({
      code: 'too-many-panels',
      field: ['fabricWidth'],
    });
    const many = { fabricWidth: inches(4), wideWidth: inches(4), seam: inches(1) };
    expect(refusalOf(backing, rectangle(300, 300, many)).code).toBe('too-many-panels');
    const wideOnly = answerOf(backing, rectangle(300, 300, { ...many, wideWidth: inches(108) }));
    expect(wideOnly.details.ways).toEqual([]);
    expect(wideOnly.figures[0]?.label).toBe('Wide backing to buy');
    expect(wideOnly.details.wideWays.every(({ panels }) => panels <= MOST_PANELS)).toBe(true);
  });

  it('stays within a kilometer of fabric for the largest input its fields allow', () => {
    const largest = lengthFromUnits(3_200_000);
    const input: BackingInput = {
      ...plain,
      outline: { shape: 'hexagon', acrossFlats: largest },
      overhang: inches(24),
      safetyExtraPercent: 100,
      fabricWidth: inches(20),
      wideWidth: inches(36),
      yardageStep: lengthFromUnits(320_000),
    };
    expect(backing.calculate(input).ok).toBe(true);
  });
});
