import ClipperLib from 'clipper-lib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RuffleInput } from '#core/calculators/edge-finish/ruffle/input';
import { ruffle } from '#core/calculators/edge-finish/ruffle/ruffle';
import { outlinePoints } from '#core/calculators/outline/outline-measures';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { anyOutline } from '#test/helpers/measurements';

const crib: Outline = { shape: 'rectangle', width: inches(36), length: inches(45) };
const starting = (outline: Outline, change: Partial<RuffleInput> = {}): RuffleInput => ({
  ...ruffle.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS }),
  ...change,
});
const detailsOf = (outline: Outline, change: Partial<RuffleInput> = {}) =>
  answerOf(ruffle, starting(outline, change)).details;
const oneEdge = (length: number, change: Partial<RuffleInput> = {}) =>
  detailsOf(crib, { around: 'one-edge', oneEdge: inches(length), ...change });
const pleated = (style: 'knife-pleats' | 'box-pleats', depth: number, spacing: number) => ({
  ruffle: { style, depth: inches(depth), spacing: inches(spacing) },
});

describe('a ruffle against common practice', () => {
  // Common practice: 15 in at 2.5 are 37.5, and 3 in for the ends make 40.5.
  it('along 15 in, two and a half times as full, takes 37 1/2 in and its ends', () => {
    const change = { ruffle: { style: 'gathers', fullness: 2.5 }, hem: inches(1.5) } as const;
    const { flat, needed } = oneEdge(15, change);
    expect([flat, needed]).toEqual([inches(37.5), inches(40.5)]);
  });

  // Common practice: around a crib quilt of 36 by 45 in, twice as full, 324 in; nine strips of 40 in (8.1).
  it('around a crib quilt takes 324 in, nine strips of 40 in', () => {
    const details = detailsOf(crib, { fabricWidth: inches(40) });
    expect([details.flat, details.strips]).toEqual([inches(324), 9]);
  });

  // Derived: four knife pleats 3/4 in deep: 12 in finished takes 18. Pleats that touch, knife or box, take 3 to 1.
  it('of four knife pleats 3/4 in deep takes 18 in for 12', () => {
    expect(oneEdge(12, pleated('knife-pleats', 3 / 4, 3))).toMatchObject({
      flat: inches(18),
      pleats: { count: 4 },
    });
  });

  it.each([
    ['knife-pleats', 1],
    ['box-pleats', 2],
  ] as const)('of %s that touch takes three times the edge', (style, spacing) => {
    expect(oneEdge(24, pleated(style, 1, spacing)).fullness).toBe(3);
  });

  // Common practice: folded, twice the width and two seams; in one layer, the width, a seam and a hem.
  it('3 in wide is cut 6 1/2 in folded, 3 3/4 in hemmed', () => {
    expect(detailsOf(crib, { layers: 'folded' }).cutWidth).toBe(inches(6.5));
    expect(detailsOf(crib, { layers: 'hemmed' }).cutWidth).toBe(inches(3.75));
  });
});

describe('pleats', () => {
  it('are as long flat as a walk along the folded strip', () => {
    const anyPleats = fc.record({
      style: fc.constantFrom('knife-pleats', 'box-pleats'),
      depth: fc.integer({ min: inches(1 / 8), max: inches(2) }).map(lengthFromUnits),
      spacing: fc.integer({ min: inches(1 / 2), max: inches(6) }).map(lengthFromUnits),
    });
    fc.assert(
      fc.property(anyPleats, fc.integer({ min: 8, max: 100 }), (pleats, length) => {
        const details = oneEdge(length, { ruffle: pleats });
        const { count, pitch } = details.pleats!;
        // Forward along the edge, under by a depth and back, for a box pleat once more on the other side.
        const turns = pleats.style === 'knife-pleats' ? [-1, 1] : [-1, 1, 1, -1];
        let [walked, at] = [0, 0];
        for (let one = 0; one < count; one += 1) {
          const moves = [pitch, ...turns.map((turn) => turn * pleats.depth)];
          for (const move of moves) {
            walked += Math.abs(move);
            at += move;
          }
        }
        expect(at).toBeCloseTo(inches(length), 3);
        expect(walked).toBeCloseTo(details.flat, 3);
        expect(pitch).toBeLessThanOrEqual(pleats.spacing + 1e-3);
        if (count > 1) expect(inches(length) / (count - 1)).toBeGreaterThan(pleats.spacing - 1e-3);
      }),
    );
  });
});

