import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quantity, Table } from '#core/calculators/explanation';
import { needsOfSavedAnswer } from '#core/calculators/saved-answer';
import { arcWedge } from '#core/calculators/wedge-ring/arc-wedge';
import { setWays } from '#core/calculators/wedge-ring/bands';
import type { WedgeRingInput } from '#core/calculators/wedge-ring/input';
import { wedgeRing } from '#core/calculators/wedge-ring/wedge-ring';
import { workOutWedgeRing } from '#core/calculators/wedge-ring/work';
import { regularPolygonCorners, regularPolygonFromInradius } from '#core/geometry/regular-polygon';
import { type Polygon, polygonArea } from '#core/geometry/polygon';
import { lengthFromInches as inches, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { evaluateFormula } from '#test/helpers/evaluate-formula';
import { offsetByClipper } from '../patches/clipper-reference';

const plain: WedgeRingInput = {
  ...wedgeRing.fromProject(SAMPLE_MEASUREMENTS),
  wedges: 16,
  innerRadius: inches(3),
  outerRadius: inches(25),
  seamAllowance: inches(1 / 4),
  fabricWidth: inches(42),
  cutStep: inches(1 / 8),
  safetyExtraPercent: 10,
  hole: null,
};
const inInches = (exact: number) => exact / UNITS_PER_INCH;
const ofBands = (...bands: readonly (readonly [string, number])[]): WedgeRingInput => ({
  ...plain,
  bands: bands.map(([fabric, width]) => ({ fabric, width: inches(width) })),
});
const blueAndRed = ofBands(['Blue', 6], ['Red', 4], ['Blue', 12]);

function cells(tables: readonly Table[], title: string): readonly (readonly (string | number)[])[] {
  const table = tables.find((one) => one.title.startsWith(title));
  return (table?.rows ?? []).map((row) =>
    row.map((cell) => {
      if (cell.kind === 'words') return cell.text;
      if (cell.kind === 'length') return inInches(cell.exact);
      return cell.kind === 'count' ? cell.rounded : Number.NaN;
    }),
  );
}

describe('wedges of bands', () => {
  it('come from sets of strips with a seam at both edges of each (derived)', () => {
    const { tables, details, figures } = answerOf(wedgeRing, blueAndRed);
    expect(cells(tables, 'Bands from')).toEqual([
      [1, 'Blue', 6, 6.5, 'Blue'],
      [2, 'Red', 4, 4.5, 'Red'],
      [3, 'Blue', 12, 12.5, 'Blue'],
    ]);
    // By hand: 6 1/2 + 4 1/2 + 12 1/2 less two seams of 1/2 is 22 1/2, the height of the plain wedge; 6 from a set, 3 sets.
    expect(inInches(details.strip)).toBe(22.5);
    expect([details.perStrip, details.strips]).toEqual([6, 3]);
    expect(details.fabrics.map(({ name, length }) => [name, inInches(length)])).toEqual([
      ['Blue', 3 * 19],
      ['Red', 3 * 4.5],
    ]);
    expect(figures.map(({ label }) => label)).toEqual(
      expect.arrayContaining(['Fabric, Blue', 'Fabric, Red']),
    );
  });

  it('that are turned around have the outermost band inside', () => {
    const { tables } = answerOf(wedgeRing, ofBands(['Green', 6], ['Red', 4], ['Blue', 12]));
    expect(cells(tables, 'Bands from').map((row) => row[4])).toEqual(['Blue', 'Red', 'Green']);
  });

  // Published: NWQ13, ten sets with four wedges up and four down make forty in each order: two skirts.
  it('forty wedges, eight from a set: ten sets make a ring and a second one in reversed order', () => {
    const ways = setWays(40, { oneWay: 5, headToTail: 8 });
    expect(ways).toContainEqual({ way: 'second-ring', perSet: 8, sets: 10, inOrder: 40, reversed: 40 });
    expect(ways).toContainEqual({ way: 'both-orders', perSet: 8, sets: 5, inOrder: 20, reversed: 20 });
    expect(ways).toContainEqual({ way: 'same-way-up', perSet: 5, sets: 8, inOrder: 40, reversed: 0 });
    const input = { ...plain, wedges: 40, fabricWidth: inches(23), bands: [] };
    const { perStripHeadToTail } = workOutWedgeRing({
      ...input,
      innerRadius: inches(2),
      outerRadius: inches(24),
    });
    expect(perStripHeadToTail).toBe(8);
  });

  it('come in as few sets as each way allows, and no fewer', () => {
    const anySet = fc
      .record({ oneWay: fc.integer({ min: 1, max: 20 }), more: fc.integer({ min: 0, max: 20 }) })
      .map(({ oneWay, more }) => ({ oneWay, headToTail: oneWay + more }));
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 120 }), anySet, (wedges, set) => {
        for (const { way, perSet, sets, inOrder, reversed } of setWays(wedges, set)) {
          const counted = way === 'both-orders' ? inOrder + reversed : inOrder;
          expect(counted).toBeGreaterThanOrEqual(wedges);
          expect((counted / sets) * (sets - 1)).toBeLessThan(wedges);
          expect(inOrder + reversed).toBe(sets * perSet);
          // Head to tail, the first and every second one after it stand upright: counted along the set.
          const upright = Array.from({ length: perSet }, (_, at) => at).filter((at) => at % 2 === 0).length;
          expect(inOrder).toBe(sets * (way === 'same-way-up' ? perSet : upright));
        }
      }),
    );
  });

  it('ask for the same fabric in figures, need and cuts', () => {
    const input = blueAndRed;
    const { details, figures } = answerOf(wedgeRing, input);
    const cuts = wedgeRing.cuts!(input, details);
    const needs = needsOfSavedAnswer({ calculator: 'wedge-ring', input }, inches(42));
    expect(needs.map(({ name }) => name)).toEqual(['Blue', 'Red']);
    for (const name of ['Blue', 'Red']) {
      const strips = cuts.filter(({ fabric }) => fabric === name);
      const length = strips.reduce((sum, one) => sum + one.length * one.count, 0);
      const bought = figures.find(({ label }) => label === `Fabric, ${name}`)!.quantity;
      expect(bought).toMatchObject({ exact: expect.closeTo(length * 1.1, 3) as number });
    }
  });

  it('may miss the height by less than a step, which the outermost one makes up', () => {
    const close = ofBands(['Blue', 6], ['Red', 4], ['Blue', 11.95]);
    const { details } = answerOf(wedgeRing, close);
    expect(details.set!.bands.map(({ cut }) => inInches(cut))).toEqual([6.5, 4.5, 12.5]);
    expect(details.strip).toBeGreaterThanOrEqual(details.cut.height);
  });

  it.each([
    [11, 1, 'narrower'],
    [13.5, 1.5, 'wider'],
  ])('with an outer band of %f in do not fit', (outer, off, word) => {
    const refusal = refusalOf(wedgeRing, ofBands(['Blue', 6], ['Red', 4], ['Blue', outer]));
    expect(refusal).toMatchObject({
      code: 'bands-do-not-fit',
      field: ['bands'],
      values: { off: { exact: inches(off) } },
    });
    expect(refusal.says).toContain(word);
  });
});

