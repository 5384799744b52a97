import { describe, expect, it } from 'vitest';
import type { Calculation } from '#core/calculators/calculator';
import { curveStrain } from '#core/calculators/curves/curve-strain/curve-strain';
import type { CurveStrainInput } from '#core/calculators/curves/curve-strain/input';
import { innerBinding } from '#core/calculators/curves/inner-binding/inner-binding';
import type { InnerBindingInput } from '#core/calculators/curves/inner-binding/input';
import type { Quantity } from '#core/calculators/explanation';
import type { Measurements } from '#core/domain/measurements';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';

const skirt: Measurements = {
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6.5) },
  hasSlit: false,
  settings: STARTING_SETTINGS,
};
/** Stitching 3 1/2 in from the center, the fold 5/8 in from it, cover 1/8 in: 17.857%, 7.143% and 3.571% (derived). */
const plain = {
  stripWidth: inches(1.75),
  seamAllowance: inches(1 / 4),
  backCover: inches(1 / 8),
  quiltThickness: inches(1 / 8),
  cutStep: inches(1 / 8),
};

const ofCurve = (change: Partial<CurveStrainInput> = {}): Calculation => {
  const answer = curveStrain.calculate({ ...curveStrain.fromProject(skirt), ...plain, ...change });
  if (!answer.ok) throw new Error(answer.error.code);
  return answer.value;
};
const ofRing = (change: Partial<InnerBindingInput> = {}): Calculation => {
  const answer = innerBinding.calculate({ ...innerBinding.fromProject(skirt), ...plain, ...change });
  if (!answer.ok) throw new Error(answer.error.code);
  return answer.value;
};

/** A cell as a number with three decimals, in inches or percent, or as words. */
const cell = (quantity: Quantity): string | number => {
  if (quantity.kind === 'words') return quantity.text;
  if (quantity.kind === 'length') return Number((quantity.exact / UNITS_PER_INCH).toFixed(3));
  return quantity.kind === 'percent' ? Number(quantity.exact.toFixed(3)) : quantity.kind;
};
const rowsOf = (calculation: Calculation, title: string) =>
  calculation.tables.find((table) => table.title === title)!.rows.map((row) => row.map(cell));
const figure = (calculation: Calculation, label: string) =>
  cell(calculation.figures.find((one) => one.label === label)!.quantity);

describe('how far the strip has to stretch or ease', () => {
  const inside = [
    ['the fold, while you sew', 'stretched', 17.857, 'hard'],
    ['the edge, once folded over', 'eased', 7.143, 'comfortable'],
    ['the fold on the back', 'stretched', 3.571, 'comfortable'],
  ];

  it('is the same for a hole and for a curve of its radius', () => {
    expect(rowsOf(ofCurve(), 'How far the strip has to stretch or ease')).toEqual(inside);
    expect(rowsOf(ofRing(), 'How far the strip has to stretch or ease')).toEqual(inside);
    expect(figure(ofCurve(), 'It has to stretch or ease by')).toBe(17.857);
    expect(figure(ofRing(), 'It has to stretch or ease by')).toBe(17.857);
  });

  it('is twice as far in a single fold of this strip (derived)', () => {
    expect(rowsOf(ofCurve({ fold: 'single' }), 'Double and single fold')).toEqual([
      ['double', 0.625, 17.857, 'hard'],
      ['single', 1.25, 35.714, 'impossible'],
    ]);
  });

  it('uses the letter r for the inside and R for the outside', () => {
    const symbols = (side: CurveStrainInput['side']) =>
      ofCurve({ side, radius: inches(6) }).explanation.flatMap(({ terms }) =>
        terms.map(({ symbol }) => symbol),
      );
    expect(symbols('inside')).toContain('r');
    expect(symbols('inside')).not.toContain('R');
    expect(symbols('outside')).toContain('R');
    expect(symbols('outside')).not.toContain('r');
  });
});

