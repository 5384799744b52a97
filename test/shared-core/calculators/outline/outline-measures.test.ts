import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  outlineBounds,
  outlineCornerAngles,
  outlinePerimeter,
  outlineFromTop,
  outlinePoints,
  outlineSlit,
  outlineTightestRadius,
} from '#core/calculators/outline/outline-measures';
import { outlinePart } from '#core/calculators/outline/outline-part';
import type { Outline } from '#core/domain/outline';
import { polygonPerimeter, polygonSignedArea } from '#core/geometry/polygon';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { rulerLength } from '#test/helpers/arbitraries';

const inInches = (units: number) => units / UNITS_PER_INCH;

/** Length of an ellipse's edge by Simpson's rule over √(a² sin² t + b² cos² t): knows nothing of means or series. */
function perimeterByIntegration(a: number, b: number): number {
  const speed = (t: number) => Math.hypot(a * Math.sin(t), b * Math.cos(t));
  const slices = 20_000;
  const step = (2 * Math.PI) / slices;
  return Array.from({ length: slices / 2 }, (_, index) => {
    const from = 2 * index * step;
    return (speed(from) + 4 * speed(from + step) + speed(from + 2 * step)) * (step / 3);
  }).reduce((sum, part) => sum + part, 0);
}

const anyOutline: fc.Arbitrary<Outline> = fc.oneof(
  rulerLength().map((side): Outline => ({ shape: 'square', side })),
  fc
    .tuple(rulerLength(), rulerLength())
    .map(([width, length]): Outline => ({ shape: 'rectangle', width, length })),
  fc
    .tuple(rulerLength(), rulerLength(), rulerLength())
    .map(([width, length, cornerRadius]): Outline => ({ shape: 'rounded', width, length, cornerRadius })),
  rulerLength().map((diameter): Outline => ({ shape: 'circle', diameter })),
  fc
    .tuple(rulerLength(), rulerLength())
    .map(([width, length]): Outline => ({ shape: 'ellipse', width, length })),
  rulerLength().map((acrossFlats): Outline => ({ shape: 'hexagon', acrossFlats })),
  rulerLength().map((acrossFlats): Outline => ({ shape: 'octagon', acrossFlats })),
);

describe('the length of an outline', () => {
  it('is 312 in round a quilt of 70 by 86 in (class lesson LES gives the same perimeter)', () => {
    expect(outlinePerimeter({ shape: 'rectangle', width: inches(70), length: inches(86) })).toBe(inches(312));
  });

  it('is 154 in round a square of 38 1/2 in (common practice)', () => {
    expect(outlinePerimeter({ shape: 'square', side: inches(38.5) })).toBe(inches(154));
  });

  it('is 157.08 in round a circle of 50 in (common practice rounds to 157)', () => {
    expect(inInches(outlinePerimeter({ shape: 'circle', diameter: inches(50) }))).toBeCloseTo(157.0796, 4);
  });

  it('of rounded corners is four straight sides and one circle (derived)', () => {
    const throwQuilt: Outline = {
      shape: 'rounded',
      width: inches(40),
      length: inches(60),
      cornerRadius: inches(5),
    };
    expect(inInches(outlinePerimeter(throwQuilt))).toBeCloseTo(30 + 50 + 30 + 50 + 2 * Math.PI * 5, 9);
    expect(inInches(outlineTightestRadius(throwQuilt)!)).toBe(5);
  });

  it('of rounded corners that meet is that of a circle', () => {
    const round: Outline = {
      shape: 'rounded',
      width: inches(20),
      length: inches(20),
      cornerRadius: inches(10),
    };
    expect(inInches(outlinePerimeter(round))).toBeCloseTo(20 * Math.PI, 9);
    expect(outlinePerimeter({ ...round, cornerRadius: inches(30) })).toBe(outlinePerimeter(round));
  });

  it('agrees with numeric integration for ellipses to 1 part in 10⁹', () => {
    for (const [width, length] of [
      [40, 60],
      [60, 60],
      [12, 90],
      [33.125, 34],
    ] as const) {
      const found = outlinePerimeter({ shape: 'ellipse', width: inches(width), length: inches(length) });
      const integrated = perimeterByIntegration(inches(width) / 2, inches(length) / 2);
      expect(Math.abs(found / integrated - 1)).toBeLessThan(1e-9);
    }
  });

  it('is that of its drawn corners for straight sides, and a little more for curves', () => {
    fc.assert(
      fc.property(anyOutline, (outline) => {
        const drawn = polygonPerimeter(outlinePoints(outline)) / outlinePerimeter(outline);
        const isCurve = outlineTightestRadius(outline) !== null;
        expect(drawn).toBeLessThan(1 + 1e-12);
        expect(drawn).toBeGreaterThan(isCurve ? 0.998 : 1 - 1e-12);
      }),
    );
  });

  it('is the sum of a list of sides', () => {
    const sides = [10, 20.5, 30].map(inches);
    expect(outlinePerimeter({ shape: 'sides', sides, width: inches(20), length: inches(30) })).toBe(
      inches(60.5),
    );
  });
});

