import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centerClearance } from '#core/calculators/center/center-clearance/center-clearance';
import type { CenterClearanceInput, OnePatch } from '#core/calculators/center/center-clearance/input';
import {
  type CenterPatch,
  distanceToPatchEdge,
  patchCorners,
  patchPart,
  seamsCrossed,
} from '#core/calculators/center/center-clearance/center-patch';
import { formatQuantity } from '#core/calculators/format-quantity';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { polygonContainsPoint } from '#core/geometry/polygon';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { parseLength } from '#core/units/parse-length';

type Hole = Omit<CenterClearanceInput, 'middle'>;
const hole: Hole & { readonly middle: CenterClearanceInput['middle'] } = centerClearance.fromProject({
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6.5) },
  hasSlit: false,
  settings: STARTING_SETTINGS,
});
const patch: OnePatch = {
  what: 'one-patch',
  patchShape: 'square',
  patchAcross: inches(24),
  patchSides: 6,
  offsetAcross: inches(0),
  offsetDown: inches(0),
  accuracy: inches(1 / 8),
};
const answerOf = (input: CenterClearanceInput) => {
  const result = centerClearance.calculate(input);
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
/** The answer for one patch, whose details are those of a patch. */
const answer = (change: Partial<OnePatch & Hole> = {}) => {
  const {
    holeDiameter = hole.holeDiameter,
    seamAllowance = hole.seamAllowance,
    backCover = hole.backCover,
    ...rest
  } = change;
  const middle: OnePatch = { ...patch, ...rest };
  const answered = answerOf({ middle, holeDiameter, seamAllowance, backCover });
  if (!('largestHole' in answered.details)) throw new Error('not a patch');
  return { ...answered, details: answered.details };
};
const acrossSeams = (seams: number, change: Partial<Hole> = {}) => {
  const answered = answerOf({ ...hole, ...change, middle: { what: 'seams-meet', seams } });
  if (!('betweenSeams' in answered.details)) throw new Error('not seams');
  return { ...answered, details: answered.details };
};

it('starts with a 24 in square in the middle of a 50 in round', () => {
  expect(hole.middle).toEqual(patch);
});

describe('a hole where seams meet', () => {
  it('6 1/2 in wide in a ring of 12 wedges crosses 12 seams, 1.833 in apart along the stitching (derived)', () => {
    const { details, figures } = acrossSeams(12);
    expect(details.betweenSeams / UNITS_PER_INCH).toBeCloseTo((2 * Math.PI * 3.5) / 12, 9);
    expect(figures[0]).toMatchObject({ label: 'Seams it crosses', quantity: { rounded: 12 } });
    expect(figures[1]!.quantity).toMatchObject({ rounded: 14_895 });
  });

  it('is no fault: it gets tips to stay-stitch and where to put the join, and no warning about the patch', () => {
    for (const seams of [4, 8, 40]) {
      const { notes, details } = acrossSeams(seams);
      expect(notes[0]).toMatchObject({ kind: 'tip', values: { seams: { rounded: seams } } });
      expect(notes[0]?.says).toMatch(/Stay-stitch first .* no seam fall on the join/);
      expect(notes[1]).toMatchObject({ kind: 'tip', values: { away: { exact: details.betweenSeams / 2 } } });
      expect(notes.filter(({ kind }) => kind === 'warning').map(({ says }) => says)).toEqual([
        expect.stringContaining('can’t be undone'),
      ]);
    }
  });

  it('crosses as many seams as a walk along the stitching meets', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 120 }), fc.integer({ min: 8, max: 200 }), (seams, eighths) => {
        const { details } = acrossSeams(seams, { holeDiameter: inches(eighths / 8) });
        const steps = 7_919;
        const wedgeAt = (step: number) => Math.floor((seams * (step + 0.5)) / steps) % seams;
        const met = Array.from({ length: steps }, (_, step) => wedgeAt(step) !== wedgeAt(step + 1));
        expect(met.filter(Boolean)).toHaveLength(details.seamsCrossed);
        expect(details.betweenSeams * seams).toBeCloseTo(2 * Math.PI * details.seamRadius, 6);
      }),
    );
  });

  it('is drawn with each seam from the center outward, through the stitching', () => {
    const { diagram, details } = acrossSeams(8);
    const seams = diagram!.parts.filter((part) => part.part === 'line' && part.tone === 'plan');
    expect(seams).toHaveLength(8);
    for (const seam of seams) {
      if (seam.part !== 'line') continue;
      expect(Math.hypot(seam.to.x - seam.from.x, seam.to.y - seam.from.y)).toBeGreaterThan(
        details.seamRadius,
      );
    }
  });
});

