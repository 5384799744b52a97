import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apartOf } from '#core/calculators/center/center-find/found';
import type { Measured } from '#core/calculators/center/center-find/input';
import { type Point, pointDistance, pointMidway } from '#core/geometry/point';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import {
  chordsOf,
  diametersOf,
  cornersOf,
  edgePointsOf,
  foldingOf,
  hexagonOf,
  octagonOf,
  regularCorners,
} from '#test/helpers/measured-pieces';
import {
  centerOf,
  expectArcs,
  foundCenter as found,
  refusalOfCenter as refusalOf,
} from '#test/helpers/found-center';
import { rotatePoint } from '#test/helpers/rotate-point';

const turn = fc.double({ min: 0, max: 6, noNaN: true });
const O = { x: 0, y: 0 };

describe('a hexagon and an octagon', () => {
  it('of side a have the diagonals 2a and 1.7321a, and 2.6131a and 1.8478a, which fit together (derived)', () => {
    const a = inches(20);
    const times = (factor: number) => Math.round(factor * a) as typeof a;
    const [long, past] = [times(2), times(1.7320508)];
    const hexagon = found({
      way: 'hexagon',
      ...{ hexAB: a, hexBC: a, hexCD: a, hexDE: a, hexEF: a, hexFA: a },
      ...{ hexAD: long, hexBE: long, hexCF: long, hexAC: past, hexCE: past, hexEA: past },
    });
    expect(hexagon.closure.error).toBeLessThan(2);
    for (const { distance } of hexagon.arcs) expect(Math.abs(distance - a)).toBeLessThan(2);
    const [across, short] = [times(2.6131259), times(1.8477591)];
    const octagon = found({
      way: 'octagon',
      ...{ octAB: a, octBC: a, octCD: a, octDE: a, octEF: a, octFG: a, octGH: a, octHA: a },
      ...{
        octAE: across,
        octBF: across,
        octCG: across,
        octDH: across,
        octAC: short,
        octCE: short,
        octEG: short,
        octGA: short,
      },
    });
    expect(octagon.closure.error).toBeLessThan(2);
    for (const { distance } of octagon.arcs) expect(Math.abs(distance - across / 2)).toBeLessThan(2);
    expect(apartOf(octagon)).toBeLessThan(2);
    // Across its flats an octagon measures 2.4142a: from A to D, which nobody has to measure.
    const [cornerA, , , , , cornerD] = octagon.picture.named.map(({ point }) => point);
    expect(pointDistance(cornerA!, cornerD!) / a).toBeCloseTo(2.4142, 3);
  });

  it.each<['hexagon' | 'octagon', number, (corners: readonly Point[]) => Measured]>([
    ['hexagon', 6, hexagonOf],
    ['octagon', 8, octagonOf],
  ])(
    '%s: corners sewn off by up to 1/2 in come back, and the center is their middle',
    (_shape, count, measure) => {
      const off = fc.array(fc.double({ min: -0.5, max: 0.5, noNaN: true }), {
        minLength: 2 * count,
        maxLength: 2 * count,
      });
      fc.assert(
        fc.property(off, turn, (by, angle) => {
          const corners = regularCorners(count, 24).map(({ x, y }, at) =>
            rotatePoint({ x: x + by[2 * at]!, y: y + by[2 * at + 1]! }, angle),
          );
          const middle = {
            x: corners.reduce((sum, { x }) => sum + x / count, 0),
            y: corners.reduce((sum, { y }) => sum + y / count, 0),
          };
          const everyOther = [0, 1].flatMap((first) => corners.filter((_, at) => at % 2 === first));
          const answered = found(measure(corners));
          expectArcs(answered, middle, everyOther);
          expect(answered.closure.error).toBeLessThan(3);
        }),
      );
    },
  );

  it('is refused with what to measure instead if no nearly regular one has the lengths', () => {
    const arrow = regularCorners(6, 24).map((corner, at) => (at === 0 ? { x: -20, y: 0 } : corner));
    expect(refusalOf(hexagonOf(arrow))).toMatchObject({
      code: 'lengths-do-not-meet',
      field: ['measured', 'hexAD'],
    });
    const wrong = { ...hexagonOf(regularCorners(6, 24)), hexAD: inches(30) } as Measured;
    expect(refusalOf(wrong)?.says).toContain('Any shape: corners from three pins');
  });
});

