import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { backing } from '#core/calculators/backing/backing';
import type { BackingInput } from '#core/calculators/backing/input';
import { seamPlaces, seamsByHole } from '#core/calculators/backing/seams';
import type { BackingDetails, PanelWay } from '#core/calculators/backing/work';
import type { Calculation } from '#core/calculators/calculator';
import { cutsOfSavedAnswer, needsOfSavedAnswer } from '#core/calculators/saved-answer';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf } from '#test/helpers/answer-of';

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
  overhang: inches(4),
  fabricWidth: inches(42),
  seam: inches(1 / 2),
  safetyExtraPercent: 0,
};

function rectangle(width: number, length: number, changes: Partial<BackingInput> = {}): BackingInput {
  return {
    ...plain,
    outline: { shape: 'rectangle', width: inches(width), length: inches(length) },
    ...changes,
  };
}

const bestOf = ({ details }: Calculation<BackingDetails>): PanelWay => details.ways[0]!;
const spanOf = ({ panelsRun }: PanelWay, { width, length }: BackingDetails) =>
  panelsRun === 'up' ? width : length;
const says = ({ notes }: Calculation<BackingDetails>) => notes.map((note) => note.says).join('\n');

describe('a print that is matched', () => {
  // Published: DID: 96 in of a print with a repeat of 27 in takes four repeats, 108 in, 12 of them waste.
  // Published: WRT11: 116 in at a repeat of 25 in takes 125 in, 9 of them waste.
  // Common practice: 90 in at a repeat of 27 in takes 108 in, 18 of them waste.
  it.each([
    [96, 27, 108, 12],
    [116, 25, 125, 9],
    [90, 27, 108, 18],
  ])('takes whole repeats: %d in at %d is %d', (length, repeat, cut, extra) => {
    const input = rectangle(60, length, {
      overhang: inches(0),
      printRuns: 'up-the-fabric',
      printRepeat: inches(repeat),
    });
    const answer = answerOf(backing, input);
    expect(bestOf(answer)).toMatchObject({ panelLength: inches(cut), fabricLength: inches(2 * cut) });
    const figure = answer.figures.find(({ label }) => label === 'Extra on each panel to match the print');
    expect(figure?.quantity).toMatchObject({ exact: inches(extra) });
  });

  // Common practice: panels of 230 cm at a repeat of 64 cm take 256 cm each, so four of them 1.04 m more.
  it('takes 256 cm for 230 cm at a repeat of 64 cm, 1.04 m more for four panels', () => {
    const centimeters = (count: number) => lengthFromMillimeters(10 * count);
    const { details } = answerOf(backing, {
      ...plain,
      outline: { shape: 'rectangle', width: centimeters(380), length: centimeters(230) },
      overhang: inches(0),
      printRuns: 'up-the-fabric',
      printRepeat: centimeters(64),
    });
    const four = details.ways.find(({ panels, panelsRun }) => panels === 4 && panelsRun === 'up');
    expect(four?.panelLength).toBe(centimeters(256));
    expect(four!.fabricLength - 4 * centimeters(230)).toBe(centimeters(104));
  });

  it('takes the fewest repeats that reach, found by adding one after the other, and joins no strips', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 120 }),
        fc.integer({ min: 20, max: 120 }),
        fc.integer({ min: 1, max: 30 }),
        fc.boolean(),
        (width, length, repeat, noMiddleSeam) => {
          const matched = { printRepeat: inches(repeat), noMiddleSeam };
          const answer = answerOf(backing, rectangle(width, length, matched));
          for (const way of answer.details.ways) {
            let reached = 0;
            while (reached < (way.panelsRun === 'up' ? length : width) + 8) reached += repeat;
            expect(way.panelLength).toBe(inches(reached));
            expect(['whole', 'outer']).toContain(way.last);
          }
          const unmatched = answerOf(backing, rectangle(width, length, { noMiddleSeam }));
          const least = unmatched.details.ways.filter(({ last }) => last === 'whole' || last === 'outer');
          expect(bestOf(answer).fabricLength).toBeGreaterThanOrEqual(least[0]!.fabricLength);
        },
      ),
    );
  });
});