describe('what goes around', () => {
  // Widest strip 2(s + m·q); smallest radius 5/8 ÷ m - s; front (m·r - t - c)/(2 - m), its strips 6s + 2t + 2c and 4s + t + c.
  const fits = [
    ['easily, up to 8%', 1.06, 7.563, 0.005, 0.531, 0.271],
    ['with care, up to 16%', 1.62, 3.656, 0.147, 1.38, 0.837],
    ['hard, up to 22%', 2.04, 2.591, 0.261, 2.067, 1.295],
  ];

  it('is listed for each limit (derived)', () => {
    expect(rowsOf(ofCurve(), 'What goes around')).toEqual(fits);
    expect(rowsOf(ofRing(), 'What goes around')).toEqual(fits);
  });

  it('has no front if thickness and cover alone use up the limit', () => {
    // 25% of a 1 in radius is exactly the 1/4 in of thickness and cover, so nothing is left.
    const limits = { comfortableLimit: 25, hardLimit: 26, impossibleLimit: 30 };
    const rows = rowsOf(ofCurve({ ...limits, radius: inches(1) }), 'What goes around');
    expect(rows[0]?.slice(3)).toEqual(['none', 'none', 'none']);
    expect(rows[1]?.slice(3)).not.toContain('none');
  });

  it('has one row for straight grain, with its own limit', () => {
    const straight = ofRing({ grain: 'straight', straightLimit: 2 });
    expect(rowsOf(straight, 'What goes around')).toEqual([
      ['straight grain, up to 2%', 0.64, 31, 'none', 'none', 'none'],
    ]);
    expect(figure(straight, 'Widest strip for this hole')).toBe(0.64);
  });
});

describe('a curve that cannot be bound with this strip', () => {
  const firstNote = (change: Partial<CurveStrainInput>) => ofCurve(change).notes[0]!;

  it('has a warning with the widest strip, or with the limit of straight grain', () => {
    expect(firstNote({ stripWidth: inches(2.5) })).toMatchObject({ kind: 'warning' });
    expect(cell(firstNote({ stripWidth: inches(2.5) }).values['widest']!)).toBe(1.62);
    expect(firstNote({ grain: 'straight' }).says).toContain('Cut the strip on the bias');
    expect(cell(firstNote({ grain: 'straight' }).values['limit']!)).toBe(2);
  });

  it('has no warning if the strip goes with care, or straight grain goes around a wide curve', () => {
    expect(firstNote({ stripWidth: inches(1.5) }).kind).toBe('tip');
    expect(firstNote({ grain: 'straight', side: 'outside', radius: inches(60) }).kind).toBe('tip');
  });

  it('is refused on an outside curve with a radius of the seam allowance, but not on a slightly wider one', () => {
    const bend = (radius: number) =>
      curveStrain.calculate({
        ...curveStrain.fromProject(skirt),
        ...plain,
        side: 'outside',
        radius: inches(radius),
      });
    const refused = bend(1 / 4);
    expect(refused.ok).toBe(false);
    expect(!refused.ok && Object.values(refused.error.values).map(cell)).toEqual([0.25, 0.25]);
    expect(bend(5 / 16).ok).toBe(true);
  });

  it('is refused with both sizes if the seam leaves nothing of the strip', () => {
    const used = { ...plain, stripWidth: inches(1 / 2) };
    const answers = [
      curveStrain.calculate({ ...curveStrain.fromProject(skirt), ...used }),
      innerBinding.calculate({ ...innerBinding.fromProject(skirt), ...used }),
    ];
    for (const answer of answers) {
      expect(answer).toMatchObject({ ok: false, error: { code: 'strip-too-narrow' } });
      expect(!answer.ok && Object.values(answer.error.values).map(cell)).toEqual([0.5, 0.25]);
    }
  });
});

