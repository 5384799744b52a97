import ClipperLib from 'clipper-lib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handFinish } from '#core/calculators/hand-finish/hand-finish';
import type { HandFinishInput } from '#core/calculators/hand-finish/input';
import { outlineArea, outlineInsetPerimeter } from '#core/calculators/outline/outline-inset';
import { outlinePoints, outlineTightestRadius } from '#core/calculators/outline/outline-measures';
import type { Outline } from '#core/domain/outline';
import {
  type Length,
  lengthFromInches,
  lengthFromMillimeters,
  lengthFromUnits,
  UNITS_PER_INCH,
} from '#core/units/length';
import type { Measurements } from '#core/domain/measurements';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyOutline, METRIC_SETTINGS } from '#test/helpers/measurements';

const inches = lengthFromInches;
const plain: HandFinishInput = {
  ...handFinish.fromProject(SAMPLE_MEASUREMENTS),
  hole: null,
  hasSlit: false,
};

const rectangle = (width: number, length: number): Outline => ({
  shape: 'rectangle',
  width: inches(width),
  length: inches(length),
});
const inchesOf = (input: HandFinishInput) => answerOf(handFinish, input).details.length / UNITS_PER_INCH;
/** No seam and no cover: the line lies on the edge itself. */
const onEdge = { seam: lengthFromUnits(0), backCover: lengthFromUnits(0) };

describe('hand finish against figures worked out elsewhere', () => {
  // Common practice: a quilt 28 1/2 × 32 1/4 (edge 121 1/2) took 140 minutes of hand sewing, 52.1 in an hour.
  it('takes 140 minutes for an edge of 121 1/2 in at 52.1 in an hour', () => {
    const input = { ...plain, ...onEdge, outline: rectangle(28.5, 32.25), perHour: inches(52.1) };
    expect(inchesOf(input)).toBeCloseTo(121.5, 9);
    expect(Math.round(answerOf(handFinish, input).details.minutes)).toBe(140);
  });

  // Common practice: fifteen minutes a foot is 48 in an hour.
  it('takes fifteen minutes a foot at 48 in an hour', () => {
    const input = { ...plain, ...onEdge, outline: rectangle(3, 3), perHour: inches(48) };
    expect(answerOf(handFinish, input).details.minutes).toBe(15);
  });

  // Derived: a skirt of 50 across with a hole of 5 has πD + 2(R − r) + πd = 217.79 of edge.
  it('goes around a skirt with hole and slit', () => {
    const input: HandFinishInput = {
      ...plain,
      ...onEdge,
      outline: { shape: 'circle', diameter: inches(50) },
      hole: { diameter: inches(5) },
      hasSlit: true,
    };
    expect(inchesOf(input)).toBeCloseTo(217.79, 2);
    const parts = answerOf(handFinish, input).details.parts.map(({ length }) => length / UNITS_PER_INCH);
    expect(parts[0]).toBeCloseTo(157.08, 2);
    expect(parts[1]).toBeCloseTo(15.71, 2);
    expect(parts[2]).toBeCloseTo(45, 9);
  });

  // Derived: stitch lines at a seam of 1/4: radius 3/4 gives 6.283, 2 gives 14.137, 5 gives 32.987.
  it.each([
    [0.75, 6.283],
    [1, 7.854],
    [1.5, 10.996],
    [2, 14.137],
    [3, 20.42],
    [5, 32.987],
  ])('a hole of radius %d is sewn along %d', (radius, line) => {
    const hole = { diameter: inches(2 * radius) };
    const { parts } = answerOf(handFinish, { ...plain, hole, backCover: lengthFromUnits(0) }).details;
    expect(parts.find(({ part }) => part === 'inner')!.length / UNITS_PER_INCH).toBeCloseTo(line, 3);
  });

  // Common practice: thread of 18 to 24 in.
  it('counts lengths of thread and stitches up', () => {
    const input: HandFinishInput = {
      ...plain,
      ...onEdge,
      outline: rectangle(10, 15),
      threadFactor: 1.5,
      threadLength: inches(20),
      threadTail: inches(5),
      stitchLength: inches(1 / 8),
    };
    expect(answerOf(handFinish, input).details).toMatchObject({ stitches: 400, threads: 5 });
    const longer = { ...input, outline: rectangle(10, 15.125) };
    expect(answerOf(handFinish, longer).details).toMatchObject({ stitches: 402, threads: 6 });
  });
});

/** Perimeter and area of the outline by clipper-lib's own inward offset on its integer grid. */
function insetByClipper(outline: Outline, inset: number): number {
  const path = outlinePoints(outline).map(({ x, y }) => ({ X: Math.round(x), Y: Math.round(y) }));
  const offset = new ClipperLib.ClipperOffset(1e6, 0.25);
  offset.AddPath(path, ClipperLib.JoinType.jtMiter, ClipperLib.EndType.etClosedPolygon);
  const rings: { X: number; Y: number }[][] = [];
  offset.Execute(rings, -inset);
  return rings.reduce((sum, ring) => sum + ringLength(ring), 0);
}

