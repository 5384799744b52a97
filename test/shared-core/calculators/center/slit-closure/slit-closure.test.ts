import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Closing, SlitClosureInput } from '#core/calculators/center/slit-closure/input';
import { slitClosure } from '#core/calculators/center/slit-closure/slit-closure';
import type { Quantity } from '#core/calculators/explanation';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { polygonSides } from '#core/geometry/polygon';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const start = slitClosure.fromProject({
  outline: { shape: 'circle', diameter: inches(46.5) },
  hole: { diameter: inches(6.5) },
  hasSlit: true,
  settings: STARTING_SETTINGS,
});
const input = (change: Partial<SlitClosureInput> = {}): SlitClosureInput => ({ ...start, ...change });
const answer = (change: Partial<SlitClosureInput> = {}) => answerOf(slitClosure, input(change));
const detailsOf = (change: Partial<SlitClosureInput> = {}) => answer(change).details;
const ties = (tieLength: number): Closing => ({
  with: 'ties',
  tieWidth: inches(1 / 2),
  tieLength: inches(tieLength),
  endFold: inches(1 / 2),
});
const BUTTON = { buttonAcross: inches(3 / 4), buttonThickness: inches(1 / 8) };
const loops = { with: 'buttons-and-loops', ...BUTTON, loopEase: inches(1 / 8) } as const;
const buttonholes = { with: 'buttons-and-buttonholes', ...BUTTON } as const;
const snaps = { with: 'snaps', snapAcross: inches(1 / 2) } as const;

/** In eighths of an inch, so that what fits exactly is among them. */
const eighths = (min: number, max: number) => fc.integer({ min, max }).map((count) => inches(count / 8));
const anyPlaces = fc
  .record({ slit: eighths(40, 480), first: eighths(0, 20), last: eighths(0, 20), apart: eighths(12, 120) })
  .filter(({ slit, first, last }) => slit === first + last || slit - first - last >= inches(1))
  .map((places) => ({ ...places, closing: snaps, overlap: inches(1) }));

describe('places along the slit', () => {
  it('of 20 in, 1 in from both ends and 6 in apart at most, are four, 6 in apart (derived)', () => {
    const { positions, places } = detailsOf({ slit: inches(20), first: inches(1), last: inches(1) });
    expect(places).toBe(4);
    expect(positions.map((at) => at / UNITS_PER_INCH)).toEqual([1, 7, 13, 19]);
  });

  it('start as the slit of the project', () => {
    expect(start).toMatchObject({ slit: inches(20), first: inches(1), last: inches(1), overlap: 0 });
  });

  it('are as few as the distance allows, even, and end where they should', () => {
    fc.assert(
      fc.property(anyPlaces, (change) => {
        const { positions, places, pitch } = detailsOf(change);
        const span = change.slit - change.first - change.last;
        // Counted up one by one instead of divided.
        let gaps = 0;
        while (gaps * change.apart < span) gaps += 1;
        expect(places).toBe(gaps + 1);
        expect(positions[0]).toBe(change.first);
        if (span > 0) expect(positions.at(-1)).toBeCloseTo(change.slit - change.last, 6);
        for (const [index, at] of positions.slice(1).entries())
          expect(at - positions[index]!).toBeCloseTo(pitch, 6);
        expect(pitch).toBeLessThanOrEqual(change.apart);
      }),
    );
  });

  it('are marked from one end, each within half a step of its place', () => {
    const rounded = (quantity: Quantity | undefined) =>
      quantity?.kind === 'length' ? quantity.rounded : NaN;
    fc.assert(
      fc.property(anyPlaces, (change) => {
        const { tables, details } = answer(change);
        expect(tables[0]!.rows).toHaveLength(details.places);
        for (const [index, [, at]] of tables[0]!.rows.entries())
          expect(Math.abs(rounded(at) - details.positions[index]!)).toBeLessThan(start.cutStep / 2 + 1e-6);
      }),
    );
  });

  it('are never fewer for a longer slit or a smaller distance', () => {
    fc.assert(
      fc.property(anyPlaces, (change) => {
        const { places } = detailsOf(change);
        expect(
          detailsOf({ ...change, slit: inches(change.slit / UNITS_PER_INCH + 3) }).places,
        ).toBeGreaterThanOrEqual(places);
        expect(
          detailsOf({ ...change, apart: inches(change.apart / UNITS_PER_INCH - 1 / 4) }).places,
        ).toBeGreaterThanOrEqual(places);
      }),
    );
  });

  it('are one where the first is the last', () => {
    const { details, figures } = answer({ slit: inches(4), first: inches(2), last: inches(2) });
    expect(details).toMatchObject({ places: 1, pitch: 0, positions: [inches(2)] });
    expect(figures.map(({ label }) => label)).not.toContain('From one to the next');
  });

  it.each([
    [{ slit: inches(2), first: inches(1), last: inches(1.5) }, 'no-room', ['first']],
    [{ slit: inches(200), apart: inches(1 / 2) }, 'too-many-places', ['apart']],
    [{ apart: inches(1 / 2), closing: { ...ties(10), tieWidth: inches(3) } }, 'too-close', ['apart']],
    [{ closing: ties(42) }, 'tie-too-long', ['closing', 'tieLength']],
    [{ closing: buttonholes, overlap: inches(1 / 2) }, 'overlap-too-narrow', ['overlap']],
    [{ closing: snaps }, 'overlap-too-narrow', ['overlap']],
    [
      { overlap: inches(1), seamAllowance: inches(2), fabricWidth: inches(4), closing: loops },
      'strips-too-short',
      ['fabricWidth'],
    ],
  ] as const)('%o are refused: %s', (change, code, field) => {
    expect(refusalOf(slitClosure, input(change))).toMatchObject({ code, field });
  });
});

