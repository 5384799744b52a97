import { describe, expect, it } from 'vitest';
import { biasStrips } from '#core/calculators/binding/bias-strips/bias-strips';
import { continuousBias } from '#core/calculators/binding/continuous-bias/continuous-bias';
import { cornerExtra, stitchStopBefore } from '#core/calculators/binding/outer-binding/corner-miters';
import { outerBinding } from '#core/calculators/binding/outer-binding/outer-binding';
import { smallestStep } from '#core/calculators/binding/smallest-step';
import { stripsNeeded } from '#core/calculators/binding/strip-joins';
import type { Calculator } from '#core/calculators/calculator';
import { answerCalculator } from '#core/calculators/complete-input';
import { formatSentence } from '#core/calculators/format-quantity';
import { currencyFromCode } from '#core/units/money';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';

const INCH = {
  display: { system: 'inch', inchStep: 8 },
  currency: currencyFromCode('EUR'),
  locale: 'en',
} as const;

function answer<Input extends object, Details extends object>(
  calculator: Calculator<Input, Details>,
  own: object,
) {
  return answerCalculator(calculator, SAMPLE_MEASUREMENTS, own);
}

/** The field to change and what is said of it; nothing where there is an answer. */
function refusal<Input extends object, Details extends object>(
  calculator: Calculator<Input, Details>,
  own: object,
) {
  const given = answer(calculator, own);
  if (given.ok || given.error.code !== 'refused') return null;
  return [given.error.refusal.field.join(' '), formatSentence(given.error.refusal, INCH)];
}

function labels<Input extends object, Details extends object>(
  calculator: Calculator<Input, Details>,
  own: object,
) {
  const given = answer(calculator, own);
  return given.ok ? given.value.calculation.figures.map(({ label }) => label) : [];
}

describe('the outer binding is refused', () => {
  it.each([
    [
      'when the hole does not fit inside the outline',
      { outline: { shape: 'circle', diameter: '6' }, hole: { diameter: '6' } },
      'hole diameter',
      'A hole 6 in across does not fit inside this outline.',
    ],
    [
      'when the seam allowance uses up the strip',
      { stripWidth: '1', seamAllowance: '1/2' },
      'stripWidth',
      'A seam allowance of ½ in uses up a strip 1 in wide: nothing is left to turn.',
    ],
    [
      'when the edge bends more tightly than the seam',
      { outline: { shape: 'circle', diameter: '1' }, hole: null, hasSlit: false, seamAllowance: '1/2' },
      'seamAllowance',
      'A seam allowance of ½ in does not go around this edge: the edge bends more tightly than that.',
    ],
    [
      'when every join takes as much as a strip adds',
      { fabricWidth: '4', stripWidth: '4' },
      'fabricWidth',
      'Strips 4 in wide from fabric 4 in wide add almost nothing: each join takes as much as a strip adds.',
    ],
    [
      'when it would take more than a thousand strips',
      { fabricWidth: '4', stripWidth: '3 7/8', overlap: '0' },
      'fabricWidth',
      'Strips 3⅞ in wide from fabric 4 in wide add almost nothing: each join takes as much as a strip adds.',
    ],
  ])('%s', (_where, own, field, says) => {
    expect(refusal(outerBinding, own)).toEqual([field, says]);
  });

  it('never for a slit without a hole', () => {
    expect(refusal(outerBinding, { hole: null, hasSlit: true, slitBoundWith: 'outside' })).toBeNull();
    const given = answer(outerBinding, { hole: null, hasSlit: true, slitBoundWith: 'outside' });
    expect(given.ok && given.value.calculation.diagram?.parts.some((part) => part.part === 'line')).toBe(
      false,
    );
  });
});

describe('the outer binding', () => {
  it('has no front width when thickness and cover take the whole strip', () => {
    const front = 'Front width this strip fits';
    const thin = { stripWidth: '1', seamAllowance: '1/8', quiltThickness: '1/4', backCover: '1/4' };
    expect(labels(outerBinding, thin)).not.toContain(front);
    expect(labels(outerBinding, { ...thin, backCover: '1/8' })).toContain(front);
  });

  it('has no table of corners for a circle', () => {
    const round = { outline: { shape: 'circle', diameter: '40' }, hole: null, hasSlit: false };
    const given = answer(outerBinding, round);
    const titles = given.ok ? given.value.calculation.tables.map(({ title }) => title) : [];
    expect(titles).toEqual(['Ways to cut it', 'How to do it']);
  });

  it('says what a join takes, and how the edge of an oval is found', () => {
    const words = (own: object) => {
      const given = answer(outerBinding, own);
      const steps = given.ok ? given.value.calculation.explanation : [];
      const strips = steps.find(({ label }) => label === 'Strips');
      return [steps[0]?.rule.says, strips?.rule.says, strips?.terms.at(-1)?.means];
    };
    const oval = { outline: { shape: 'ellipse', width: '40', length: '60' }, hole: null, hasSlit: false };
    const straight = { outline: { shape: 'square', side: '40' }, hole: null, hasSlit: false };
    expect(words({ join: 'diagonal' })).toEqual([
      'Once all the way around.',
      'A diagonal join takes one strip width of length.',
      'what a join takes, j = w',
    ]);
    expect(words(oval)[0]).toBe(
      'An ellipse has no simple formula. Its length comes from the arithmetic-geometric mean, to a billionth.',
    );
    expect(words({ ...straight, join: 'straight' })).toEqual([
      'Once all the way around.',
      'A straight join takes both seam allowances.',
      'what a join takes, j = 2s',
    ]);
  });

  it('fits when the cover on the back is exactly 0', () => {
    const given = answer(outerBinding, { stripWidth: '1 3/4', quiltThickness: '1/8', seamAllowance: '1/4' });
    const notes = given.ok ? given.value.calculation.notes : [];
    expect(notes[0]).toMatchObject({ kind: 'tip', values: { cover: { rounded: 0 } } });
  });
});