const ringLength = (ring: readonly { readonly X: number; readonly Y: number }[]) =>
  ring.reduce((sum, { X, Y }, index) => {
    const next = ring[(index + 1) % ring.length]!;
    return sum + Math.hypot(next.X - X, next.Y - Y);
  }, 0);

describe('the line inside the edge', () => {
  it('is as long as clipper-lib finds, for every outline with known corners', () => {
    fc.assert(
      fc.property(anyOutline(8, 120), fc.integer({ min: 0, max: UNITS_PER_INCH }), (outline, inset) => {
        fc.pre(outline.shape !== 'sides');
        const length = outlineInsetPerimeter(outline, inset);
        fc.pre(length !== null);
        const isCurve = outlineTightestRadius(outline) !== null;
        expect(insetByClipper(outline, inset) / length).toBeCloseTo(1, isCurve ? 2 : 4);
      }),
      { numRuns: 200 },
    );
  });

  it('is the parallel of an ellipse, by walking along it in small steps', () => {
    const [a, b, inset] = [300_000, 200_000, 20_000];
    const steps = 20_000;
    const points = Array.from({ length: steps }, (_, index) => {
      const t = (2 * Math.PI * index) / steps;
      const normal = Math.hypot(Math.cos(t) / a, Math.sin(t) / b);
      return {
        X: a * Math.cos(t) - (inset * Math.cos(t)) / a / normal,
        Y: b * Math.sin(t) - (inset * Math.sin(t)) / b / normal,
      };
    });
    const outline = {
      shape: 'ellipse',
      width: lengthFromUnits(2 * a),
      length: lengthFromUnits(2 * b),
    } as const;
    expect(outlineInsetPerimeter(outline, inset)! / ringLength(points)).toBeCloseTo(1, 7);
  });

  it('does not exist when the outline is too small or an ellipse bends too tightly', () => {
    const square = { shape: 'square', side: inches(2) } as const;
    expect(outlineInsetPerimeter(square, inches(1))).toBeNull();
    expect(outlineInsetPerimeter(square, inches(1) - 1)).toBeCloseTo(8, 6);
    const ellipse = { shape: 'ellipse', width: inches(40), length: inches(4) } as const;
    const tightest = inches(0.2);
    expect(outlineInsetPerimeter(ellipse, tightest + 1)).toBeNull();
    expect(outlineInsetPerimeter(ellipse, tightest - 1)).not.toBeNull();
    expect(outlineInsetPerimeter({ shape: 'circle', diameter: inches(2) }, inches(1))).toBeNull();
    expect(outlineInsetPerimeter(rectangle(2, 40), inches(1.5))).toBeNull();
  });

  it('keeps the whole length of a list of sides, whose angles are unknown', () => {
    const sides = [inches(10), inches(12), inches(9)];
    expect(
      outlineInsetPerimeter({ shape: 'sides', sides, width: inches(12), length: inches(9) }, inches(1)),
    ).toBe(inches(31));
  });

  it('encloses an area as the outline’s corners do', () => {
    fc.assert(
      fc.property(anyOutline(8, 120), (outline) => {
        const points = outlinePoints(outline);
        const twice = points.reduce((sum, { x, y }, index) => {
          const next = points[(index + 1) % points.length]!;
          return sum + x * next.y - next.x * y;
        }, 0);
        const ratio = outlineArea(outline) / Math.abs(twice / 2);
        if (outline.shape === 'sides') expect(ratio).toBeGreaterThan(1);
        else expect(ratio).toBeCloseTo(1, 2);
      }),
    );
  });
});