/** Both arcs of a finished wedge in fine steps, the outer one on top, around (0, 0). */
function finishedArcs({ innerRadius, outerRadius, wedges }: WedgeRingInput): Polygon {
  const steps = 400;
  const half = Math.PI / wedges;
  const arc = (radius: number) =>
    Array.from({ length: steps + 1 }, (_, index) => {
      const angle = half * ((2 * index) / steps - 1);
      return { x: radius * Math.sin(angle), y: -radius * Math.cos(angle) };
    });
  return [...arc(outerRadius), ...arc(innerRadius).toReversed()];
}

describe('wedges with arcs', () => {
  const curved: WedgeRingInput = { ...plain, edge: 'arcs' };

  // Derived by trigonometry outside the program: eight wedges, 29 in to the outer edge.
  it('eight of 29 in: 22.1956 in from corner to corner, 2.2075 in high', () => {
    const { finished } = arcWedge({ ...curved, outerRadius: inches(29) }, Math.PI / 8);
    expect(inInches(finished.outer.chord)).toBeCloseTo(22.1956, 3);
    expect(inInches(finished.outer.sagitta)).toBeCloseTo(2.2075, 3);
  });

  it('have cut corners a seam beside the legs and a seam beyond the arcs, and lie in a frame that just holds them', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 40 }),
        fc.integer({ min: 12_000, max: 60_000 }),
        fc.integer({ min: 20_000, max: 150_000 }),
        fc.integer({ min: 600, max: 5_000 }),
        (wedges, inner, width, seam) => {
          const input: WedgeRingInput = {
            ...curved,
            wedges,
            innerRadius: lengthFromUnits(inner),
            outerRadius: lengthFromUnits(inner + width),
            seamAllowance: lengthFromUnits(seam),
          };
          const { arcs, frame } = workOutWedgeRing(input);
          const half = Math.PI / wedges;
          const corners = [arcs!.cut.outer, arcs!.cut.inner].map(({ radius, chord, sagitta }) => ({
            x: chord / 2,
            y: radius - sagitta,
          }));
          for (const { x, y } of corners)
            expect(x * Math.cos(half) - y * Math.sin(half)).toBeCloseTo(seam, 5);
          expect(Math.hypot(corners[0]!.x, corners[0]!.y)).toBeCloseTo(inner + width + seam, 5);
          expect(Math.hypot(corners[1]!.x, corners[1]!.y)).toBeCloseTo(inner - seam, 5);
          expect(frame.height).toBeCloseTo(inner + width + seam - corners[1]!.y, 5);
          expect(frame.short).toBeCloseTo(2 * corners[1]!.x, 5);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('cover as much as the finished ring between its circles', () => {
    const { finished } = arcWedge(curved, Math.PI / 16);
    const sector = ({ radius, chord }: typeof finished.outer) => radius ** 2 * Math.asin(chord / 2 / radius);
    const drawn = polygonArea(finishedArcs(curved));
    expect((sector(finished.outer) - sector(finished.inner)) / drawn).toBeCloseTo(1, 4);
  });

  // Derived: the radius of an arc from its chord A and its height B is (4B² + A²) ÷ 8B.
  it('have arcs whose radius follows from chord and height', () => {
    const { finished, cut } = arcWedge(curved, Math.PI / 16);
    for (const { radius, chord, sagitta } of [finished.outer, finished.inner, cut.outer, cut.inner])
      expect((4 * sagitta ** 2 + chord ** 2) / (8 * sagitta)).toBeCloseTo(radius, 5);
  });

  it('lie within their strip, which is never lower than with straight edges', () => {
    const [straight, arcs] = [workOutWedgeRing(plain), workOutWedgeRing(curved)];
    expect(arcs.frame.height).toBeGreaterThan(straight.frame.height);
    expect(arcs.strip).toBeGreaterThanOrEqual(arcs.frame.height);
    expect(arcs.frame.long).toBeCloseTo(straight.frame.long, 6);
    const banded = workOutWedgeRing({ ...blueAndRed, edge: 'arcs' });
    expect(banded.strip).toBeGreaterThanOrEqual(banded.frame.height);
  });

  it('have a table for their template in place of the straight sides', () => {
    const { tables } = answerOf(wedgeRing, curved);
    expect(cells(tables, 'One wedge')).toEqual([]);
    expect(cells(tables, 'Template of a wedge')[0]).toEqual(['Outer arc, radius', 25, 25.25]);
    expect(cells(tables, 'Template of a wedge')[3]).toEqual(['Inner arc, radius', 3, 2.75]);
  });

  it('have no room where the seams would meet before the inner edge', () => {
    const tight = { ...curved, innerRadius: inches(1 / 2) };
    expect(refusalOf(wedgeRing, tight)).toMatchObject({ code: 'no-room-for-arcs', field: ['innerRadius'] });
    expect(answerOf(wedgeRing, { ...tight, edge: 'straight' }).details.arcs).toBeNull();
  });
});