describe('any other shape', () => {
  /** The balance of a shape by adding up small squares, which shares nothing with triangles. */
  const balanceByGrid = (corners: readonly Point[]) => {
    const inside = ({ x, y }: Point) =>
      corners.reduce((odd, from, at) => {
        const to = corners[(at + 1) % corners.length]!;
        const crosses =
          from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x);
        return crosses ? !odd : odd;
      }, false);
    let [count, sumX, sumY] = [0, 0, 0];
    for (let x = -30; x < 30; x += 0.1) {
      for (let y = -30; y < 30; y += 0.1) {
        if (!inside({ x, y })) continue;
        [count, sumX, sumY] = [count + 1, sumX + x, sumY + y];
      }
    }
    return { x: sumX / count, y: sumY / count };
  };

  it('has its center where it balances, from the distances of its corners from three pins', () => {
    const reaches = fc.array(fc.double({ min: 14, max: 28, noNaN: true }), { minLength: 4, maxLength: 9 });
    fc.assert(
      fc.property(reaches, (all) => {
        const corners = all.map((reach, at) =>
          rotatePoint({ x: reach, y: 0 }, (2 * Math.PI * at) / all.length),
        );
        const third = Math.floor(all.length / 3);
        const pins = [0, third, Math.floor((2 * all.length) / 3)];
        const points = [
          ...pins.map((pin) => corners[pin]!),
          ...corners.filter((_, at) => !pins.includes(at)),
        ];
        expectArcs(found(cornersOf(corners)), balanceByGrid(corners), points, 0.05);
      }),
      { numRuns: 15 },
    );
  });

  it('of a triangle balances a third of the way from the middle of a side to the corner across (derived)', () => {
    const [a, b, c] = [
      { x: 0, y: 0 },
      { x: 48, y: 0 },
      { x: 12, y: 36 },
    ];
    const points = [a, b, c, pointMidway(c, a)];
    expectArcs(found(cornersOf(points, [1, 2])), { x: 20, y: 12 }, points);
  });

  it('with a corner pushed in, as an L has, balances where its two parts do together (derived)', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 20 },
      { x: 20, y: 20 },
      { x: 20, y: 40 },
      { x: 0, y: 40 },
    ];
    // 40 by 20 around (20, 10) and 20 by 20 around (10, 30).
    const center = { x: (800 * 20 + 400 * 10) / 1200, y: (800 * 10 + 400 * 30) / 1200 };
    const named = [0, 1, 5, 2, 3, 4].map((at) => corners[at]!);
    expectArcs(found(cornersOf(corners, [1, 5])), center, named);
  });

  it('is refused if its pins are nearly in a line, its edge would cross itself, or nothing checks the lengths', () => {
    const line = [
      { x: 0, y: 0 },
      { x: 48, y: 0 },
      { x: 24, y: 1 },
      { x: 10, y: 20 },
    ];
    expect(refusalOf(cornersOf(line, [1, 2]))).toMatchObject({
      code: 'pins-in-line',
      field: ['measured', 'pinsAB'],
    });
    const crossed = [
      { x: 0, y: 0 },
      { x: 48, y: 0 },
      { x: 48, y: 40 },
      { x: 20, y: -10 },
    ];
    expect(refusalOf(cornersOf(crossed, [1, 2]))).toMatchObject({ code: 'edge-crosses-itself' });
    const triangle = line.slice(0, 2).concat({ x: 20, y: 30 });
    expect(refusalOf(cornersOf(triangle, [1, 2]))).toMatchObject({
      code: 'no-length-to-check',
      field: ['measured', 'afterA'],
    });
  });
});

describe('folding in halves', () => {
  it('finds the center where the creases cross, and how far from the middle of each that is', () => {
    const size = fc.double({ min: 12, max: 40, noNaN: true });
    fc.assert(
      fc.property(size, size, turn, (half, other, angle) => {
        const ends = [
          { x: 0, y: -half },
          { x: other, y: 0 },
          { x: 0, y: half },
          { x: -other, y: 0 },
        ].map((end) => rotatePoint(end, angle));
        const answered = found(foldingOf(ends));
        expectArcs(answered, O, ends);
        expect(apartOf(answered)).toBeLessThan(20);
      }),
    );
    const offCenter = [
      { x: 0, y: -20 },
      { x: 25, y: 0 },
      { x: 0, y: 22 },
      { x: -24, y: 0 },
    ];
    const answered = found(foldingOf(offCenter));
    expectArcs(answered, O, offCenter);
    // The middles of the creases are at (0, 1) and (1/2, 0).
    expect(apartOf(answered) / UNITS_PER_INCH).toBeCloseTo(Math.hypot(1, 0.5), 2);
  });

  it('is drawn with the lengthwise crease upright, inside the piece', () => {
    const ends = [
      { x: 0, y: -20 },
      { x: 25, y: 2 },
      { x: 1, y: 22 },
      { x: -24, y: 0 },
    ];
    const { picture } = found(foldingOf(ends));
    const [top, , bottom] = picture.named.map(({ point }) => point);
    expect(Math.abs(top!.x - bottom!.x)).toBeLessThan(1e-6);
    expect(top!.y).toBeLessThan(bottom!.y);
  });

  it('is refused if no creases have such ends', () => {
    const ends = [
      { x: 0, y: -20 },
      { x: 25, y: 0 },
      { x: 0, y: 20 },
      { x: -25, y: 0 },
    ];
    expect(refusalOf({ ...foldingOf(ends), lengthwise: inches(80) } as Measured)).toMatchObject({
      code: 'lengths-do-not-meet',
      field: ['measured', 'lengthwise'],
    });
  });
});

it.each<[string, Measured]>([
  ['diameters', diametersOf([48, 48, 48, 48])],
  ['chords', chordsOf(24, [36, 40, 38])],
  ['a hexagon', hexagonOf(regularCorners(6, 24))],
  ['an octagon', octagonOf(regularCorners(8, 24))],
  ['edge points', edgePointsOf([0, 2, 4, 1, 3, 5].map((at) => regularCorners(6, 24)[at]!))],
  ['corners', cornersOf(regularCorners(6, 24))],
])('%s: the drawing has the arcs that cross at the center, and they do', (_way, measured) => {
  const parts = centerOf(measured).diagram!.parts;
  const spot = parts.at(-1)!;
  const arcs = parts.filter((part) => part.part === 'arc');
  expect(arcs).toHaveLength(3);
  for (const arc of arcs) {
    if (spot.part !== 'circle') throw new Error('not the center');
    expect(Math.abs(pointDistance(arc.center, spot.center) - arc.radius)).toBeLessThan(1e-6);
    const toward = (Math.atan2(spot.center.y - arc.center.y, spot.center.x - arc.center.x) * 180) / Math.PI;
    expect(toward).toBeGreaterThan(arc.fromDegrees);
    expect(toward).toBeLessThan(arc.toDegrees);
  }
});