/** Lengths of fabric with a whole panel in the middle, found by laying panels outward until nothing is bare. */
function lengthsFromTheMiddle(span: number, width: number, seam: number): number {
  const middle = span / 2;
  const step = width - 2 * seam;
  type Ring = [number, number][];
  const strip = (from: number, to: number): Ring => [
    [from, 0],
    [to, 0],
    [to, 1],
    [from, 1],
  ];
  for (let pairs = 1; ; pairs += 1) {
    const laid = Array.from({ length: 2 * pairs + 1 }, (_, index) => {
      const at = middle + (index - pairs) * step;
      const isFirst = index === 0;
      const isLast = index === 2 * pairs;
      return strip(at - step / 2 - (isFirst ? seam : 0), at + step / 2 + (isLast ? seam : 0));
    });
    const bare = polygonClipping.difference([strip(0, span)], ...laid.map((one) => [one]));
    if (bare.length > 0) continue;
    const outer = Math.max(0, middle - (2 * pairs - 1) * (step / 2)) + seam;
    return 2 * pairs - 1 + (2 * Math.ceil(outer / plain.cutStep) * plain.cutStep <= width ? 1 : 2);
  }
}

describe('no seam down the middle', () => {
  // Common practice: two widths of 42 in for 78 in are one whole panel with half of the other on each side.
  it('splits the second panel: 78 in of 42 in fabric has outer panels 19 in wide from one length', () => {
    const input = rectangle(70, 90, { noMiddleSeam: true, printRuns: 'up-the-fabric' });
    const answer = answerOf(backing, input);
    expect(bestOf(answer)).toMatchObject({
      panels: 3,
      lastWidth: inches(19),
      fabricLength: inches(2 * 98),
      seamLength: inches(2 * 98),
    });
    expect(cutsOfSavedAnswer({ calculator: 'backing', input })).toMatchObject([
      { width: inches(42), length: inches(98), count: 1 },
      { width: inches(19), length: inches(98), count: 2 },
    ]);
    const [need] = needsOfSavedAnswer({ calculator: 'backing', input }, inches(42));
    expect(JSON.stringify(need)).toContain('"count":2');
  });

  it('takes as many lengths as laying panels from the middle out, and never less than without the wish', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 160 * 8 }),
        fc.integer({ min: 8, max: 160 * 8 }),
        fc.integer({ min: 36, max: 60 }),
        (width, length, fabric) => {
          const sizes = [width / 8, length / 8] as const;
          const own = { fabricWidth: inches(fabric) };
          const wished = answerOf(backing, rectangle(...sizes, { ...own, noMiddleSeam: true }));
          for (const way of wished.details.ways) {
            const span = spanOf(way, wished.details);
            const isOne = span <= inches(fabric);
            const lengths = isOne ? 1 : lengthsFromTheMiddle(span, inches(fabric), plain.seam);
            expect(way.fabricLength).toBe(lengths * way.panelLength);
            const near = Math.min(...seamPlaces(way, span).map((at) => Math.abs(at - span / 2)));
            expect(near).toBeGreaterThanOrEqual(way.fabric.width / 2 - way.fabric.seam);
          }
          const without = answerOf(backing, rectangle(...sizes, own)).details.ways;
          const whole = without.filter(({ last }) => last === 'whole');
          expect(bestOf(wished).fabricLength).toBeGreaterThanOrEqual(whole[0]!.fabricLength);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('draws panels that tile the backing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 150 }), fc.integer({ min: 20, max: 150 }), (width, length) => {
        const { diagram, details } = answerOf(backing, rectangle(width, length, { noMiddleSeam: true }));
        const shapes = diagram!.parts.flatMap((part) =>
          part.part === 'polygon' && part.tone !== 'plan' ? [part.points] : [],
        );
        const area = shapes.reduce((sum, points) => {
          const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
          return sum + (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
        }, 0);
        expect(area / (details.width * details.length)).toBeCloseTo(1, 9);
        const seams = diagram!.parts.filter(({ part }) => part === 'line').length;
        expect(seams).toBe(details.ways[0]!.panels - 1);
      }),
    );
  });
});