describe('the working of bands and arcs', () => {
  it.each([
    ['bands', blueAndRed],
    ['arcs', { ...plain, edge: 'arcs' } as const],
    ['bands with arcs', { ...blueAndRed, edge: 'arcs' } as const],
    ['bands that miss the height a little', ofBands(['Blue', 6], ['Red', 4], ['Blue', 11.95])],
  ])('comes out when it is worked out again: %s', (_name, input) => {
    const { explanation } = answerOf(wedgeRing, input);
    const worked = explanation.map(({ formula, terms }) =>
      evaluateFormula(formula, new Map(terms.map(({ symbol, quantity }) => [symbol, valueOf(quantity)]))),
    );
    explanation.forEach(({ result, label }, index) => {
      const exact = 'exact' in result ? result.exact : Number.NaN;
      expect(worked[index]! / exact, label).toBeCloseTo(1, 9);
    });
  });
});

function valueOf(quantity: Quantity): number {
  if (quantity.kind === 'degrees') return (quantity.exact * Math.PI) / 180;
  if (quantity.kind === 'percent') return quantity.exact / 100;
  if (quantity.kind === 'count') return quantity.rounded;
  return quantity.kind === 'length' ? quantity.exact : Number.NaN;
}

describe('edge and hole', () => {
  it('a round edge takes the corners off the cut ring, and nothing at the middle of a side', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 60 }), (wedges) => {
        const { tables } = answerOf(wedgeRing, { ...plain, wedges });
        const finished = regularPolygonCorners(regularPolygonFromInradius(wedges, plain.outerRadius));
        const grown = offsetByClipper(finished, plain.seamAllowance);
        const corner = Math.max(...grown.map(({ x, y }) => Math.hypot(x, y)));
        const [circle, atCorner, between, middle] = cells(tables, 'For a round edge').map(
          (row) => row[1] as number,
        );
        expect(circle).toBe(25.25);
        expect(atCorner).toBeCloseTo(inInches(corner) - 25.25, 3);
        expect(between).toBeLessThan(atCorner! / 3);
        expect(middle).toBe(0);
      }),
    );
  });

  it('the hole is compared with the opening that the cut wedges leave', () => {
    const input: WedgeRingInput = { ...plain, hole: { diameter: inches(6.5) } };
    const { tables, notes } = answerOf(wedgeRing, input);
    const inner = offsetByClipper(
      regularPolygonCorners(regularPolygonFromInradius(16, plain.innerRadius)),
      -1 * plain.seamAllowance,
    );
    const corner = inInches(Math.max(...inner.map(({ x, y }) => Math.hypot(x, y))));
    const [opening, hole, side, point] = cells(tables, 'The hole').map((row) => row[1] as number);
    expect(opening).toBeCloseTo(2 * corner, 3);
    expect(hole).toBe(6.5);
    expect(side).toBeCloseTo(3.25 - 2.75, 9);
    expect(point).toBeCloseTo(3.25 - corner, 3);
    expect(notes.some(({ says }) => says.includes('larger than the hole'))).toBe(false);
  });

  it('a hole smaller than the opening is a warning', () => {
    const { notes, tables } = answerOf(wedgeRing, { ...plain, hole: { diameter: inches(5) } });
    expect(notes.some(({ says }) => says.includes('larger than the hole'))).toBe(true);
    expect(cells(tables, 'The hole')).toHaveLength(2);
  });

  // Common practice: an octagon 10 in across has sides of 4.142; eight pieces 4 1/2 in from point to point are 1.7221 in long.
  it.each([
    [5, 4.1421],
    [2.25 * Math.cos(Math.PI / 8), 1.7221],
  ])('eight wedges %f in from the middle have sides of %f in', (outer, side) => {
    const input = { ...plain, wedges: 8, innerRadius: inches(1), outerRadius: inches(outer) };
    expect(inInches(workOutWedgeRing(input).finished.long)).toBeCloseTo(side, 3);
  });
});

describe('answers saved before bands, arcs and the hole', () => {
  it('read as plain wedges with straight edges', () => {
    const { edge, bands, hole, ...older } = plain;
    expect([edge, bands, hole]).toEqual(['straight', [], null]);
    expect(wedgeRing.input.parse(older)).toEqual(plain);
    const [now, before] = [plain, older].map((input) =>
      needsOfSavedAnswer({ calculator: 'wedge-ring', input }, inches(42)),
    );
    expect(before).toEqual(now);
    expect(before).toHaveLength(1);
  });
});
