import { describe, expect, it } from 'vitest';
import { backing } from '#core/calculators/backing/backing';
import type { BackingInput } from '#core/calculators/backing/input';
import { MOST_PANELS, type PanelWay, panelWays } from '#core/calculators/backing/work';
import { lengthFromInches } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const inches = lengthFromInches;
const plain: BackingInput = { ...backing.fromProject(SAMPLE_MEASUREMENTS), safetyExtraPercent: 0 };
const anyWay = { printRuns: 'any-way', noMiddleSeam: false, printRepeat: inches(0) } as const;

function rectangle(width: number, length: number, changes: Partial<BackingInput> = {}): BackingInput {
  return {
    ...plain,
    outline: { shape: 'rectangle', width: inches(width), length: inches(length) },
    ...changes,
  };
}

const shortestWhole = (ways: readonly PanelWay[]) => ways.find(({ last }) => last === 'whole')!;

describe('the size of a backing', () => {
  // Common practice: margins in use are 3 or 4 in a side; tops and what is added each way.
  it.each([
    [40, 60, 4, 48, 68],
    [60, 80, 3, 66, 86],
    [72, 80, 3, 78, 86],
  ])('%d × %d with %d in on every side is %d × %d', (width, length, overhang, across, along) => {
    const { details } = answerOf(backing, rectangle(width, length, { overhang: inches(overhang) }));
    expect([details.width, details.length]).toEqual([across, along].map(inches));
  });
});

describe('ways of panels at their limits', () => {
  it('puts the way with less to sew first when both take the same fabric', () => {
    const { ways } = answerOf(backing, rectangle(120, 40, { overhang: inches(0) })).details;
    const whole = ways.filter(({ last }) => last === 'whole');
    expect(whole.map(({ fabricLength, seamLength }) => [fabricLength, seamLength])).toEqual([
      [inches(120), 0],
      [inches(120), inches(80)],
    ]);
  });

  it('needs no seam when the fabric is just wide enough, however wide the seam allowance', () => {
    const greedy = { overhang: inches(0), fabricWidth: inches(4), seam: inches(2), wideWidth: inches(4) };
    const { details } = answerOf(backing, rectangle(4, 4, greedy));
    expect(shortestWhole(details.ways)).toMatchObject({ panels: 1, lastWidth: inches(4), seamLength: 0 });
    expect(refusalOf(backing, rectangle(4.125, 4.125, greedy)).code).toBe('too-many-panels');
    const fabric = { width: inches(4), seam: inches(3), cutStep: inches(1 / 8) };
    expect(panelWays({ width: inches(60), length: inches(60) }, fabric, anyWay)).toEqual([]);
  });

  it('joins no panel from more strips than a backing may have panels', () => {
    const fabric = { width: inches(4), seam: inches(1), cutStep: inches(1 / 8) };
    const last = (length: number) => {
      const ways = panelWays({ width: inches(5), length: inches(length) }, fabric, anyWay);
      return ways.filter(({ panelsRun }) => panelsRun === 'up').map((way) => way.last);
    };
    expect(last(62)).toEqual(['whole']);
    expect(last(100)).toEqual(['whole']);
  });

  it('says one strip when the last panel is a single strip cut across', () => {
    const input = rectangle(50, 40, { overhang: inches(0), mayJoinLast: true, printRuns: 'any-way' });
    const way = answerOf(backing, input).details.ways.find(
      ({ last, lastStrips }) => last === 'across' && lastStrips === 1,
    );
    expect(way).toMatchObject({ panelsRun: 'up', panels: 2, lastWidth: inches(9), fabricLength: inches(49) });
    const words = answerOf(backing, input).figures.find(({ label }) => label === 'Pieced from')?.quantity;
    expect(words).toMatchObject({
      text: expect.stringContaining('the last panel from one strip cut across the fabric') as string,
    });
  });

  it('goes up to thirty panels and no further', () => {
    const narrow = { overhang: inches(0), fabricWidth: inches(4), seam: inches(1), wideWidth: inches(4) };
    const most = answerOf(backing, rectangle(62, 62, narrow)).details.ways;
    expect(shortestWhole(most).panels).toBe(MOST_PANELS);
    expect(refusalOf(backing, rectangle(62.125, 62.125, narrow)).code).toBe('too-many-panels');
  });
});
