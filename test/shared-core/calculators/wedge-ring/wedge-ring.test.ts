import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WedgeRingInput } from '#core/calculators/wedge-ring/input';
import { wedgeRing } from '#core/calculators/wedge-ring/wedge-ring';
import { wedgePolygon, workOutWedgeRing } from '#core/calculators/wedge-ring/work';
import { patchListSchema } from '#core/domain/patch-list';
import type { Point } from '#core/geometry/point';
import { type Polygon, polygonArea } from '#core/geometry/polygon';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { areCongruent } from '../patches/any-unit';
import { areaOnlyIn, offsetByClipper } from '../patches/clipper-reference';

const plain: WedgeRingInput = {
  ...wedgeRing.fromProject(SAMPLE_MEASUREMENTS),
  seamAllowance: inches(1 / 4),
  fabricWidth: inches(42),
  isDirectional: false,
  safetyExtraPercent: 0,
};
const inInches = (exact: number) => exact / UNITS_PER_INCH;
const ringOf = (wedges: number, inner: number, outer: number): WedgeRingInput => ({
  ...plain,
  wedges,
  innerRadius: inches(inner),
  outerRadius: inches(outer),
});

const anyRing = fc
  .record({
    wedges: fc.integer({ min: 6, max: 60 }),
    inner: fc.integer({ min: 2_000, max: 60_000 }),
    width: fc.integer({ min: 2_000, max: 120_000 }),
    seam: fc.integer({ min: 600, max: 5_000 }),
    isDirectional: fc.boolean(),
  })
  .map(({ wedges, inner, width, seam, isDirectional }): WedgeRingInput => ({
    ...plain,
    wedges,
    isDirectional,
    innerRadius: lengthFromUnits(inner),
    outerRadius: lengthFromUnits(inner + width),
    seamAllowance: lengthFromUnits(seam),
  }));

describe('a ring of wedges against sizes worked out elsewhere', () => {
  // Derived by trigonometry outside the program: seam 1/4, strips of 42 in.
  it.each([
    [8, 3, 29, 2.4853, 24.0244, 2.8194, 24.7727, 26.5, 2, 4],
    [12, 3, 29, 1.6077, 15.5411, 1.9914, 16.1927, 26.5, 3, 4],
    [16, 3, 25, 1.1935, 9.9456, 1.6038, 10.5549, 22.5, 6, 3],
    [6, 4, 20, 4.6188, 23.094, 4.9075, 23.96, 16.5, 2, 3],
    [20, 2, 12, 0.6335, 3.8012, 1.0606, 4.3867, 10.5, 14, 2],
    [36, 3, 25, 0.5249, 4.3744, 0.9831, 4.9201, 22.5, 13, 3],
    [10, 2, 10, 1.2997, 6.4984, 1.663, 7.1866, 8.5, 8, 2],
  ])(
    '%d wedges from %d to %d in',
    (n, inner, outer, short, long, cutShort, cutLong, height, each, strips) => {
      const { details } = answerOf(wedgeRing, ringOf(n, inner, outer));
      expect(inInches(details.finished.short)).toBeCloseTo(short, 3);
      expect(inInches(details.finished.long)).toBeCloseTo(long, 3);
      expect(inInches(details.cut.short)).toBeCloseTo(cutShort, 3);
      expect(inInches(details.cut.long)).toBeCloseTo(cutLong, 3);
      expect(inInches(details.cut.height)).toBeCloseTo(height, 9);
      expect([details.perStrip, details.strips]).toEqual([each, strips]);
    },
  );

  // Derived: the same wedges all one way up.
  it.each([
    [20, 2, 12, 9, 3],
    [36, 3, 25, 8, 5],
    [10, 2, 10, 5, 2],
  ])('%d wedges from %d to %d in, all one way up', (n, inner, outer, each, strips) => {
    const input = { ...ringOf(n, inner, outer), isDirectional: true };
    expect(answerOf(wedgeRing, input).details).toMatchObject({ perStrip: each, strips });
  });

  // Common practice: about forty wedges cut 3 and 1 in wide with 1/4 in seams finish 2.459 and 0.538 wide.
  it('forty wedges cut 3 and 1 in wide', () => {
    const work = workOutWedgeRing(ringOf(40, 3.42, 15.62));
    expect(inInches(work.cut.long)).toBeCloseTo(3, 2);
    expect(inInches(work.cut.short)).toBeCloseTo(1, 2);
    expect(inInches(work.finished.long)).toBeCloseTo(2.459, 2);
    expect(inInches(work.finished.short)).toBeCloseTo(0.538, 2);
  });

  // Derived: an octagon with sides 2.414 · O apart has sides O, so 24.142 across has sides of 10.
  it('an octagon 24.142 across has sides of 10', () => {
    expect(inInches(workOutWedgeRing(ringOf(8, 3, 12.071)).finished.long)).toBeCloseTo(10, 3);
  });
});

