import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coneRise, waveHeight } from '#core/calculators/lie-flat/cone';
import { type LieFlatInput, lieFlatInput } from '#core/calculators/lie-flat/input';
import { lieFlat } from '#core/calculators/lie-flat/lie-flat';
import { seamTurn, wedgesThatFit, workOutLieFlat } from '#core/calculators/lie-flat/work';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const plain: LieFlatInput = {
  ...lieFlat.fromProject(SAMPLE_MEASUREMENTS),
  wedges: 8,
  innerRadius: inches(3),
  outerRadius: inches(29),
  seamAllowance: inches(1 / 4),
  seamInner: inches(1 / 4),
  seamOuter: inches(1 / 4),
};
const inInches = (exact: number) => exact / UNITS_PER_INCH;
const inDegrees = (radians: number) => (radians * 180) / Math.PI;
const inRadians = (degrees: number) => (degrees * Math.PI) / 180;
const seams = (inner: number, outer: number) => ({ seamInner: inches(inner), seamOuter: inches(outer) });
const ofAngle = (wedges: number, angle: number): LieFlatInput => ({
  ...plain,
  wedges,
  cutWedge: { known: 'angle', angle },
});
const verdictOf = (input: LieFlatInput) => answerOf(lieFlat, input).figures[0]!.quantity;

describe('figures worked out elsewhere', () => {
  // Derived by trigonometry outside the program: a taper of e on each side of n seams over a leg, and the rise at R.
  it.each([
    [8, 1 / 32, 26, 29, 1.1, 2.27],
    [16, 1 / 64, 22, 25, 1.3, 2.12],
  ])('%d wedges, %f in over %d in: at %d in', (wedges, taper, leg, reach, missing, rise) => {
    const lost = 2 * wedges * seamTurn(taper, leg);
    expect(inDegrees(lost)).toBeCloseTo(missing, 2);
    expect(coneRise(reach, lost)).toBeCloseTo(rise, 2);
  });

  // Derived: one degree and half a degree at 29 in.
  it.each([
    [1, 2.16],
    [0.5, 1.53],
  ])('%f degrees missing lift the middle by %f in', (missing, rise) => {
    expect(coneRise(29, inRadians(missing))).toBeCloseTo(rise, 2);
  });

  // Derived: an even error e makes the radius smaller by e ÷ sin t.
  it.each([
    [8, 1 / 32, 0.082],
    [16, 1 / 64, 0.08],
  ])(
    '%d wedges, seams %f in too wide from end to end: the ring is flat and smaller',
    (wedges, off, smaller) => {
      const input = { ...plain, wedges, ...seams(1 / 4 + off, 1 / 4 + off) };
      const { details, figures } = answerOf(lieFlat, input);
      expect(inInches(details.movedIn)).toBeCloseTo(smaller, 3);
      expect(details.flatness).toEqual({ shape: 'flat' });
      expect(figures.map(({ label }) => label)).toContain('The seams make the radius smaller by');
    },
  );

  // Derived: both legs of every wedge cut 0.1 or 0.05 degrees wide.
  it.each([
    [8, 0.1, 1.6],
    [40, 0.05, 4],
  ])('%d wedges, each leg %f degrees wide: %f degrees too much', (wedges, off, excess) => {
    const { missing, flatness } = workOutLieFlat(ofAngle(wedges, 360 / wedges + 2 * off));
    expect(inDegrees(missing)).toBeCloseTo(-excess, 9);
    expect(flatness.shape).toBe('ruffle');
  });

  // Common practice: 24 blades of 18 degrees make 432 and ruffle; without four of them, 20 make 360. A ruler of 9 degrees takes
  // 40 wedges, and of 40 cut with one of 10 degrees 4 are left over (a guild's workshop).
  it.each([
    [24, 18, 20],
    [40, 10, 36],
    [40, 9, 40],
    [36, 9, 40],
    // Nine of these are a quarter of the circle (CIR14).
    [36, 10, 36],
    [9, 40, 9],
  ])('%d wedges of %d degrees: %d close the circle', (wedges, angle, fit) => {
    const input = ofAngle(wedges, angle);
    expect(wedgesThatFit(wedges, workOutLieFlat(input).missing)).toBe(fit);
    const note = answerOf(lieFlat, input).notes.find(({ says }) => says.includes('come nearest to 360°'));
    expect(note?.values['change']).toEqual(
      fit === wedges ? undefined : expect.objectContaining({ rounded: Math.abs(fit - wedges) }),
    );
    expect(note?.values['sum']).toEqual(
      fit === wedges ? undefined : expect.objectContaining({ kind: 'degrees', exact: wedges * angle }),
    );
  });

  // Derived: a border 1 in too long on 60 in, taken up in even waves of 20 in, waves 0.82 in to either side of the middle.
  it('many waves around a ring are as high as those of a straight border', () => {
    const waves = 600;
    const reach = (waves * 20) / 2 / Math.PI;
    expect(waveHeight(reach, (2 * Math.PI) / 60, waves) / 2).toBeCloseTo(0.82, 2);
  });

  // Derived: the wedge of sixteen as it should be cut, and one whose long side is 1/16 in too short over 22 1/2 in.
  it('a measured wedge has the angle of its sides', () => {
    const cut = (long: number): LieFlatInput => ({
      ...plain,
      cutWedge: { known: 'sides', long: inches(long), short: inches(2), height: inches(22.5) },
    });
    const { wedgeAngle } = workOutLieFlat(cut(11));
    expect(Math.tan(wedgeAngle / 2)).toBeCloseTo(0.2, 12);
    expect(workOutLieFlat(cut(10.9375)).wedgeAngle).toBeLessThan(wedgeAngle);
  });
});