describe('seams and the hole', () => {
  const hole = { diameter: inches(6) };

  // Derived: the first seam is at 42 − 1/2 = 41 1/2, the middle of 78 at 39: 2 1/2 away, inside a hole of 6.
  it('says that the seam of two panels crosses the hole, and that a middle panel would clear it', () => {
    const across = answerOf(backing, rectangle(70, 90, { hole, printRuns: 'up-the-fabric' }));
    expect(says(across)).toContain('crosses the hole');
    expect(says(across)).toContain('With no seam down the middle');
    expect(across.tables[1]?.rows[0]).toMatchObject([
      { exact: inches(41.5) },
      { exact: inches(2.5) },
      { text: 'crosses it' },
    ]);
    const wished = { hole, hasSlit: true, printRuns: 'up-the-fabric', noMiddleSeam: true } as const;
    const clear = answerOf(backing, rectangle(70, 90, wished));
    expect(says(clear)).not.toMatch(/crosses|edge of the hole|slit/);
    expect(clear.tables[1]?.rows[0]?.[2]).toMatchObject({ exact: inches(17.5) });
  });

  it('says how near a seam runs, and counts the wished distance itself as clear', () => {
    const near = { hole: { diameter: inches(4) }, printRuns: 'up-the-fabric' } as const;
    expect(says(answerOf(backing, rectangle(70, 90, near)))).toContain('from the edge of the hole');
    const wished = { ...near, holeClearance: inches(1 / 2) };
    expect(says(answerOf(backing, rectangle(70, 90, wished)))).not.toContain('from the edge of the hole');
  });

  it('says where a seam runs along the slit or crosses it', () => {
    const along = { hole: { diameter: inches(1) }, hasSlit: true, holeClearance: inches(3) };
    const up = answerOf(backing, rectangle(70, 90, { ...along, printRuns: 'up-the-fabric' }));
    expect(says(up)).toContain('along the slit');
    const across = answerOf(backing, rectangle(90, 60, { ...along, printRuns: 'across-the-fabric' }));
    // Derived: 68 long, so the seam is 41 1/2 − 34 = 7 1/2 below the middle, 22 1/2 from the edge of the top.
    const note = across.notes.find(({ says: text }) => text.includes('crosses the slit'));
    expect(note?.values['away']).toMatchObject({ exact: inches(22.5) });
    expect(says(across)).not.toContain('along the slit');
  });

  it('measures as the nearest of many points of the hole', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 120 }),
        fc.integer({ min: 30, max: 120 }),
        fc.integer({ min: 1, max: 24 }),
        fc.boolean(),
        (width, length, across, noMiddleSeam) => {
          const input = rectangle(width, length, { hole: { diameter: inches(across) }, noMiddleSeam });
          const { details } = answerOf(backing, input);
          for (const way of details.ways) {
            const span = spanOf(way, details);
            for (const { fromEdge, clear } of seamsByHole(input, way, span)) {
              const points = Array.from({ length: 721 }, (_, step) => {
                return span / 2 + (inches(across) / 2) * Math.cos((step * Math.PI) / 720) - fromEdge;
              });
              const isCrossed = points.some((one) => one < 0) && points.some((one) => one > 0);
              expect(clear < 0).toBe(isCrossed);
              const nearest = Math.min(...points.map((one) => Math.abs(one)));
              if (!isCrossed) expect(clear).toBeCloseTo(nearest, 6);
            }
          }
        },
      ),
    );
  });
});

describe('what a backing says', () => {
  // Common practice: quilters ask for few seams, parallel to the rollers, on a squared backing.
  it('sends the maker to her quilter when there is a seam', () => {
    expect(says(answerOf(backing, rectangle(60, 80)))).toContain('parallel to the rollers');
    const single = answerOf(backing, rectangle(30, 30));
    expect(bestOf(single).panels).toBe(1);
    expect(says(single)).not.toContain('parallel to the rollers');
  });

  it('never advises a last panel of three strips or more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 120 }), fc.integer({ min: 20, max: 120 }), (width, length) => {
        const answer = answerOf(backing, rectangle(width, length));
        const tip = answer.notes.find(({ says: text }) => text.includes('saves {less} of fabric'));
        const strips = tip?.values['strips'];
        if (strips?.kind === 'count') expect(strips.rounded).toBeLessThanOrEqual(2);
      }),
    );
    expect(says(answerOf(backing, rectangle(60, 80)))).not.toContain('saves {less} of fabric');
  });
});

describe('an answer saved before a backing knew of holes and repeats', () => {
  it('reads as one without either, and needs and cuts the same', () => {
    const input = rectangle(70, 90);
    const isLater = (name: string) => Object.hasOwn(noWishes, name);
    const older = Object.fromEntries(Object.entries(input).filter(([name]) => !isLater(name)));
    expect(Object.keys(older)).toHaveLength(Object.keys(input).length - 5);
    expect(backing.input.parse(older)).toEqual(input);
    const [now, before] = [input, older].map((one) => ({ calculator: 'backing', input: one }));
    expect(needsOfSavedAnswer(before!, inches(42))).toEqual(needsOfSavedAnswer(now!, inches(42)));
    expect(needsOfSavedAnswer(before!, inches(42))).toHaveLength(1);
    expect(cutsOfSavedAnswer(before!)).toEqual(cutsOfSavedAnswer(now!));
  });
});