/** Perimeter of the outline grown by the width of the ruffle, with round corners, by clipper-lib. */
function freeEdgeOf(outline: Outline, width: number): number {
  const path = outlinePoints(outline).map(({ x, y }) => ({ X: Math.round(x), Y: Math.round(y) }));
  const offset = new ClipperLib.ClipperOffset(2, 20);
  offset.AddPath(path, ClipperLib.JoinType.jtRound, ClipperLib.EndType.etClosedPolygon);
  const rings: { X: number; Y: number }[][] = [];
  offset.Execute(rings, width);
  return rings
    .flatMap((ring) =>
      ring.map(({ X, Y }, index) => {
        const next = ring[(index + 1) % ring.length]!;
        return Math.hypot(next.X - X, next.Y - Y);
      }),
    )
    .reduce((sum, side) => sum + side, 0);
}

describe('the free edge', () => {
  it('is as long as clipper-lib finds, for every outline with known corners', () => {
    fc.assert(
      fc.property(anyOutline(10, 120), fc.integer({ min: 1, max: 8 }), (outline, width) => {
        fc.pre(outline.shape !== 'sides');
        const { flat, fullnessAtFreeEdge } = detailsOf(outline, { width: inches(width) });
        expect(flat / freeEdgeOf(outline, inches(width)) / fullnessAtFreeEdge!).toBeCloseTo(1, 2);
      }),
    );
  });

  it('is no longer than the seam along one straight edge, and warned of where the strip cups', () => {
    expect(oneEdge(30).fullnessAtFreeEdge).toBeNull();
    const round: Outline = { shape: 'circle', diameter: inches(12) };
    const says = (fullness: number) =>
      answerOf(ruffle, starting(round, { width: inches(6), ruffle: { style: 'gathers', fullness } }))
        .notes[0];
    // By hand: 12 / 24, so a fullness of 2 is just left as 1 at the free edge.
    expect(says(1.9)).toMatchObject({ kind: 'warning' });
    expect(says(2.1)).toMatchObject({ kind: 'tip' });
  });

  it('warns of pleats that lie over each other', () => {
    const first = (depth: number) =>
      answerOf(ruffle, starting(crib, pleated('knife-pleats', depth, 1))).notes[0];
    expect(first(1.25)).toMatchObject({ kind: 'warning' });
    expect(first(1)).toMatchObject({ kind: 'tip' });
  });
});

describe('its fabric', () => {
  it('is as few strips as reach, closed in a ring, and one value everywhere', () => {
    fc.assert(
      fc.property(anyOutline(10, 100), fc.double({ min: 1, max: 4, noNaN: true }), (outline, fullness) => {
        const input = starting(outline, { ruffle: { style: 'gathers', fullness }, safetyExtra: 0 });
        const { details, figures } = answerOf(ruffle, input);
        const ring = (count: number) => count * (inches(42) - inches(1 / 2));
        expect(ring(details.strips)).toBeGreaterThanOrEqual(details.flat - 1e-3);
        if (details.strips > 1) expect(ring(details.strips - 1)).toBeLessThan(details.flat);
        const [need] = ruffle.needs!(input, details, inches(42));
        expect(lengthFor(need!.amount, { width: inches(42), turning: 'any' })).toBe(details.fabric);
        const [cut] = ruffle.cuts!(input, details);
        expect(cut!.length * cut!.count).toBe(details.fabric);
        expect(figures[2]?.quantity).toMatchObject({ exact: details.fabric, rounded: details.fabricToBuy });
      }),
    );
  });

  it('never shrinks with a longer edge, more fullness or a wider ruffle', () => {
    const small = fc.integer({ min: 0, max: 8 });
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 80 }), small, small, small, (length, more, fuller, wider) => {
        const at = (edge: number, fullness: number, width: number) =>
          oneEdge(edge, { ruffle: { style: 'gathers', fullness }, width: inches(width) }).fabricToBuy /
          UNITS_PER_INCH;
        const least = at(length, 1.5, 2);
        expect(at(length + more, 1.5, 2)).toBeGreaterThanOrEqual(least);
        expect(at(length, 1.5 + fuller / 4, 2)).toBeGreaterThanOrEqual(least);
        expect(at(length, 1.5, 2 + wider)).toBeGreaterThanOrEqual(least);
      }),
    );
  });

  it('is refused where joins take it all, and where it is more than any edge takes', () => {
    const narrow = starting(crib, { fabricWidth: inches(4), seamAllowance: inches(2) });
    expect(refusalOf(ruffle, narrow)).toMatchObject({ code: 'strips-too-short', field: ['fabricWidth'] });
    const side = inches(390);
    const sides = Array.from({ length: 30 }, () => side);
    const huge: Outline = { shape: 'sides', sides, width: side, length: side };
    const full = { ruffle: { style: 'gathers', fullness: 6 } } as const;
    expect(refusalOf(ruffle, starting(huge, full))).toMatchObject({
      code: 'too-much-strip',
      field: ['ruffle'],
    });
  });
});