describe('bias from a piece of fabric', () => {
  it('is refused when no strip fits, and when it gives more than any binding', () => {
    expect(refusal(biasStrips, { pieceWidth: '5', pieceLength: '5', stripWidth: '2 1/2' })).toEqual([
      'pieceLength',
      'No bias strip 2½ in wide and at least 6 in long fits this piece of fabric.',
    ]);
    const endless = { pieceWidth: '390', pieceLength: '390', stripWidth: '3/4' };
    expect(refusal(biasStrips, endless)?.[1]).toContain('longer than any binding');
  });

  it('names no shortest length when none is enough', () => {
    const least = 'Shortest length of this width that is enough';
    expect(labels(biasStrips, { pieceWidth: '9', needed: '200' })).toContain(least);
    expect(labels(biasStrips, { pieceWidth: '9', needed: '20000' })).not.toContain(least);
  });

  it('names width, need and strip when no number of squares gives enough', () => {
    expect(refusal(continuousBias, { fabricWidth: '4', needed: '400', stripWidth: '3' })).toEqual([
      'fabricWidth',
      'Even many squares from fabric 4 in wide do not give 400 in of strip 3 in wide.',
    ]);
  });

  it('counts fabric too small for one square but large enough for several', () => {
    const verdicts = (own: object) => {
      const given = answer(continuousBias, own);
      const table = given.ok ? given.value.calculation.tables.at(-1) : undefined;
      return table?.rows.map((row) => row.at(-1)).map((cell) => (cell?.kind === 'words' ? cell.text : ''));
    };
    // Three squares of 12 in, four rows of 11.5 · √2 in each, less 2 in an end: 189 in. A yard 14 in wide holds all three.
    const many = { needed: '180', stripWidth: '2', fabricWidth: '14', squareStep: '1' };
    const [quarter, half, yard, own] = verdicts({ ...many, pieceWidth: '36', pieceLength: '12' }) ?? [];
    expect([quarter, half, yard, own]).toEqual(['too little', 'too little', 'enough', 'enough']);
    expect(verdicts({ ...many, pieceWidth: '35', pieceLength: '12' })?.at(-1)).toBe('too little');
  });

  it('does not warn of the rule of area where its square gives enough', () => {
    const warned = (own: object) => {
      const given = answer(continuousBias, own);
      return given.ok && given.value.calculation.notes.some(({ kind }) => kind === 'warning');
    };
    expect(warned({ needed: '140', stripWidth: '2 1/4' })).toBe(true);
    expect(warned({ needed: '4', stripWidth: '3/4', squareStep: '8' })).toBe(false);
  });

  it('is judged of a piece by its shorter side, whichever way it lies', () => {
    const gives = (pieceWidth: string, pieceLength: string) => {
      const given = continuousBias.calculate({
        ...continuousBias.fromProject(SAMPLE_MEASUREMENTS),
        ...(answer(continuousBias, { pieceWidth, pieceLength }) as { value: { ownInput: object } }).value
          .ownInput,
      });
      return given.ok ? given.value.details.pieceGives : 0;
    };
    expect(gives('20', '30')).toBe(gives('30', '20'));
    expect(gives('20', '30')).toBe(gives('20', '20'));
  });
});

describe('corners', () => {
  it('of a straight line need neither a stop nor extra strip', () => {
    expect(stitchStopBefore(180, 80)).toBe(0);
    expect(cornerExtra(180, 80)).toBe(0);
  });

  it('that point in need twice the seam for a right angle, and more the sharper they are (derived)', () => {
    // 2s · tan(45°) at 270°, 2s · tan(60°) at 300°, 2s · tan(22.5°) at 225°.
    expect([225, 270, 300].map((angle) => cornerExtra(angle, 10))).toEqual(
      [20 * (Math.SQRT2 - 1), 20, 20 * Math.sqrt(3)].map((extra) => expect.closeTo(extra, 9) as number),
    );
  });
});

describe('the smallest step that does', () => {
  it('is the first of many, the last, or none', () => {
    const from = (least: number, most: number) => smallestStep((size) => size >= least, 2, most);
    expect([from(1, 100), from(7, 100), from(99, 100), from(100, 101), from(1, 2)]).toEqual([
      2, 8, 100, 100, 2,
    ]);
    expect([from(101, 101), from(1, 1), from(3, 3)]).toEqual([null, null, null]);
  });

  it('asks no more than the answer is large: never past the most', () => {
    const asked: number[] = [];
    smallestStep(
      (size) => {
        asked.push(size);
        return size >= 24;
      },
      1,
      1_000,
    );
    expect(asked.length).toBeLessThan(12);
    expect(Math.max(...asked)).toBeLessThan(40);
  });
});

it('counts the strip that just reaches', () => {
  expect([stripsNeeded(82, 42, 2), stripsNeeded(82.01, 42, 2), stripsNeeded(42, 42, 2)]).toEqual([2, 3, 1]);
});