describe('a hole in the center patch', () => {
  it('6 1/2 in wide leaves 8 1/2 in beside its seam line in a 24 in center (derived)', () => {
    const { details, figures } = answer();
    expect(details.clearanceAtSeam).toBe(inches(8.5));
    expect(details.clearanceAtCut).toBe(inches(8.75));
    expect(details.clearanceAtBack).toBe(inches(8.375));
    expect(details.staysInside).toBe(true);
    expect(details.seamsCrossed).toBe(0);
    expect(figures[0]).toMatchObject({
      label: 'Fabric left beside the seam line',
      quantity: { rounded: inches(8.5) },
    });
  });

  it('off the middle loses exactly that much on the nearest side (derived)', () => {
    expect(answer({ offsetAcross: inches(3), offsetDown: inches(-2) }).details.clearanceAtSeam).toBe(
      inches(5.5),
    );
    const round = answer({ patchShape: 'circle', offsetAcross: inches(3), offsetDown: inches(4) });
    expect(round.details.clearanceAtSeam).toBeCloseTo(inches(12 - 5 - 3.5), 6);
  });

  it('has a figure for how far the seam line leaves the patch and how many seams it crosses', () => {
    const { details, figures, notes } = answer({ patchAcross: inches(6.5), offsetAcross: inches(1) });
    expect(details.staysInside).toBe(false);
    expect(details.clearanceAtSeam).toBe(inches(2.25 - 3.5));
    expect(details.seamsCrossed).toBe(3);
    expect(figures[0]).toMatchObject({
      label: 'The seam line leaves the patch by',
      quantity: { rounded: inches(1.25) },
    });
    expect(notes[0]?.says).toContain('Stay-stitch first');
    expect(notes[0]?.values).toMatchObject({ out: { rounded: inches(1.25) } });
  });

  it('has a warning if the seam line stays inside by less than the accuracy', () => {
    const notes = (patch: number) => answer({ patchAcross: inches(patch), accuracy: inches(1 / 4) }).notes;
    expect(notes(7.25)[0]?.says).toContain('If the center is off by');
    expect(notes(7.25)[0]?.values).toMatchObject({
      left: { rounded: inches(1 / 8) },
      off: { rounded: inches(1 / 4) },
    });
    expect(notes(7.5)[0]?.says).not.toContain('If the center is off by');
  });

  it('has a tip if the fold on the back covers a seam', () => {
    const [first] = answer({ patchAcross: inches(7.2), accuracy: inches(0) }).notes;
    expect(first?.says).toContain('On the back, the fold covers a seam');
  });

  it('of the largest size just touches the nearest seam', () => {
    const { largestHole } = answer({ offsetAcross: inches(2) }).details;
    expect(largestHole).toBe(inches(19.5));
    const touching = answer({ offsetAcross: inches(2), holeDiameter: inches(19.5) });
    expect(touching.details.clearanceAtSeam).toBe(0);
    expect(touching.details.staysInside).toBe(true);
  });

  it('crosses no seam if its seam line or fold just touches one', () => {
    const touching = answer({ patchAcross: inches(7), accuracy: inches(0), backCover: inches(0) });
    expect(touching.details.seamsCrossed).toBe(0);
    expect(touching.notes[0]?.says).toContain('can’t be undone');
    const round = answer({ patchShape: 'circle', patchAcross: inches(7) });
    expect(round.details.seamsCrossed).toBe(0);
  });

  it('explains the distance with the formula for the nearest corner or the nearest side of a square', () => {
    const formula = (across: number, down: number) =>
      answer({ offsetAcross: inches(across), offsetDown: inches(down) }).explanation[0]?.formula;
    expect(formula(13, -14)).toBe('D = shortest distance from the center of the hole to a side');
    for (const beside of [formula(13, 2), formula(12, 12), formula(-2, -14)]) {
      expect(beside).toBe('D = A ÷ 2 − max(|x|, |y|)');
    }
  });

  it('has no largest size if its center is one seam allowance from the edge', () => {
    const { details, figures } = answer({ offsetAcross: inches(11.75) });
    expect(details.largestHole).toBe(0);
    expect(figures.map(({ label }) => label)).not.toContain('Largest hole here');
  });

  it('has no largest size if its center is outside the patch', () => {
    const { details, figures } = answer({ offsetAcross: inches(20) });
    expect(details.largestHole).toBeLessThan(0);
    expect(figures.map(({ label }) => label)).not.toContain('Largest hole here');
  });
});