describe('the verdict', () => {
  it('says that a right ring lies flat', () => {
    expect(verdictOf(plain)).toEqual({ kind: 'words', text: 'yes' });
  });

  it.each([
    [seams(1 / 4, 9 / 32), 'almost: it cups, but quilting takes that up'],
    [seams(1 / 4, 3 / 8), 'no: it cups. Correct it before the last seams'],
    [seams(9 / 32, 1 / 4), 'almost: it ruffles, but quilting takes that up'],
    [seams(3 / 8, 1 / 4), 'no: it ruffles. Correct it before the last seams'],
  ])('of seams %o is "%s"', (sewn, text) => {
    expect(verdictOf({ ...plain, ...sewn })).toEqual({ kind: 'words', text });
  });

  it('follows the test of the half where there is one, not the seams', () => {
    const input: LieFlatInput = {
      ...plain,
      ...seams(1 / 4, 3 / 8),
      halfRing: { found: 'gap', off: inches(0) },
    };
    expect(verdictOf(input)).toEqual({ kind: 'words', text: 'yes' });
  });

  it('changes just at the largest error that it allows', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 60 }),
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        (wedges, fullness) => {
          const input: LieFlatInput = { ...plain, wedges, fullness };
          const { limits } = workOutLieFlat(input);
          const at = (taper: number) => {
            const seamOuter = lengthFromUnits(input.seamInner + taper);
            return workOutLieFlat({ ...input, seamOuter }).flatness;
          };
          fc.pre(limits.taper > 3);
          const within = at(Math.floor(limits.taper) - 1);
          expect(within).toMatchObject({ shape: 'cup', isTakenUp: true });
          if (within.shape === 'cup') expect(within.middle).toBeLessThanOrEqual(limits.rise);
          expect(at(Math.ceil(limits.taper) + 1)).toMatchObject({ shape: 'cup', isTakenUp: false });
        },
      ),
    );
  });
});

describe('a ring that ruffles', () => {
  it('is within what quilting takes up just as its waves are within the height that it takes up', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.5, noNaN: true }), (off) => {
        const { details, figures } = answerOf(lieFlat, ofAngle(8, 45 + off));
        const { flatness, limits } = details;
        if (flatness.shape !== 'ruffle') throw new Error('It does not ruffle');
        expect(flatness.waves[0]!.height <= limits.wave + 1e-6).toBe(flatness.isTakenUp);
        expect(flatness.extraEdge).toBeCloseTo((inches(29) * 8 * off * Math.PI) / 180, 4);
        expect(figures.at(-1)).toMatchObject({ quantity: { exact: limits.wave, rounding: 'down' } });
      }),
    );
  });
});

