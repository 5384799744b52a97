import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  biasFabricLength,
  biasSquareSide,
  type BiasFabric,
  layBiasStrips,
  slantedJoinCost,
  squaredStripsLength,
} from '#core/calculators/binding/bias-strips/work';
import { pointDistance, pointMidway } from '#core/geometry/point';
import { polygonArea } from '#core/geometry/polygon';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { areaCovered } from '../clipped';

const anyFabric: fc.Arbitrary<BiasFabric> = fc.record({
  width: fc.integer({ min: 8, max: 44 * 8 }).map((eighths) => inches(eighths / 8)),
  length: fc.integer({ min: 8, max: 44 * 8 }).map((eighths) => inches(eighths / 8)),
  strip: fc.integer({ min: 6, max: 32 }).map((eighths) => inches(eighths / 8)),
  seam: fc.constant(inches(1 / 4)),
  shortest: fc.integer({ min: 1, max: 12 }).map(inches),
});

describe('bias strips from a rectangle', () => {
  it('are a strip wide, at 45°, and as long along the middle as they say', () => {
    fc.assert(
      fc.property(anyFabric, (fabric) => {
        for (const { middle, corners } of layBiasStrips(fabric).strips) {
          const [a, b, c, d] = corners;
          expect(Math.abs(b.x - a.x)).toBeCloseTo(Math.abs(b.y - a.y), 6);
          expect(pointDistance(pointMidway(a, d), pointMidway(b, c))).toBeCloseTo(middle, 5);
          expect(polygonArea(corners) / middle).toBeCloseTo(fabric.strip, 5);
          expect(middle).toBeGreaterThanOrEqual(fabric.shortest);
        }
      }),
    );
  });

  it('fit inside the fabric and do not overlap (areas by a polygon library)', () => {
    fc.assert(
      fc.property(anyFabric, (fabric) => {
        const { strips } = layBiasStrips(fabric);
        if (strips.length === 0) return;
        const { width, length } = fabric;
        const whole = [
          { x: 0, y: 0 },
          { x: width, y: 0 },
          { x: width, y: length },
          { x: 0, y: length },
        ];
        const covered = areaCovered(
          whole,
          strips.map(({ corners }) => corners),
        );
        const sum = strips.reduce((so, { middle }) => so + middle * fabric.strip, 0);
        expect(covered / sum).toBeCloseTo(1, 4);
      }),
      { numRuns: 60 },
    );
  });

  it('have their ends all on the same grain', () => {
    fc.assert(
      fc.property(anyFabric, (fabric) => {
        const { ends, strips } = layBiasStrips(fabric);
        for (const { corners } of strips) {
          const [a, , , d] = corners;
          expect(ends === 'across' ? a.y - d.y : a.x - d.x).toBeCloseTo(0, 6);
        }
      }),
    );
  });

  it('join to the sum of their middles less two slanted seam allowances for each join', () => {
    fc.assert(
      fc.property(anyFabric, (fabric) => {
        const { strips, joined } = layBiasStrips(fabric);
        const sum = strips.reduce((so, { middle }) => so + middle, 0);
        const joins = Math.max(0, strips.length - 1) * 2 * fabric.seam * Math.hypot(1, 1);
        expect(joined).toBeCloseTo(sum - joins, 4);
      }),
    );
  });

  it('are never longer for smaller fabric or a wider seam', () => {
    fc.assert(
      fc.property(anyFabric, (fabric) => {
        const { joined } = layBiasStrips(fabric);
        const more = inches(1 / 2);
        expect(layBiasStrips({ ...fabric, width: fabric.width + more }).joined).toBeGreaterThanOrEqual(
          joined - 1e-6,
        );
        expect(layBiasStrips({ ...fabric, length: fabric.length + more }).joined).toBeGreaterThanOrEqual(
          joined - 1e-6,
        );
        expect(layBiasStrips({ ...fabric, seam: fabric.seam * 1.5 }).joined).toBeLessThanOrEqual(
          joined + 1e-6,
        );
      }),
    );
  });

  it('fill a yard of 42 in fabric by hand: nine of 2 1/2 in across the middle are each 36√2 in less a slanted end', () => {
    const fabric = {
      width: inches(42),
      length: inches(36),
      strip: inches(2.5),
      seam: inches(1 / 4),
      shortest: inches(6),
    };
    const { strips } = layBiasStrips(fabric);
    const longest = Math.max(...strips.map(({ middle }) => middle)) / UNITS_PER_INCH;
    // The first band right of the corner runs the full height: y from 0 to 36, x from y to y + 3.54, within 42.
    expect(longest).toBeCloseTo(36 * Math.SQRT2, 9);
    expect(strips.filter(({ middle }) => middle > inches(36 * Math.SQRT2) - 1)).toHaveLength(1);
  });

  it('never promise more than the fabric holds: a quarter yard of 40 in gives less than 8 yd of 1 1/4 in, and not 10 (known slip)', () => {
    const fabric = {
      width: inches(40),
      length: inches(9),
      strip: inches(1.25),
      seam: inches(1 / 4),
      shortest: inches(3),
    };
    const yards = layBiasStrips(fabric).joined / inches(36);
    expect(yards).toBeLessThan((40 * 9) / 1.25 / 36);
    expect(yards).toBeGreaterThan(6);
  });

  it('do not exist when the fabric is too small for the shortest', () => {
    const fabric = {
      width: inches(3),
      length: inches(3),
      strip: inches(2.5),
      seam: inches(1 / 4),
      shortest: inches(6),
    };
    expect(layBiasStrips(fabric)).toMatchObject({ strips: [], joined: 0 });
    expect(squaredStripsLength(layBiasStrips(fabric), fabric.strip)).toBe(0);
  });
});

describe('the least fabric for a length of bias', () => {
  const step = inches(1 / 2);
  const anyNeed = fc.integer({ min: 20, max: 400 }).map(inches);

  it('is what a step-by-step search finds, for the width of the fabric and for a square', () => {
    const fabric = { strip: inches(2.5), seam: inches(1 / 4), shortest: inches(6) };
    const gives = (width: number, length: number) =>
      squaredStripsLength(layBiasStrips({ ...fabric, width, length }), fabric.strip);
    fc.assert(
      fc.property(anyNeed, (needed) => {
        let length = step;
        while (gives(inches(42), length) < needed) length = inches(length / UNITS_PER_INCH + 1 / 2);
        expect(
          biasFabricLength({ ...fabric, width: inches(42) }, { needed, step, longest: inches(400) }),
        ).toBe(length);
        let side = step;
        while (gives(side, side) < needed) side = inches(side / UNITS_PER_INCH + 1 / 2);
        expect(biasSquareSide(fabric, { needed, step, largest: inches(400) })).toBe(side);
      }),
      { numRuns: 40 },
    );
  });

  it('loses less to joins than the strips add: a join takes two slanted seam allowances', () => {
    expect(slantedJoinCost(1 / 4)).toBeCloseTo(0.7071, 4);
  });
});