describe('the wedges of any ring', () => {
  it('are the finished ones grown by the seam, by clipper-lib', () => {
    fc.assert(
      fc.property(anyRing, (input) => {
        fc.pre(input.innerRadius > input.seamAllowance);
        const { finished, cut } = workOutWedgeRing(input);
        expect(
          areCongruent(wedgePolygon(cut), offsetByClipper(wedgePolygon(finished), input.seamAllowance)),
        ).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it('cover the ring once', () => {
    fc.assert(
      fc.property(anyRing, (input) => {
        const { finished } = workOutWedgeRing(input);
        const turned = turnedWedges(input, wedgePolygon(finished));
        const { wedges, outerRadius, innerRadius } = input;
        const ring = wedges * Math.tan(Math.PI / wedges) * (outerRadius ** 2 - innerRadius ** 2);
        expect((wedges * polygonArea(turned[0]!)) / ring).toBeCloseTo(1, 9);
        const overlap = polygonArea(turned[0]!) - areaOnlyIn([turned[0]!], turned.slice(1));
        expect(overlap / polygonArea(turned[0]!)).toBeLessThan(1e-3);
      }),
      { numRuns: 60 },
    );
  });

  it('lie in the strip side by side, and one more has no room', () => {
    fc.assert(
      fc.property(anyRing, (input) => {
        const { fromStrip, perStrip, strip } = workOutWedgeRing(input);
        fc.pre(perStrip > 0);
        const laid = laidInStrip(wedgePolygon(fromStrip), perStrip + 1, input.isDirectional);
        const ends = laid.map((wedge) => Math.max(...wedge.map(({ x }) => x)));
        expect(ends[perStrip - 1]!).toBeLessThanOrEqual(input.fabricWidth + 1);
        expect(ends[perStrip]!).toBeGreaterThan(input.fabricWidth - 1);
        expect(Math.max(...laid.flat().map(({ y }) => y))).toBeLessThanOrEqual(strip + 1e-6);
      }),
      { numRuns: 200 },
    );
  });

  it('need no less fabric if a print allows only one way', () => {
    fc.assert(
      fc.property(anyRing, (input) => {
        const [free, oneWay] = [false, true].map((isDirectional) =>
          workOutWedgeRing({ ...input, isDirectional }),
        );
        fc.pre(oneWay!.perStrip > 0);
        expect(oneWay!.fabrics[0]!.length).toBeGreaterThanOrEqual(free!.fabrics[0]!.length);
      }),
    );
  });

  it('come from strips that the cutting planner can read', () => {
    const { details } = answerOf(wedgeRing, ringOf(16, 3, 25));
    expect(wedgeRing.cuts!(ringOf(16, 3, 25), details)).toEqual(patchListSchema.parse(details.patchList));
    expect(details.patchList[0]).toMatchObject({ width: inches(42), length: inches(22.5), count: 3 });
  });
});

describe('how to sew a ring', () => {
  it.each([
    [16, 8, 180],
    [9, 4, 160],
  ])('%d wedges: a half of %d is tested against %d degrees', (wedges, half, degrees) => {
    const { tables } = answerOf(wedgeRing, ringOf(wedges, 3, 12));
    const measures = tables
      .find(({ title }) => title === 'How to do it')!
      .rows.map(([, , measure]) => measure);
    expect(measures[5]).toMatchObject({ rounded: half });
    expect(measures[6]).toMatchObject({ rounded: wedges - half });
    expect(measures[7]).toMatchObject({ kind: 'degrees', exact: degrees });
  });
});

describe('a ring that cannot be cut', () => {
  it('has its inner edge outside its outer edge', () => {
    expect(refusalOf(wedgeRing, ringOf(8, 10, 10)).field).toEqual(['innerRadius']);
  });

  it('has wedges longer than the fabric is wide', () => {
    expect(refusalOf(wedgeRing, ringOf(4, 3, 29)).code).toBe('wedge-too-long');
  });
});

/** Around the middle of the ring, each turned by the angle of a wedge. */
function turnedWedges({ wedges, outerRadius }: WedgeRingInput, wedge: Polygon): readonly Polygon[] {
  const long = Math.max(...wedge.map(({ x }) => x));
  return Array.from({ length: wedges }, (_, index) => {
    const angle = (2 * Math.PI * index) / wedges;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return wedge.map(({ x, y }): Point => {
      const [right, down] = [x - long / 2, y - outerRadius];
      return { x: right * cos - down * sin, y: right * sin + down * cos };
    });
  });
}

/** Each wedge is pushed to the left until its long or short side meets the one before, at both edges of the strip. */
function laidInStrip(wedge: Polygon, count: number, isOneWay: boolean): readonly Polygon[] {
  const height = Math.max(...wedge.map(({ y }) => y));
  const turnedAround = wedge.map(({ x, y }) => ({ x, y: height - y }));
  const laid: Polygon[] = [];
  for (let index = 0; index < count; index += 1) {
    const shape = isOneWay || index % 2 === 0 ? wedge : turnedAround;
    const before = laid.at(-1);
    const push =
      before === undefined ? 0 : Math.max(...[0, height].map((y) => endAt(before, y) - startAt(shape, y)));
    laid.push(shape.map(({ x, y }) => ({ x: x + push, y })));
  }
  return laid;
}

const at = (polygon: Polygon, height: number) =>
  polygon.filter(({ y }) => Math.abs(y - height) < 1e-6).map(({ x }) => x);
const endAt = (polygon: Polygon, y: number) => Math.max(...at(polygon, y));
const startAt = (polygon: Polygon, y: number) => Math.min(...at(polygon, y));