describe('the edge from the top', () => {
  it('starts at the middle of the top edge and runs clockwise through every corner', () => {
    fc.assert(
      fc.property(anyOutline, (outline) => {
        const points = outlineFromTop(outline);
        const { length } = outlineBounds(outline);
        expect(points[0]?.x).toBeCloseTo(0, 5);
        expect(points[1]?.x).toBeGreaterThan(0);
        expect(polygonSignedArea(points)).toBeGreaterThan(0);
        expect(polygonPerimeter(points)).toBeCloseTo(polygonPerimeter(outlinePoints(outline)), 3);
        if (outline.shape !== 'sides') expect(points[0]?.y).toBeCloseTo(-length / 2, 5);
      }),
    );
  });
});

describe('the bounds of an outline', () => {
  it('hold every drawn corner and are touched on all four sides', () => {
    fc.assert(
      fc.property(anyOutline, (outline) => {
        const { width, length } = outlineBounds(outline);
        const points = outlinePoints(outline);
        for (const [size, values] of [
          [width, points.map(({ x }) => x)],
          [length, points.map(({ y }) => y)],
        ] as const) {
          expect(Math.max(...values)).toBeCloseTo(size / 2, 6);
          expect(Math.min(...values)).toBeCloseTo(-size / 2, 6);
        }
      }),
    );
  });

  it('of a hexagon of side 1 are 2 by 1.7321 (derived)', () => {
    const bounds = outlineBounds({ shape: 'hexagon', acrossFlats: inches(Math.sqrt(3)) });
    expect(inInches(bounds.width)).toBeCloseTo(2, 3);
    expect(inInches(bounds.length)).toBeCloseTo(1.7321, 3);
  });
});

describe('corners, bends and slits', () => {
  it('turn once round in all: the outer angles add up to 360°', () => {
    for (const outline of [
      { shape: 'square', side: inches(9) },
      { shape: 'hexagon', acrossFlats: inches(9) },
      { shape: 'octagon', acrossFlats: inches(9) },
    ] satisfies Outline[]) {
      const turned = outlineCornerAngles(outline).reduce((sum, angle) => sum + 180 - angle, 0);
      expect(turned).toBe(360);
    }
    expect(outlineCornerAngles({ shape: 'circle', diameter: inches(9) })).toEqual([]);
  });

  it('bend an ellipse most at the ends of its long axis: b²/a, the circle through three points close by agrees', () => {
    const [a, b] = [inches(30), inches(20)];
    const found = outlineTightestRadius({ shape: 'ellipse', width: inches(40), length: inches(60) })!;
    const t = 1e-4;
    const [x, y] = [b * Math.sin(t), a * Math.cos(t)];
    const sagitta = a - y;
    expect(found / ((x * x + sagitta * sagitta) / (2 * sagitta))).toBeCloseTo(1, 6);
    expect(outlineTightestRadius({ shape: 'circle', diameter: inches(7) })).toBe(inches(3.5));
    expect(outlineTightestRadius({ shape: 'square', side: inches(7) })).toBeNull();
  });

  it('leave a slit of 22 1/2 in from the edge of a 50 in skirt to a 5 in hole (derived)', () => {
    expect(outlineSlit({ shape: 'circle', diameter: inches(50) }, { diameter: inches(5) })).toBe(
      inches(22.5),
    );
    expect(
      outlineSlit({ shape: 'rectangle', width: inches(30), length: inches(20) }, { diameter: inches(4) }),
    ).toBe(inches(8));
    expect(outlineSlit({ shape: 'circle', diameter: inches(5) }, { diameter: inches(5) })).toBe(0);
  });
});

describe('the drawn outline', () => {
  const center = { x: 100, y: 200 };

  it('is a true circle or ellipse about its center', () => {
    expect(outlinePart({ shape: 'circle', diameter: inches(2) }, center, 'fabric')).toEqual({
      part: 'circle',
      center,
      radius: inches(1),
      tone: 'fabric',
    });
    expect(
      outlinePart({ shape: 'ellipse', width: inches(2), length: inches(4) }, center, 'plan'),
    ).toMatchObject({
      radiusX: inches(1),
      radiusY: inches(2),
    });
  });

  it('has one corner for each side of a list', () => {
    const sides = [10, 20, 30, 15, 12].map(inches);
    const part = outlinePart(
      { shape: 'sides', sides, width: inches(30), length: inches(25) },
      center,
      'fabric',
    );
    expect(part.part === 'polygon' && part.points.length).toBe(5);
  });
});
