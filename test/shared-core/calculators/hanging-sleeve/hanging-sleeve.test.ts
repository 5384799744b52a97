import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hangingSleeve } from '#core/calculators/hanging-sleeve/hanging-sleeve';
import type { HangingSleeveInput } from '#core/calculators/hanging-sleeve/input';
import { widthAt } from '#core/calculators/hanging-sleeve/width-at';
import { outlineBounds, outlinePoints } from '#core/calculators/outline/outline-measures';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { polygonSides } from '#core/geometry/polygon';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyMeasurements, anyOutline } from '#test/helpers/measurements';

const rectangle = (width: number, length: number): Outline => ({
  shape: 'rectangle',
  width: inches(width),
  length: inches(length),
});
const starting = (outline: Outline, change: Partial<HangingSleeveInput> = {}): HangingSleeveInput => ({
  ...hangingSleeve.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
  ...change,
});
const detailsOf = (outline: Outline, change: Partial<HangingSleeveInput> = {}) =>
  answerOf(hangingSleeve, starting(outline, change)).details;
const none = lengthFromUnits(0);

describe('a hanging sleeve against figures in print', () => {
  // Published: HCG23, a sleeve of 4 in is cut 8 1/2, one of 3 in 6 1/2; cut as long as the quilt is wide less 1, with hems of 1/4
  // in twice it finishes at the width less 2. Over 90 in wide it is split; under 30 in it is 3 in deep, on a miniature 2.
  it('of 4 in on a quilt 60 in wide is cut 8 1/2 by 59 in and finishes at 58', () => {
    const details = detailsOf(rectangle(60, 80));
    expect([details.cutDepth, details.cutLength, details.length]).toEqual([
      inches(8.5),
      inches(59),
      inches(58),
    ]);
    expect(detailsOf(rectangle(28, 40)).cutDepth).toBe(inches(6.5));
  });

  it.each([
    [91, 2, 4],
    [90, 1, 4],
    [30, 1, 4],
    [29, 1, 3],
    [11, 1, 2],
  ])('on a quilt %d in wide starts as %d of %d in', (width, sleeves, depth) => {
    expect(starting(rectangle(width, 90))).toMatchObject({ sleeves, depth: inches(depth) });
  });

  // Published: SHS, a strip of 9 in lies 9/2 - 1/4 = 4 1/4 in flat.
  it('of 4 1/4 in is cut 9 in', () => {
    expect(detailsOf(rectangle(60, 80), { depth: inches(4.25) }).cutDepth).toBe(inches(9));
  });

  // Published: GEM, 1/2 in of ease: the layer in front of the rod is longer than the one behind by that much.
  it('of 4 in is sewn down 3 3/4 in apart', () => {
    const input = starting(rectangle(60, 80));
    expect(input.ease).toBe(inches(1 / 2));
    const { sewnApart, cutDepth } = detailsOf(rectangle(60, 80));
    const around = cutDepth - 2 * input.seamAllowance;
    expect(sewnApart).toBe(inches(3.75));
    expect(around - sewnApart - sewnApart).toBe(input.ease);
  });

  // Published: APQ-S, 1 in below the binding and a rod 1 in longer than the sleeve.
  it('hangs on a rod an inch longer than itself', () => {
    expect(starting(rectangle(60, 80)).down).toBe(inches(1));
    const { rod, span } = detailsOf(rectangle(60, 80));
    expect([span, rod]).toEqual([inches(58), inches(59)]);
  });

  // Published: CIR14, on a round quilt the strip is 6 in by the diameter D with a hem of 2 in at both ends, so it finishes at D - 4.
  // Derived: a circle of 28 in is 24 in wide from 6.79 in below its top.
  it('of D − 4 in goes on a round quilt of 28 in from 6.79 in below its top', () => {
    const at = Math.ceil((14 - Math.sqrt(14 ** 2 - 12 ** 2)) * UNITS_PER_INCH);
    const round: Outline = { shape: 'circle', diameter: inches(28) };
    const change = { down: lengthFromUnits(at), sideGap: none, hem: inches(2), depth: inches(2.75) };
    const details = detailsOf(round, change);
    expect(details.length / UNITS_PER_INCH).toBeCloseTo(24, 3);
    expect([details.cutDepth, details.cutLength]).toEqual([inches(6), inches(28)]);
  });

  it('in two parts leaves the gap between them', () => {
    // By hand: 100 - 2 = 98 in from end to end, less 1 in, halved: 48 1/2; cut 49 1/2 each, three strips of 42 in.
    const details = detailsOf(rectangle(100, 100));
    expect([details.span, details.length, details.cutLength]).toEqual([
      inches(98),
      inches(48.5),
      inches(49.5),
    ]);
    expect([details.strips, details.fabric]).toEqual([3, inches(25.5)]);
  });
});

/** How wide the drawn corners are at a height, by cutting every side with a line. */
function cutByLine(outline: Outline, down: number): number {
  const y = down - outlineBounds(outline).length / 2;
  const met = polygonSides(outlinePoints(outline)).flatMap(({ from, to }) => {
    const share = (y - from.y) / (to.y - from.y);
    return share >= 0 && share <= 1 ? [from.x + share * (to.x - from.x)] : [];
  });
  return Math.max(...met) - Math.min(...met);
}