describe('the patch', () => {
  const anyPatch: fc.Arbitrary<CenterPatch> = fc.record({
    shape: fc.constantFrom('square', 'circle', 'polygon'),
    across: fc.integer({ min: 1_000, max: 300_000 }),
    sides: fc.integer({ min: 3, max: 12 }),
  });
  const anyCenter = fc.record({
    x: fc.integer({ min: -100_000, max: 100_000 }),
    y: fc.integer({ min: -100_000, max: 100_000 }),
  });

  it('contains every point of a circle as large as its clearance, and not of a larger one', () => {
    fc.assert(
      fc.property(anyPatch, anyCenter, (patch, center) => {
        const distance = distanceToPatchEdge(patch, center);
        fc.pre(distance > 10);
        const around = (radius: number) =>
          Array.from({ length: 720 }, (_, index) => ({
            x: center.x + radius * Math.cos((index * Math.PI) / 360),
            y: center.y + radius * Math.sin((index * Math.PI) / 360),
          }));
        const isIn = ({ x, y }: { readonly x: number; readonly y: number }) =>
          patch.shape === 'circle'
            ? Math.hypot(x, y) <= patch.across / 2
            : polygonContainsPoint(patchCorners(patch), { x, y });
        expect(around(distance * 0.9999).every(isIn)).toBe(true);
        expect(around(distance * 1.001).every(isIn)).toBe(false);
        expect(seamsCrossed(patch, center, distance * 0.9999)).toBe(0);
        expect(seamsCrossed(patch, center, distance * 1.001)).toBeGreaterThan(0);
      }),
    );
  });

  it('has a side at the bottom if it is a polygon, and the given distance across its sides', () => {
    const hexagon = patchCorners({ shape: 'polygon', across: 100, sides: 6 });
    const heights = hexagon.map(({ y }) => y);
    expect(Math.max(...heights)).toBeCloseTo(50, 9);
    expect(heights.filter((y) => Math.abs(y - 50) < 1e-9)).toHaveLength(2);
  });

  it('is drawn around the given point', () => {
    const at = { x: 10, y: 20 };
    expect(patchPart({ shape: 'circle', across: 8, sides: 3 }, at)).toMatchObject({ center: at, radius: 4 });
    expect(patchPart({ shape: 'square', across: 8, sides: 3 }, at)).toMatchObject({
      points: [
        { x: 6, y: 16 },
        { x: 14, y: 16 },
        { x: 14, y: 24 },
        { x: 6, y: 24 },
      ],
    });
  });
});

it('leaves less beside a larger hole, a wider seam or a hole farther off, and more in a larger patch', () => {
  const shape = fc.constantFrom('square', 'circle', 'polygon');
  const eighths = fc.integer({ min: 1, max: 80 }).map((count) => inches(count / 8));
  fc.assert(
    fc.property(shape, eighths, eighths, eighths, (patchShape, holeDiameter, offset, more) => {
      const base = { patchShape, patchSides: 6, holeDiameter, offsetAcross: offset } as const;
      const left = (change: Partial<OnePatch & Hole> = {}) =>
        answer({ ...base, ...change }).details.clearanceAtSeam;
      const grown = (length: number) => lengthFromUnits(length + more);
      const { seamAllowance } = hole;
      const { patchAcross } = patch;
      expect(left({ holeDiameter: grown(holeDiameter) })).toBeCloseTo(left() - more / 2, 6);
      expect(left({ seamAllowance: grown(seamAllowance) })).toBeCloseTo(left() - more, 6);
      expect(left({ offsetAcross: grown(offset) })).toBeLessThan(left());
      expect(left({ patchAcross: grown(patchAcross) })).toBeCloseTo(left() + more / 2, 6);
      expect(left({ offsetAcross: lengthFromUnits(0 - offset) })).toBeCloseTo(left(), 6);
    }),
  );
});

const style = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
} as const;

it('marks the cut circle on the folded project, and prints no mark outside it', () => {
  const table = answer().tables.find(({ title }) => title.startsWith('Quarter template'))!;
  expect(table.rows).toHaveLength(7);
  for (const [, along, up] of table.rows) {
    if (along?.kind !== 'length' || up?.kind !== 'length') throw new Error('not lengths');
    expect(Math.hypot(along.exact, up.exact) / UNITS_PER_INCH).toBeCloseTo(3.25, 9);
    const printed = [along, up].map((quantity) => parseLength(formatQuantity(quantity, style), 'in'));
    const [x, y] = printed.map((length) => (length.ok ? length.value : NaN));
    const reach = Math.hypot(x ?? NaN, y ?? NaN) / UNITS_PER_INCH;
    expect(reach).toBeLessThanOrEqual(3.25);
    expect(reach).toBeGreaterThan(3.25 - 1 / 32);
  }
  expect(table.rows[2]!.map((cell) => formatQuantity(cell, style))).toEqual([
    '30°',
    '2 13/16 in',
    '1⅝ in',
    '3¼ in',
  ]);
});

it('draws the patch and the hole inside the drawing, also a triangle and a hole outside the patch', () => {
  for (const change of [
    {},
    { patchShape: 'polygon', patchSides: 3 },
    { offsetAcross: inches(30) },
  ] as const) {
    const diagram = answer(change).diagram!;
    for (const part of diagram.parts) {
      const points =
        part.part === 'polygon'
          ? part.points
          : part.part === 'circle'
            ? [-1, 1].map((way) => ({
                x: part.center.x + way * part.radius,
                y: part.center.y + way * part.radius,
              }))
            : [];
      for (const { x, y } of points) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(diagram.width);
        expect(y).toBeLessThanOrEqual(diagram.height);
      }
    }
  }
});
