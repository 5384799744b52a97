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
/** Stitching 3 1/2 in from the center, the fold 3/4 in from it, cover 1/8 in: 21.429%, 7.143% and 3.571% (derived). */
const plain = {
  stripWidth: inches(2),
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
    ['while you sew: the fold', 'stands up', 21.429, 'held by hand'],
    ['turned: the edge', 'eased', 7.143, 'comfortable'],
    ['turned: the fold on the back', 'stretched', 3.571, 'comfortable'],
  ];

  it('is the same for a hole and for a curve of its radius', () => {
    for (const one of [ofCurve(), ofRing()]) {
      expect(rowsOf(one, 'How far the strip has to stretch or ease')).toEqual(inside);
      expect(figure(one, 'Once turned it has to give')).toBe(7.143);
      expect(figure(one, 'The fold stands up while you sew by')).toBe(21.429);
      expect(figure(one, 'Verdict')).toBe('comfortable');
    }
  });

  it('leaves more past the stitching in a single fold of this strip (derived)', () => {
    // 2 in less four seams and the thickness leaves 7/8 in, a quarter of 3 1/2 in; it stands up by 1 1/2 in of 3 1/2.
    expect(rowsOf(ofCurve({ fold: 'single' }), 'Double and single fold')).toEqual([
      ['double', 21.429, 7.143, 'comfortable'],
      ['single', 42.857, 25, 'too tight'],
    ]);
  });

  it('and with a front turned wider, the edge gives more and the fold on the back less (derived)', () => {
    expect(rowsOf(ofRing(), 'The front turned narrow or wide')).toEqual([
      [0.25, 7.143, 0.125, 3.571, 'comfortable'],
      [0.281, 8.036, 0.063, 1.786, 'with care'],
      [0.313, 8.929, 0, 0, 'with care'],
    ]);
    expect(ofRing({ stripWidth: inches(1.5) }).tables.map(({ title }) => title)).not.toContain(
      'The front turned narrow or wide',
    );
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
  // Widest strip 6s + 2t + 2mq; seams (w/2 - t - mr)/(3 + m) to m·r/(1 - m) or (w/2 - t)/3; radius s/m - s; front m·r/(1 - m).
  const fits = [
    ['easily, up to 8%', 2.31, 0.1997, 0.2826, 2.875, 0.2826, 2.1957, 1.3804],
    ['with care, up to 16%', 2.87, 0.1123, 0.2917, 1.3125, 0.619, 4.2143, 2.7262],
    ['hard, up to 22%', 3.29, 0.0497, 0.2917, 0.8864, 0.9167, 6, 3.9167],
  ] as const;

  it('is listed for each limit (derived)', () => {
    for (const one of [ofCurve(), ofRing()]) {
      const rows = rowsOf(one, 'What goes around');
      expect(rows.map(([words]) => words)).toEqual(fits.map(([words]) => words));
      rows.forEach((row, at) =>
        row.slice(1).forEach((found, column) => expect(found).toBeCloseTo(Number(fits[at]![column + 1]), 3)),
      );
    }
  });

  it('has no strip and no front if the limit is less than the edge gives', () => {
    // A 1/4 in seam in a hole of 1/2 in radius: a third of the stitching, above every limit.
    const rows = rowsOf(ofCurve({ radius: inches(1 / 2) }), 'What goes around');
    expect(rows.map((row) => row[1])).toEqual(['none', 'none', 'none']);
    expect(rows[0]?.slice(5)).toEqual(['none', 'none', 'none']);
  });
});

describe('a curve that cannot be bound with this strip', () => {
  const firstNote = (change: Partial<CurveStrainInput>) => ofCurve(change).notes[0]!;

  it('has a warning with what the turned strip has to give, or with how far it falls short', () => {
    // Derived: (4/2 - 3/4 - 1/8) / 3.5 = 32.1%; and 3/4 + 1/8 - 1.5/2 = 1/8 in short.
    expect(firstNote({ stripWidth: inches(4) })).toMatchObject({ kind: 'warning' });
    expect(cell(firstNote({ stripWidth: inches(4) }).values['strain']!)).toBe(32.143);
    expect(cell(firstNote({ stripWidth: inches(1.5) }).values['short']!)).toBe(0.125);
  });

  it('has no warning if the strip goes with care', () => {
    expect(firstNote({ stripWidth: inches(2.5) }).kind).toBe('tip');
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
      ['fold', 4.25],
    ]);
    expect(arcs(ofCurve({ side: 'outside', radius: inches(3.25) }))).toEqual([
      ['cut', 3.25],
      ['seam', 3],
      ['fold', 2.25],
    ]);
    const tight = ofCurve({ side: 'outside', radius: inches(7 / 8) });
    expect(arcs(tight)).toEqual([
      ['cut', 0.875],
      ['seam', 0.625],
    ]);
  });

  it('of a curve lie about the middle of the frame, with its radius from there to the cut edge', () => {
    const { diagram } = ofCurve();
    const half = 1.1 * 4.25 * UNITS_PER_INCH;
    const near = (value: number) => expect.closeTo(value, 6) as number;
    expect(diagram!.width).toBeCloseTo(2 * half, 6);
    expect(diagram!.height).toBeCloseTo(2 * half, 6);
    for (const part of diagram!.parts)
      if (part.part === 'arc') expect([part.center.x, part.center.y]).toEqual([near(half), near(half)]);
    const dimension = diagram!.parts.find((part) => part.part === 'dimension')!;
    expect(dimension.from).toEqual({ x: near(half), y: near(half) });
    expect(dimension.to.x - dimension.from.x).toBeCloseTo(inches(3.25), 6);
    expect(dimension.offset).toBeCloseTo(half / 10, 6);
  });

  it('of a ring have everything about one middle, a cross there, and the slit from the cut edge straight down', () => {
    const { diagram } = ofRing({ hasSlit: true });
    const half = inches(4.25) * 1.25;
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