describe('ties', () => {
  // Common practice: a strip four times as wide, edges to the middle, then in half. 10 + 1/2 + 1/4 in long.
  it('of 1/2 by 10 in are cut 2 by 10 3/4 in, two at each place', () => {
    expect(detailsOf().parts).toMatchObject({
      with: 'ties',
      cutWidth: inches(2),
      cutLength: inches(10.75),
      ties: 8,
      perStrip: 3,
      strips: 3,
      fabric: inches(6),
    });
  });

  it('lie side by side in as many strips as laying them one by one takes', () => {
    fc.assert(
      fc.property(eighths(8, 300), eighths(320, 480), (tieLength, fabricWidth) => {
        const { parts } = detailsOf({ closing: ties(tieLength / UNITS_PER_INCH), fabricWidth });
        if (parts.with !== 'ties') throw new Error('No ties');
        let [strips, left] = [0, 0];
        for (let tie = 0; tie < parts.ties; tie += 1) {
          if (left < parts.cutLength) [strips, left] = [strips + 1, fabricWidth];
          left -= parts.cutLength;
        }
        expect(parts.strips).toBe(strips);
      }),
    );
  });
});

describe('buttons', () => {
  it('of 3/4 by 1/8 in slip through a loop as long as the way around them on edge', () => {
    const [across, thick] = [BUTTON.buttonAcross, BUTTON.buttonThickness];
    const edge = [
      { x: 0, y: 0 },
      { x: across, y: 0 },
      { x: across, y: thick },
      { x: 0, y: thick },
    ];
    const around = polygonSides(edge).reduce(
      (sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y),
      0,
    );
    const { parts } = detailsOf({ closing: { ...loops, loopEase: inches(0) } });
    expect(parts).toMatchObject({
      loop: around,
      buttonIn: around / 2,
      cutLength: inches(2.25),
      cord: 4 * inches(2.25),
    });
    const { parts: eased } = detailsOf({ closing: loops });
    expect(eased).toMatchObject({ loop: inches(1.875), buttonIn: inches(15 / 16), cutLength: inches(2.375) });
  });

  // Common practice: a buttonhole is as long as the button is wide and thick. From memory.
  it('of 3/4 by 1/8 in go through a buttonhole of 7/8 in', () => {
    expect(detailsOf({ closing: buttonholes, overlap: inches(1) }).parts).toMatchObject({
      buttonhole: inches(7 / 8),
    });
  });
});

describe('the flap for an overlap', () => {
  it('of 1 in along a slit of 20 in is cut 2 1/2 by 20 1/2 in (derived)', () => {
    expect(detailsOf({ overlap: inches(1) }).flap).toMatchObject({
      cutWidth: inches(2.5),
      cutLength: inches(20.5),
      strips: 1,
      fabric: inches(2.5),
    });
    expect(detailsOf().flap).toBeNull();
  });

  it('folded and sewn shut is the overlap by the slit, joined where a strip is too short', () => {
    fc.assert(
      fc.property(eighths(40, 900), eighths(1, 40), (slit, overlap) => {
        const { flap } = detailsOf({ slit, overlap });
        expect(flap!.cutWidth / 2 - start.seamAllowance).toBeGreaterThanOrEqual(overlap);
        expect(flap!.cutLength - 2 * start.seamAllowance).toBeGreaterThanOrEqual(slit);
        const joined = (strips: number) =>
          strips * start.fabricWidth - (strips - 1) * 2 * start.seamAllowance;
        expect(joined(flap!.strips)).toBeGreaterThanOrEqual(flap!.cutLength);
        if (flap!.strips > 1) expect(joined(flap!.strips - 1)).toBeLessThan(flap!.cutLength);
      }),
    );
  });
});