describe('starting from a project', () => {
  const ofProject = (change: Partial<Measurements>) => curveStrain.fromProject({ ...skirt, ...change });

  it('takes the hole and the inner strip, or the edge and the outer strip if there is no hole', () => {
    expect(ofProject({})).toMatchObject({
      side: 'inside',
      arc: 360,
      stripWidth: STARTING_SETTINGS.innerStripWidth,
    });
    const outside = { side: 'outside', stripWidth: STARTING_SETTINGS.bindingStripWidth };
    expect(ofProject({ hole: null })).toMatchObject({ ...outside, arc: 360, radius: inches(25) });
    const square = { outline: { shape: 'square', side: inches(40) }, hole: null } as const;
    expect(ofProject(square)).toMatchObject({ ...outside, arc: 90, radius: inches(3) });
    expect(ofProject({ ...square, hole: { diameter: inches(6) } })).toMatchObject({
      side: 'inside',
      arc: 360,
    });
  });

  it('binds the sides of a slit from the edge to the hole, and has no slit without a hole', () => {
    const ring = (change: Partial<Measurements>) => innerBinding.fromProject({ ...skirt, ...change });
    expect(ring({})).toMatchObject({ slitLength: 0, bindLegs: false, holeDiameter: inches(6.5) });
    expect(ring({ hasSlit: true, hole: { diameter: inches(6) } })).toMatchObject({
      slitLength: inches(22),
      bindLegs: true,
      holeDiameter: inches(6),
    });
    expect(ring({ hasSlit: true, hole: null })).toMatchObject({ slitLength: 0, holeDiameter: inches(6.5) });
  });
});

describe('the drawings', () => {
  const arcs = (calculation: Calculation) =>
    calculation.diagram!.parts.flatMap((part) =>
      part.part === 'arc' ? [[part.tone, part.radius / UNITS_PER_INCH]] : [],
    );

  it('of a curve show the fold outside the stitching of a hole, inside that of an edge, and no fold beyond the center', () => {
    expect(arcs(ofCurve())).toEqual([
      ['cut', 3.25],
      ['seam', 3.5],
      ['fold', 4.125],
    ]);
    expect(arcs(ofCurve({ side: 'outside', radius: inches(3.25) }))).toEqual([
      ['cut', 3.25],
      ['seam', 3],
      ['fold', 2.375],
    ]);
    const tight = ofCurve({ side: 'outside', radius: inches(7 / 8) });
    expect(arcs(tight)).toEqual([
      ['cut', 0.875],
      ['seam', 0.625],
    ]);
  });

  it('of a curve lie about the middle of the frame, with its radius from there to the cut edge', () => {
    const { diagram } = ofCurve();
    const half = 1.1 * 4.125 * UNITS_PER_INCH;
    expect(diagram!.width).toBeCloseTo(2 * half, 6);
    expect(diagram!.height).toBeCloseTo(2 * half, 6);
    for (const part of diagram!.parts)
      if (part.part === 'arc') expect(part.center).toEqual({ x: half, y: half });
    const dimension = diagram!.parts.find((part) => part.part === 'dimension')!;
    expect(dimension.from).toEqual({ x: half, y: half });
    expect(dimension.to.x - dimension.from.x).toBeCloseTo(inches(3.25), 6);
    expect(dimension.offset).toBeCloseTo(half / 10, 6);
  });

  it('of a ring have everything about one middle, a cross there, and the slit from the cut edge straight down', () => {
    const { diagram } = ofRing({ hasSlit: true });
    const half = inches(4.125) * 1.25;
    expect([diagram!.width, diagram!.height]).toEqual([2 * half, 2 * half]);
    for (const part of diagram!.parts)
      if (part.part === 'circle') expect(part.center).toEqual({ x: half, y: half });
    const fabric = diagram!.parts.find((part) => part.part === 'polygon')!;
    expect(fabric.points.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [2 * half, 0],
      [2 * half, 2 * half],
      [0, 2 * half],
    ]);
    const lines = diagram!.parts.flatMap((part) =>
      part.part === 'line' ? [[part.tone, part.from.x, part.from.y, part.to.x, part.to.y]] : [],
    );
    const [cut, arm] = [inches(3.25), inches(3.25) / 8];
    expect(lines).toEqual([
      ['cut', half, half + cut, half, 2 * half],
      ['mark', half - arm, half, half + arm, half],
      ['mark', half, half - arm, half, half + arm],
    ]);
    const dimension = diagram!.parts.find((part) => part.part === 'dimension')!;
    expect(dimension.from).toEqual({ x: half - cut, y: half });
    expect(dimension.offset).toBeCloseTo(cut / 3, 6);
    expect(ofRing().diagram!.parts.filter((part) => part.part === 'line')).toHaveLength(2);
  });
});
