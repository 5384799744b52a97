import { describe, expect, it } from 'vitest';
import type { Measurement, SeamCheckInput } from '#core/calculators/seam-check/input';
import { seamCheck } from '#core/calculators/seam-check/seam-check';
import { formatSentence } from '#core/calculators/format-quantity';
import type { Quantity } from '#core/calculators/explanation';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { lengthFromInches, lengthFromMillimeters, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { METRIC_SETTINGS } from '#test/helpers/measurements';

const inches = lengthFromInches;
const outline = { shape: 'square', side: inches(72) } as const;
const start = seamCheck.fromProject({ outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS });

type Row = readonly [size: number, seams: number, patches: number, found: number | null];

function rows(list: readonly Row[], end: Measurement['end'] = 'along'): readonly Measurement[] {
  return list.map(([size, seams, patches, found]) => ({
    size: inches(size),
    seams,
    patches,
    end,
    found: found === null ? null : inches(found),
  }));
}

function inputWith(measured: readonly Measurement[], changes: Partial<SeamCheckInput> = {}): SeamCheckInput {
  return { ...start, measured, ...changes };
}

function detailsFor(...input: Parameters<typeof inputWith>) {
  return answerOf(seamCheck, inputWith(...input)).details;
}

function figureOf(input: SeamCheckInput, label: string): Quantity | undefined {
  return answerOf(seamCheck, input).figures.find((figure) => figure.label === label)?.quantity;
}

function notesOf(input: SeamCheckInput): readonly string[] {
  const style = {
    display: { system: 'inch', inchStep: 16 },
    currency: currencyFromCode('USD'),
    locale: 'en-US',
  } as const;
  return answerOf(seamCheck, input)
    .notes.filter(({ kind }) => kind !== 'caution')
    .map((note) => formatSentence(note, style));
}

const words = (text: string) => ({ kind: 'words', text });

/** Six blocks of three patches, each 1/8 in too small: every seam takes 1/16 in too much. */
const EIGHTH_SMALL = rows(Array.from({ length: 6 }, (): Row => [9.5, 2, 3, 9.375]));

describe('what each seam takes', () => {
  it('is 1/16 in too much where a block of two seams is 1/8 in too small and the cuts are right (derived)', () => {
    const { seam, scatter, move } = detailsFor(EIGHTH_SMALL, { cutsAreRight: true });
    expect(seam?.value).toBeCloseTo(inches(1 / 16), 6);
    expect(scatter?.freedom).toBe(5);
    // Equal readings still hide what the ruler can't show: 1/16 in ÷ √12, t = 2.571 (published: NIST-E),
    // and six blocks of 2²/3 each.
    expect(scatter?.each).toBeCloseTo(inches(1 / 16) / Math.sqrt(12), 6);
    expect(seam!.within / UNITS_PER_INCH).toBeCloseTo(((2.5706 / 16) * Math.sqrt(3 / 4)) / Math.sqrt(72), 5);
    expect(move).toEqual({ exact: seam!.value / 2, rounded: inches(1 / 32) });
  });

  it('is told from the cuts by patches that were measured before they were sewn', () => {
    // Patches 1/32 in too wide, seams 1/16 in too much: three patches gain 3/32 and lose 1/8.
    const measured = rows([
      [3.5, 0, 1, 3.5 + 1 / 32],
      [3.5, 0, 1, 3.5 + 1 / 32],
      [9.5, 2, 3, 9.5 - 1 / 32],
      [9.5, 2, 3, 9.5 - 1 / 32],
    ]);
    const { seam, cut, isMixed } = detailsFor(measured, { readTo: lengthFromMillimeters(0.1) });
    expect(seam?.value).toBeCloseTo(inches(1 / 16), 6);
    expect(cut?.value).toBeCloseTo(inches(1 / 32), 6);
    expect(isMixed).toBe(false);
  });

  it('can’t be told from the cuts if all blocks are alike, and says so', () => {
    const alike = inputWith(EIGHTH_SMALL);
    expect(answerOf(seamCheck, alike).details).toMatchObject({ isMixed: true, cut: null });
    expect(notesOf(alike).join(' ')).toContain('a patch cut wrong looks like a seam sewn wrong');
    expect(figureOf(alike, 'Each patch is too wide')).toEqual(words('not known yet'));
    const checked = inputWith(EIGHTH_SMALL, { cutsAreRight: true });
    expect(notesOf(checked).join(' ')).not.toContain('checked the patches');
    expect(notesOf(checked).join(' ')).not.toContain('looks like a seam');
    expect(figureOf(checked, 'Each patch is too wide')).toBeUndefined();
  });

  it('is named by its sign, with a step of the machine and the exact value beside it', () => {
    const large = rows(Array.from({ length: 6 }, (): Row => [9.5, 2, 3, 9.5 + 3 / 16]));
    const input = inputWith(large, { cutsAreRight: true, guideStep: inches(1 / 32) });
    expect(figureOf(input, 'Each seam takes too little')).toMatchObject({ rounded: inches(3 / 32) });
    expect(figureOf(input, 'Sew each seam wider by')).toMatchObject({
      exact: inches(3 / 64),
      rounded: inches(2 / 32),
      step: inches(1 / 32),
    });
  });

  it('is known better if the patches are cut right, which is asked while no error is certain', () => {
    const measured = rows([
      [3.5, 0, 1, 3.5],
      [9.5, 2, 3, 9.4],
      [9.5, 2, 3, 9.3],
      [9.5, 2, 3, 9.35],
    ]);
    const [open, checked] = [false, true].map((cutsAreRight) => inputWith(measured, { cutsAreRight }));
    const asks = 'If you have checked the patches with a ruler';
    expect(notesOf(open!).some((note) => note.startsWith(asks))).toBe(true);
    expect(notesOf(checked!).some((note) => note.startsWith(asks))).toBe(false);
    const within = (input: SeamCheckInput) => answerOf(seamCheck, input).details.seam!.within;
    expect(within(checked!)).toBeLessThan(within(open!));
  });

  it('is left alone while it may be chance, or is less than half a step', () => {
    const scattered = inputWith(
      rows([
        [9.5, 2, 3, 9.75],
        [9.5, 2, 3, 9.25],
        [9.5, 2, 3, 9.375],
      ]),
      { cutsAreRight: true },
    );
    expect(figureOf(scattered, 'Needle or guide')).toEqual(words('leave it: no error is certain'));
    const step = { cutsAreRight: true, guideStep: inches(1 / 8) };
    expect(figureOf(inputWith(EIGHTH_SMALL, step), 'Needle or guide')).toEqual(
      words('leave it: less than half a step'),
    );
  });
});

describe('what can’t be known yet', () => {
  it.each([0, 1, 2])('is everything with %i measurements of two kinds', (count) => {
    const measured = rows([
      [3.5, 0, 1, count > 0 ? 3.5 : null],
      [9.5, 2, 3, count > 1 ? 9.375 : null],
    ]);
    const input = inputWith(measured);
    const { details } = answerOf(seamCheck, input);
    expect(details).toMatchObject({ seam: null, cut: null, scatter: null, growth: null, top: null });
    expect(figureOf(input, 'What to do now')).toEqual(words('measure more first'));
    for (const label of ['Each seam takes too much', 'The top will measure', 'From the first to the last'])
      expect(figureOf(input, label)).toEqual(words('not known yet'));
    expect(notesOf(input)[0]).toMatch(
      new RegExp(`^You need at least \\d measurements?, and you have ${String(count)}`),
    );
  });

  it('is the seam if only patches were measured, and what scatters by more than two seams', () => {
    const patches = rows([
      [3.5, 0, 1, 3.5],
      [3.5, 0, 1, 3.5],
      [3.5, 0, 1, 3.5],
    ]);
    expect(detailsFor(patches)).toMatchObject({ seam: null, top: null, isMixed: false });
    expect(detailsFor(patches).cut?.value).toBeCloseTo(0, 9);
    const wild = rows([
      [9.5, 2, 3, 7],
      [9.5, 2, 3, 12],
    ]);
    const input = inputWith(wild, { cutsAreRight: true });
    expect(answerOf(seamCheck, input).details.seam).toBeNull();
    expect(notesOf(input)[0]).toContain('scatter too much');
  });
});

describe('whether the error grows', () => {
  const from = (list: readonly number[]) => rows(list.map((found): Row => [9.5, 2, 3, found]));
  it('is even where all blocks are alike, and more and more where each is smaller than the last', () => {
    const course = (list: readonly number[]) =>
      figureOf(
        inputWith(from(list), { cutsAreRight: true, readTo: inches(1 / 64) }),
        'From the first to the last',
      );
    expect(course([9.4, 9.42, 9.38, 9.41, 9.4])).toEqual(words('even, as far as can be told'));
    expect(course([9.5, 9.44, 9.38, 9.32, 9.25])).toEqual(words('the seams take more and more'));
    expect(course([9.25, 9.32, 9.38, 9.44, 9.5])).toEqual(words('the seams take less and less'));
  });

  it('is the difference between the last and the first seam', () => {
    const measured = from([9.5, 9.4, 9.3, 9.2]);
    expect(detailsFor(measured, { cutsAreRight: true }).growth?.value).toBeCloseTo(inches(0.15), 0);
  });
});

describe('the whole top', () => {
  const top = { size: inches(72.5), seams: 23, patches: 24 };
  const action = (found: number, tolerance: number) => {
    const measured = rows(Array.from({ length: 8 }, (): Row => [9.5, 2, 3, found]));
    const changes = { cutsAreRight: true, top, tolerance: inches(tolerance), readTo: inches(1 / 64) };
    return { input: inputWith(measured, changes), ...detailsFor(measured, changes) };
  };

  it('loses what its seams take: 23 seams of 1/16 in are 1 7/16 in (derived)', () => {
    expect(action(9.375, 1 / 2).top?.value).toBeCloseTo(inches(72.5 - 23 / 16), 5);
  });

  it.each([
    ['go on as you are', 9.5, 1 / 2, 'Go on as you are'],
    ['ease it into the next border', 9.5 - 1 / 32, 3 / 8, 'ease in the'],
    ['measure more first', 9.5, 1 / 32, 'Measure more blocks'],
    ['trim the blocks before you join them', 9.5 + 1 / 8, 1 / 2, 'Trim each block to its size'],
    ['make the next border wider', 9.5 - 1 / 8, 1 / 2, 'Make the next border wider by'],
  ])('says to %s', (verdict, found, tolerance, sentence) => {
    const { input } = action(found, tolerance);
    expect(figureOf(input, 'What to do now')).toEqual(words(verdict));
    expect(notesOf(input)[0]).toContain(sentence);
  });

  it('makes the border wider by half on each side, rounded up', () => {
    expect(notesOf(action(9.375, 1 / 2).input)[0]).toBe(
      'Make the next border wider by 23/32 in on each side, or the top will be 1 7/16 in too small. Cut it to what the top measures.',
    );
  });
});

describe('a ring of wedges', () => {
  const ringOf = (wedges: number, taper: number, leg: number, radius: number, even = 0) => {
    const half = Math.floor(wedges / 2);
    const row = (end: Measurement['end'], off: number, size: number) =>
      rows([[size, half - 1, half, size - off * (half - 1)]], end)[0]!;
    const pairs = [1, 2, 3].flatMap(() => [row('inner', even, 8), row('outer', even + taper, 40)]);
    return detailsFor(pairs, {
      cutsAreRight: true,
      readTo: lengthFromMillimeters(0.1),
      ring: { wedges, leg: inches(leg), radius: inches(radius) },
    }).ring!;
  };

  // Derived: a seam that takes e more from both sides over a leg L costs 2e ÷ L; checked with the cone's own geometry.
  it.each([
    [8, 1 / 32, 26, 29, 1.1, 2.27],
    [16, 1 / 64, 22, 25, 1.3, 2.12],
  ])('of %i wedges lacks an angle and rises', (wedges, side, leg, radius, degrees, rise) => {
    const ring = ringOf(wedges, 2 * side, leg, radius);
    expect((ring.lacks * 180) / Math.PI).toBeCloseTo(degrees, 2);
    expect(ring.rise / UNITS_PER_INCH).toBeCloseTo(rise, 2);
    const edge = (2 * Math.PI - ring.lacks) * inches(radius);
    expect(Math.hypot(ring.rise, edge / (2 * Math.PI))).toBeCloseTo(inches(radius), 6);
  });

  it('lies flat if the seams are off by the same from end to end, and ruffles if they taper the other way', () => {
    expect(ringOf(8, 0, 26, 29, 1 / 8).lacks).toBeCloseTo(0, 9);
    const ruffled = ringOf(8, -1 / 8, 26, 29);
    expect(ruffled.lacks).toBeLessThan(0);
    expect(ruffled.rise).toBe(0);
  });

  const ring = { wedges: 8, leg: inches(26), radius: inches(29) };

  // Derived: by line intersection, the apex of a wedge with legs e nearer is that much nearer to the outer edge.
  it.each([
    [8, 1 / 32, 0.082],
    [16, 1 / 64, 0.08],
  ])('of %i wedges that are even but off moves in all around', (wedges, side, movesIn) => {
    const half = Math.PI / wedges;
    const [along, normal] = [
      { x: Math.sin(half), y: Math.cos(half) },
      { x: -Math.cos(half), y: Math.sin(half) },
    ];
    // The right leg from the point e inside it, followed back to the middle line of the wedge.
    const apex = normal.y * side - (normal.x * side * along.y) / along.x;
    expect(apex).toBeCloseTo(movesIn, 3);
    const pairs = rows(Array.from({ length: 4 }, (): Row => [12, 1, 2, 12 - 2 * side]));
    const asked = { ...ring, wedges };
    const { whole, top } = detailsFor(pairs, { cutsAreRight: true, top: null, ring: asked });
    expect(whole?.size).toBe(inches(58.5));
    expect((inches(58.5) - top!.value) / 2 / UNITS_PER_INCH).toBeCloseTo(apex, 4);
  });

  it.each([
    [12.25, 'trim the outer edge', 'Trim the outer edge of the ring'],
    [11.75, 'make the next border wider', 'or the ring will be'],
  ])('with pairs of %f in instead of 12 says to %s', (found, verdict, sentence) => {
    const pairs = rows(Array.from({ length: 12 }, (): Row => [12, 1, 2, found]));
    const input = inputWith(pairs, { cutsAreRight: true, top: null, ring, tolerance: inches(1 / 4) });
    expect(figureOf(input, 'What to do now')).toEqual(words(verdict));
    expect(notesOf(input)[0]).toContain(sentence);
    expect(figureOf(input, 'The ring will measure')).toMatchObject({ kind: 'length' });
    expect(figureOf(input, 'The top will measure')).toBeUndefined();
  });

  it('with a taper leaves the rest of the top to the seams alone, if the cuts are right', () => {
    const tapered = [
      ...rows(
        Array.from({ length: 4 }, (): Row => [8, 3, 4, 8]),
        'inner',
      ),
      ...rows(
        Array.from({ length: 4 }, (): Row => [40, 3, 4, 40 - 3 / 16]),
        'outer',
      ),
    ];
    const top = { size: inches(72.5), seams: 23, patches: 24 };
    const details = detailsFor(tapered, { cutsAreRight: true, top, ring });
    expect(details.seam?.value).toBeCloseTo(inches(1 / 32), 6);
    expect(details.top?.value).toBeCloseTo(inches(72.5 - 23 / 32), 5);
  });
  const both = (outer: number) => [
    ...rows(
      Array.from({ length: 4 }, (): Row => [8, 3, 4, 8]),
      'inner',
    ),
    ...rows(
      Array.from({ length: 4 }, (): Row => [40, 3, 4, outer]),
      'outer',
    ),
  ];
  it.each([
    [40, 'flat, as far as can be told', undefined],
    [39, 'it will cup: the middle rises', 'narrower than now'],
    [41, 'it will ruffle at the outer edge', 'wider than now'],
  ])('with an outer end of %f is judged', (outer, verdict, sentence) => {
    const input = inputWith(both(outer), { ring, cutsAreRight: true });
    expect(figureOf(input, 'The ring')).toEqual(words(verdict));
    const said = notesOf(input).filter((note) => note.startsWith('Sew the outer end'));
    expect(said).toHaveLength(sentence === undefined ? 0 : 1);
    expect(said.join('')).toContain(sentence ?? '');
  });

  it('is not known without both ends, and says what to measure', () => {
    const input = inputWith(
      rows(
        Array.from({ length: 4 }, (): Row => [8, 3, 4, 8]),
        'inner',
      ),
      { ring },
    );
    expect(figureOf(input, 'The ring')).toEqual(words('not known yet'));
    expect(notesOf(input).join(' ')).toContain('at the inner and at the outer end');
  });
});

it('asks what the whole should measure where nothing was said of it', () => {
  const input = inputWith(EIGHTH_SMALL, { cutsAreRight: true, top: null });
  expect(figureOf(input, 'What to do now')).toEqual(words('say what the whole top should measure'));
  expect(answerOf(seamCheck, input).details).toMatchObject({ whole: null, top: null });
  expect(notesOf(inputWith([], { top: null }))[0]).toMatch(
    /^You need at least 2 measurements, and you have 0/,
  );
});

describe('a slip is refused', () => {
  it.each([
    [
      'more seams than patches',
      inputWith(rows([[9.5, 4, 3, 9.5]])),
      'more-seams-than-patches',
      ['measured', 0, 'seams'],
    ],
    [
      'more seams than patches in the top',
      { ...start, top: { size: inches(72), seams: 9, patches: 8 } },
      'more-seams-than-patches',
      ['top', 'seams'],
    ],
    [
      'a size that nothing like it was asked for',
      inputWith(
        rows([
          [9.5, 2, 3, null],
          [9.5, 2, 3, 95],
        ]),
      ),
      'unlike-size',
      ['measured', 1, 'found'],
    ],
    [
      'a seam that takes more than two seam allowances',
      inputWith(rows(Array.from({ length: 12 }, (): Row => [9.5, 2, 3, 8])), { cutsAreRight: true }),
      'more-than-a-seam',
      ['measured'],
    ],
  ])('%s', (_name, input, code, field) => {
    expect(refusalOf(seamCheck, input)).toMatchObject({ code, field });
  });

  it('but a closed round may have as many seams as patches', () => {
    expect(answerOf(seamCheck, inputWith(rows([[40, 8, 8, 40]]))).figures.length).toBeGreaterThan(0);
  });
});

it('starts with four patches and three blocks to measure, within any top', () => {
  expect(start.measured.map(({ size, seams, patches, found }) => [size, seams, patches, found])).toEqual(
    [1, 1, 1, 1, 3, 3, 3].map((patches) => [inches(3 * patches + 0.5), patches - 1, patches, null]),
  );
  expect(start.top).toEqual({ size: inches(72.5), seams: 23, patches: 24 });
  const metric = seamCheck.fromProject({
    outline: { shape: 'square', side: lengthFromUnits(3_200_000) },
    hole: null,
    hasSlit: false,
    settings: METRIC_SETTINGS,
  });
  expect(metric.top).toEqual({ size: lengthFromMillimeters(9_015), seams: 119, patches: 120 });
  expect(metric.guideStep).toBe(lengthFromMillimeters(0.5));
});