describe('what it asks for', () => {
  const asked = (change: Partial<SlitClosureInput>) => {
    const given = input(change);
    const { details } = answerOf(slitClosure, given);
    return {
      needs: slitClosure.needs!(given, details, start.fabricWidth).map(({ name, amount }) => [name, amount]),
      cuts: slitClosure.cuts!(given, details).map(({ fabric, width, length, count }) => [
        fabric,
        width,
        length,
        count,
      ]),
    };
  };

  it('is fabric for ties, cord for loops and fabric for the flap', () => {
    const tie = { width: inches(10.75), length: inches(2), count: 8, mayTurn: false };
    const flap = { width: inches(20.5), length: inches(2.5), count: 1, mayTurn: false };
    expect(asked({})).toEqual({
      needs: [['Ties', { measure: 'patches', patches: [tie] }]],
      cuts: [['Ties', tie.width, tie.length, tie.count]],
    });
    expect(asked({ closing: loops, overlap: inches(1) })).toEqual({
      needs: [
        ['Flap', { measure: 'patches', patches: [flap] }],
        ['Cord for the loops', { measure: 'notion', length: 4 * inches(2.375) }],
      ],
      cuts: [['Flap', inches(20.5), inches(2.5), 1]],
    });
    expect(asked({ closing: loops, overlap: inches(1), slit: inches(50) }).cuts).toEqual([
      ['Flap', inches(42), inches(2.5), 2],
    ]);
    expect(asked({ closing: buttonholes, overlap: inches(3 / 4) }).needs.map(([name]) => name)).toEqual([
      'Flap',
    ]);
  });
});

describe('the order of the work', () => {
  const says = (change: Partial<SlitClosureInput>) =>
    answer(change).tables[1]!.rows.map(([, what]) => (what?.kind === 'words' ? what.text : ''));
  const place = (steps: readonly string[], words: string) => steps.findIndex((step) => step.includes(words));

  // Common practice: makers sew ties to the seam of the binding on the underside, then turn the binding.
  it.each([
    ['ties', { closing: ties(10) }, 'each tie to the seam'],
    ['loops', { closing: loops }, 'each loop, side by side, to the seam'],
  ])('catches %s in the binding before it is turned', (_what, change, caught) => {
    const steps = says(change);
    expect(place(steps, 'Sew the binding to the front')).toBeGreaterThanOrEqual(0);
    expect(place(steps, caught)).toBeGreaterThan(place(steps, 'Sew the binding to the front'));
    expect(place(steps, 'Turn the binding')).toBeGreaterThan(place(steps, caught));
  });

  it('sews buttons and snaps on once the binding is down', () => {
    for (const [closing, words] of [
      [loops, 'Sew the buttons on last'],
      [buttonholes, 'sew the buttons'],
      [snaps, 'each snap'],
    ] as const) {
      const steps = says({ closing, overlap: inches(1) });
      expect(place(steps, 'Cut the flap')).toBe(0);
      expect(place(steps, words)).toBeGreaterThan(place(steps, 'Turn the binding'));
    }
  });
});

describe('the drawing', () => {
  it('has a mark at every place, and the flap where there is one', () => {
    const marks = (change: Partial<SlitClosureInput>) =>
      answer(change).diagram!.parts.filter((part) => 'tone' in part && part.tone === 'mark');
    const flaps = (change: Partial<SlitClosureInput>) =>
      answer(change).diagram!.parts.filter((part) => 'tone' in part && part.tone === 'fabric-alternate');
    expect(marks({})).toHaveLength(4);
    expect(marks({ closing: loops })).toMatchObject(
      Array.from({ length: 4 }, () => ({ part: 'circle', radius: inches(3 / 8) })),
    );
    expect([flaps({}), flaps({ overlap: inches(1) })].map(({ length }) => length)).toEqual([0, 1]);
  });
});