describe('hours and thread', () => {
  const anySize = fc.integer({ min: 12 * 8, max: 100 * 8 }).map((eighths) => inches(eighths / 8));

  it('never fall as the quilt grows, or rise as the maker gets faster', () => {
    fc.assert(
      fc.property(anySize, fc.integer({ min: 1, max: 20 * UNITS_PER_INCH }), (diameter, more) => {
        const at = (one: Length) =>
          answerOf(handFinish, { ...plain, outline: { shape: 'circle', diameter: one } }).details;
        const [small, large] = [at(diameter), at(lengthFromUnits(diameter + more))];
        expect(large.minutes).toBeGreaterThan(small.minutes);
        expect(large.stitches).toBeGreaterThanOrEqual(small.stitches);
        expect(large.threads).toBeGreaterThanOrEqual(small.threads);
        const faster = answerOf(handFinish, { ...plain, perHour: lengthFromUnits(plain.perHour + more) })
          .details.minutes;
        expect(faster).toBeLessThan(answerOf(handFinish, plain).details.minutes);
      }),
    );
  });

  it('add up over the parts, and are worth the hourly rate', () => {
    fc.assert(
      fc.property(anySize, fc.integer({ min: 100, max: 10_000 }), (diameter, hourRate) => {
        const input: HandFinishInput = {
          ...plain,
          outline: { shape: 'circle', diameter },
          hole: { diameter: inches(3) },
          hasSlit: true,
          hourRate,
        };
        const { details, figures, tables } = answerOf(handFinish, input);
        const rows = tables[0]!.rows.map((row) => (row[2]?.kind === 'minutes' ? row[2].exact : NaN));
        expect(rows.reduce((sum, minutes) => sum + minutes, 0)).toBeCloseTo(details.minutes, 9);
        const worth = figures.find(({ label }) => label === 'Your time is worth')!.quantity;
        expect(worth.kind === 'money' && worth.exact).toBeCloseTo((details.minutes / 60) * hourRate, 6);
        const time = figures[0]!.quantity;
        expect(time.kind === 'minutes' && time.rounded).toBe(Math.ceil(details.minutes - 1e-6));
      }),
    );
  });

  it('never say less sewing than a walk around the slit ring', () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 60 }), fc.integer({ min: 2, max: 6 }), (across, hole) => {
        const d = plain.seam + plain.backCover;
        const [R, r] = [inches(across / 2) - d, inches(hole / 2) + d];
        const [outer, inner] = [Math.asin(d / R), Math.asin(d / r)];
        const legs = 2 * (R * Math.cos(outer) - r * Math.cos(inner));
        const walked = R * (2 * Math.PI - 2 * outer) + r * (2 * Math.PI - 2 * inner) + legs;
        const input: HandFinishInput = {
          ...plain,
          outline: { shape: 'circle', diameter: inches(across) },
          hole: { diameter: inches(hole) },
          hasSlit: true,
        };
        const { length } = answerOf(handFinish, input).details;
        expect(length).toBeGreaterThanOrEqual(walked);
        expect(length - walked).toBeLessThan(10 * d);
      }),
    );
  });
});

describe('what hand finish refuses and warns of', () => {
  it('refuses an outline without room, thread that is all lost, and a slit without a hole', () => {
    const hole = { diameter: inches(11) };
    const round = { shape: 'circle', diameter: inches(12) } as const;
    expect(refusalOf(handFinish, { ...plain, outline: round, hole })).toMatchObject({
      code: 'no-room',
      field: ['hole', 'diameter'],
    });
    const tiny = { shape: 'square', side: inches(1 / 2) } as const;
    expect(refusalOf(handFinish, { ...plain, outline: tiny })).toMatchObject({
      code: 'no-room',
      field: ['outline'],
    });
    const tail = { threadTail: inches(18), threadLength: inches(18) };
    expect(refusalOf(handFinish, { ...plain, ...tail })).toMatchObject({
      code: 'no-thread-left',
      field: ['threadTail'],
    });
    expect(handFinish.input.safeParse({ ...plain, hasSlit: true }).success).toBe(false);
    expect(handFinish.input.safeParse(plain).success).toBe(true);
  });

  it('starts from the project: its hole, its slit only with a hole, and thread in its units', () => {
    const started = (changes: Partial<Measurements>) =>
      handFinish.fromProject({ ...SAMPLE_MEASUREMENTS, ...changes });
    expect(started({})).toMatchObject({
      hasSlit: true,
      hole: SAMPLE_MEASUREMENTS.hole,
      threadLength: inches(18),
    });
    expect(started({ hasSlit: false }).hasSlit).toBe(false);
    expect(started({ hole: null })).toMatchObject({ hasSlit: false, hole: null });
    expect(started({ settings: METRIC_SETTINGS })).toMatchObject({
      stitchLength: lengthFromMillimeters(3),
      threadLength: lengthFromMillimeters(450),
      threadTail: lengthFromMillimeters(130),
    });
  });

  it('says how far inside the edge there is no room, and draws no line inside a sketch', () => {
    const tiny = refusalOf(handFinish, { ...plain, outline: { shape: 'square', side: inches(1 / 2) } });
    expect(tiny.values['line']).toMatchObject({ exact: plain.seam + plain.backCover });
    const sides = [inches(20), inches(22), inches(21)];
    const sketch = { shape: 'sides', sides, width: inches(22), length: inches(18) } as const;
    expect(answerOf(handFinish, { ...plain, outline: sketch }).diagram?.parts.length).toBe(1);
  });

  it('warns of needles and pins, and covers the first stitches of a ring', () => {
    const kinds = (input: HandFinishInput) => answerOf(handFinish, input).notes.map(({ kind }) => kind);
    expect(kinds(plain)).toEqual(['caution', 'caution', 'tip', 'tip']);
    const ring = { ...plain, hole: { diameter: inches(4) } };
    expect(kinds(ring)).toEqual(['caution', 'caution', 'tip', 'tip', 'tip']);
    // Common practice: the last stitches cover the first by half an inch.
    expect(answerOf(handFinish, ring).notes[2]?.values['over']).toMatchObject({ rounded: inches(1 / 2) });
  });
});