describe('the width at the sleeve', () => {
  it('is that of the drawn outline, for every shape with known corners', () => {
    fc.assert(
      fc.property(anyOutline(8, 120), fc.double({ min: 0.02, max: 0.499, noNaN: true }), (outline, share) => {
        fc.pre(outline.shape !== 'sides');
        const { width, length } = outlineBounds(outline);
        // 180 corners of a curve lie inside it by at most a few thousandths of its width.
        expect(Math.abs(widthAt(outline, share * length) - cutByLine(outline, share * length))).toBeLessThan(
          0.004 * width,
        );
      }),
      { numRuns: 300 },
    );
  });

  it('keeps both upper corners of the sleeve inside the quilt, rounded down', () => {
    fc.assert(
      fc.property(anyMeasurements, (measurements) => {
        const input = hangingSleeve.fromProject(measurements);
        const answer = hangingSleeve.calculate(input);
        if (!answer.ok) return;
        const { span, length, cutLength, width } = answer.value.details;
        expect(span).toBeLessThanOrEqual(width);
        expect(length * input.sleeves + (input.sleeves - 1) * input.gap).toBeCloseTo(span, 3);
        expect(cutLength - 2 * input.hem).toBeLessThanOrEqual(length + 1e-6);
        expect(length + 2 * input.hem - cutLength).toBeLessThan(input.cutStep);
      }),
    );
  });
});

describe('its fabric', () => {
  it('is as few strips as all sleeves take, and never less for a wider quilt', () => {
    const anyWidth = fc.integer({ min: 20, max: 200 });
    fc.assert(
      fc.property(
        anyWidth,
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 1, max: 4 }),
        (width, more, sleeves) => {
          const details = detailsOf(rectangle(width, 100), { sleeves });
          const laid = (count: number) => count * 42 - (count - 1) / 2;
          const needed = (sleeves * details.cutLength) / UNITS_PER_INCH;
          expect(laid(details.strips)).toBeGreaterThanOrEqual(needed);
          if (details.strips > 1) expect(laid(details.strips - 1)).toBeLessThan(needed);
          const wider = detailsOf(rectangle(width + more, 100), { sleeves });
          expect(wider.fabricToBuy).toBeGreaterThanOrEqual(details.fabricToBuy);
        },
      ),
    );
  });

  it('is cut to length from one strip, or from whole strips that are joined', () => {
    const cuts = (width: number) => {
      const input = starting(rectangle(width, 80));
      return hangingSleeve.cuts?.(input, detailsOf(rectangle(width, 80)));
    };
    expect(cuts(40)).toMatchObject([{ width: inches(39), length: inches(8.5), count: 1 }]);
    expect(cuts(60)).toMatchObject([{ width: inches(42), length: inches(8.5), count: 2 }]);
  });
});

describe('what it refuses and says', () => {
  it('refuses a sleeve too low, without length, with all ease, and fabric too narrow', () => {
    const refused = (change: Partial<HangingSleeveInput>) =>
      refusalOf(hangingSleeve, starting(rectangle(60, 80), change));
    expect(refused({ down: inches(37) })).toMatchObject({ code: 'sleeve-too-low', field: ['down'] });
    expect(answerOf(hangingSleeve, starting(rectangle(60, 80), { down: inches(36) })).details.length).toBe(
      inches(58),
    );
    expect(refused({ sideGap: inches(30) })).toMatchObject({ code: 'no-length-left', field: ['sideGap'] });
    expect(refused({ ease: inches(4), depth: inches(2) })).toMatchObject({ code: 'too-much-ease' });
    expect(refused({ seamAllowance: inches(2), fabricWidth: inches(4) })).toMatchObject({
      code: 'strips-too-short',
    });
  });

  it('warns of a rod that shows, one wide sleeve, a long drop, a list of sides, and a round top that folds', () => {
    const says = (outline: Outline, change: Partial<HangingSleeveInput> = {}) =>
      answerOf(hangingSleeve, starting(outline, change))
        .notes.map((note) => note.says)
        .join(' ');
    expect(says(rectangle(60, 80), { rodExtra: inches(3) })).toMatch(/sticks out/);
    expect(says(rectangle(60, 80), { rodExtra: inches(2) })).not.toMatch(/sticks out/);
    expect(says(rectangle(91, 80), { sleeves: 1 })).toMatch(/two sleeves/);
    // Published: GEM, over 96 in long the top of the sleeve is at most 96 in above the lower edge.
    expect(says(rectangle(60, 97))).not.toMatch(/Ask the show/);
    expect(says(rectangle(60, 98))).toMatch(/Ask the show/);
    expect(says({ shape: 'circle', diameter: inches(40) })).toMatch(/fold forward/);
    const sides = [inches(20), inches(22), inches(21)];
    expect(says({ shape: 'sides', sides, width: inches(22), length: inches(18) })).toMatch(/Measure there/);
    expect(says(rectangle(60, 80))).not.toMatch(/fold forward|Measure there|two sleeves/);
  });
});