describe('the test of a half ring', () => {
  // Derived: a gap at a distance R is R · sin(D ÷ 2), D being missing from the ring.
  it('measures half of what is missing', () => {
    const { legEnd } = workOutLieFlat(plain);
    const off = lengthFromUnits(Math.round(legEnd * Math.sin(inRadians(0.5))));
    const { missing } = workOutLieFlat({ ...plain, halfRing: { found: 'gap', off } });
    expect(inDegrees(missing)).toBeCloseTo(1, 4);
    const over = workOutLieFlat({ ...plain, halfRing: { found: 'overlap', off } });
    expect(over.missing).toBeCloseTo(-missing, 12);
  });

  it('of an odd number tests the smaller half at its own angle', () => {
    const { details, notes } = answerOf(lieFlat, { ...plain, wedges: 9 });
    expect(details.halfWedges).toBe(4);
    const note = notes.find(({ values }) => 'angle' in values);
    expect(note?.values['angle']).toMatchObject({ kind: 'degrees', exact: 160 });
  });

  const half = (found: 'gap' | 'overlap', off: number, more: Partial<LieFlatInput> = {}) => {
    const input: LieFlatInput = { ...plain, ...more, halfRing: { found, off: inches(off) } };
    const table = answerOf(lieFlat, input).tables.find(({ title }) => title.startsWith('What to correct'));
    return (table?.rows ?? []).map((row) => row.map((cell) => (cell.kind === 'words' ? cell.text : cell)));
  };

  it('says at which end to take a wider or a narrower seam', () => {
    const gap = half('gap', 1 / 4);
    expect(gap[0]![0]).toMatch(/narrower$/);
    expect(gap[0]![1]).toMatch(/^at the outer end/);
    expect(gap[1]![0]).toMatch(/wider$/);
    expect(gap[1]![1]).toMatch(/^at the inner end/);
    const over = half('overlap', 1 / 4);
    expect(over[0]![1]).toMatch(/^at the inner end/);
    expect(over[1]![1]).toMatch(/^at the outer end/);
  });

  it('never asks for a seam narrower than half of its allowance', () => {
    expect(half('gap', 1.5).map(([way]) => way)).not.toContainEqual(expect.stringMatching(/narrower$/));
    expect(half('gap', 1.5)[0]![0]).toMatch(/wider$/);
  });

  it('trims the leg that reaches over the line, and never one at a gap', () => {
    const trimmed = (rows: ReturnType<typeof half>) =>
      rows.filter(([way]) => way === 'Trim one open leg along the line');
    expect(trimmed(half('gap', 1 / 4))).toEqual([]);
    const [outer, inner] = trimmed(half('overlap', 1 / 4));
    expect(outer![2]).toMatchObject({ exact: expect.closeTo(inches(1 / 4), 6) as number });
    // By similar triangles, from the middle of the ring to the cut corners 2 3/4 and 29 1/4 in up the wedge.
    const far = (up: number) => up / Math.cos(Math.PI / 8) + Math.tan(Math.PI / 8) / 4;
    expect(inner![2]).toMatchObject({
      exact: expect.closeTo((inches(1 / 4) * far(2.75)) / far(29.25), 4) as number,
    });
  });

  it('has nothing to correct if both legs lie on the line', () => {
    expect(half('gap', 0)).toEqual([]);
  });
});

describe('any ring', () => {
  const anyTaper = fc.integer({ min: 1, max: 1_000 });

  it('with seams off evenly lies flat', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 120 }), fc.integer({ min: -500, max: 500 }), (wedges, off) => {
        const seam = lengthFromUnits(plain.seamAllowance + off);
        const work = workOutLieFlat({ ...plain, wedges, seamInner: seam, seamOuter: seam });
        expect(work.flatness.shape).toBe('flat');
        expect(work.movedIn).toBeCloseTo(off / Math.sin(Math.PI / wedges), 6);
      }),
    );
  });

  it('rises more the more its seams widen outward, and as much is too much when they widen inward', () => {
    fc.assert(
      fc.property(anyTaper, (taper) => {
        const wide = (by: number) => lengthFromUnits(plain.seamAllowance + by);
        const outward = workOutLieFlat({ ...plain, seamOuter: wide(taper) });
        const more = workOutLieFlat({ ...plain, seamOuter: wide(taper + 1) });
        const inward = workOutLieFlat({ ...plain, seamInner: wide(taper) });
        expect(more.missing).toBeGreaterThan(outward.missing);
        expect(inward.missing).toBeCloseTo(-outward.missing, 12);
      }),
    );
  });
});

describe('a ring that has no answer', () => {
  it('has its inner edge outside its outer edge', () => {
    expect(refusalOf(lieFlat, { ...plain, innerRadius: inches(30) }).code).toBe('no-width');
  });

  it('has a wedge whose short side is the longer one', () => {
    const cutWedge = { known: 'sides', long: inches(2), short: inches(3), height: inches(9) } as const;
    expect(refusalOf(lieFlat, { ...plain, cutWedge })).toMatchObject({
      code: 'no-wedge',
      field: ['cutWedge', 'short'],
    });
  });

  it('has nothing left of its wedges inside the seams', () => {
    expect(refusalOf(lieFlat, { ...plain, ...seams(2, 2) }).code).toBe('nothing-left');
  });

  it('is half a circle away from a full one', () => {
    expect(refusalOf(lieFlat, ofAngle(8, 90)).code).toBe('far-from-a-circle');
    expect(refusalOf(lieFlat, ofAngle(8, 10)).code).toBe('far-from-a-circle');
  });

  it('names fields that the input has', () => {
    expect(lieFlatInput.safeParse(plain).success).toBe(true);
  });
});
