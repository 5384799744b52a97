import { describe, expect, it } from 'vitest';
import { answerCalculator } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import { cutsOfSavedAnswer } from '#core/calculators/saved-answer';
import type { BackingDetails } from '#core/calculators/backing/work';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches } from '#core/units/length';

const ROUND: Outline = { shape: 'circle', diameter: inches(50) };
const OBLONG: Outline = { shape: 'rectangle', width: inches(40), length: inches(60) };

/** What is cut by the answer of a calculator for a piece of this outline with a hole of 6 in. */
function cuts(name: string, outline: Outline, own: Readonly<Record<string, unknown>> = {}) {
  const calculator = calculatorByName(name)!;
  const piece = { outline, hole: { diameter: inches(6) }, hasSlit: false, settings: STARTING_SETTINGS };
  const worked = answerCalculator(calculator, piece, own);
  if (!worked.ok) throw new Error('No answer');
  const { input, calculation } = worked.value;
  const stored: unknown = JSON.parse(JSON.stringify(input));
  const list = cutsOfSavedAnswer({ calculator: name, input: stored });
  return { list, details: calculation.details as Record<string, unknown> };
}

describe('what has to be cut by a kept answer', () => {
  it('are the patches of a top', () => {
    const { list, details } = cuts('top', ROUND);
    expect(list).toEqual(details['patchList']);
    expect(list.length).toBeGreaterThan(0);
  });

  it('are strips as wide as the fabric for a binding on the straight grain', () => {
    const { list, details } = cuts('outer-binding', OBLONG);
    const { fabricWidth, bindingStripWidth } = STARTING_SETTINGS;
    expect(list).toEqual([
      {
        ...{ fabric: 'Binding', width: fabricWidth, length: bindingStripWidth },
        ...{ count: details['strips'], mayTurn: true },
      },
    ]);
  });

  it('is the square for continuous bias where the edge needs bias', () => {
    const { list, details } = cuts('outer-binding', { shape: 'circle', diameter: inches(14) });
    expect(details['isBiasNeeded']).toBe(true);
    expect(list).toMatchObject([{ fabric: 'Binding', count: 1 }]);
    expect(list[0]?.width).toBe(list[0]?.length);
    expect(list[0]?.width).toBeGreaterThan(inches(8));
  });

  it('is the square for continuous bias around the hole, and straight strips for the sides of a slit if she asks for them', () => {
    const { list, details } = cuts('inner-binding', ROUND);
    const { width, length } = details['bias'] as { readonly width: number; readonly length: number };
    expect(list).toMatchObject([{ width, length, count: 1 }]);
    const slit = { hasSlit: true, bindLegs: true, slitLength: '22 in', legGrain: 'straight' };
    const [, legs] = cuts('inner-binding', ROUND, slit).list;
    // By hand: 22 + 1/4 along the slit, 1/2 folded under, and half a strip of 2 1/4 in for the join.
    expect(legs).toMatchObject({
      width: inches(23.875),
      length: STARTING_SETTINGS.innerStripWidth,
      count: 2,
    });
  });

  it('are the squares of continuous bias, and the fabric of bias strips that reaches', () => {
    const squares = cuts('continuous-bias', ROUND);
    expect(squares.list).toMatchObject([
      { width: squares.details['side'], length: squares.details['side'], count: squares.details['squares'] },
    ]);
    const strips = cuts('bias-strips', ROUND);
    expect(strips.list).toMatchObject([
      { width: STARTING_SETTINGS.fabricWidth, length: strips.details['leastFabricLength'], count: 1 },
    ]);
  });

  it('are panels as long as the back for it, each of its own way up where the print asks that', () => {
    const back = { ...OBLONG, width: inches(50), length: inches(70) } as const;
    const { list, details } = cuts('backing', back);
    const { width, length, ways } = details as unknown as BackingDetails;
    // 58 by 78 in from 42 in fabric: two panels of 58 in lie across, which takes less than two of 78 in.
    const whole = ways.find(({ last }) => last === 'whole');
    expect([width, length, whole?.panelsRun]).toEqual([inches(58), inches(78), 'across']);
    expect(list).toEqual([
      { fabric: 'Backing', width: inches(42), length: inches(58), count: 1, mayTurn: true },
      { fabric: 'Backing', width: whole?.lastWidth, length: inches(58), count: 1, mayTurn: true },
    ]);
    expect(cuts('backing', back, { printRuns: 'up-the-fabric' }).list).toMatchObject([
      { width: inches(42), length: inches(78), count: 1, mayTurn: false },
      { length: inches(78), count: 1, mayTurn: false },
    ]);
  });

  it('are the strips of a last panel where the maker joins it', () => {
    const back = { shape: 'rectangle', width: inches(80), length: inches(80) } as const;
    // 88 by 88 in from 42 in fabric of an upright print: two whole panels, and 6 in more from strips that lie side by side.
    const along = cuts('backing', back, { mayJoinLast: true, printRuns: 'up-the-fabric' });
    expect(along.list).toMatchObject([
      { width: inches(42), length: inches(88), count: 2, mayTurn: false },
      { count: 7, mayTurn: false },
    ]);
    const [, strips] = along.list;
    expect(strips!.width).toBeLessThan(strips!.length);
    expect(strips!.count * strips!.length).toBeGreaterThan(inches(88));
  });

  it('is nothing where the calculator cuts nothing, or its input no longer reads', () => {
    expect(cuts('washing', ROUND).list).toEqual([]);
    expect(cutsOfSavedAnswer({ calculator: 'backing', input: { outline: 'round' } })).toEqual([]);
    expect(cutsOfSavedAnswer({ calculator: 'no-such', input: {} })).toEqual([]);
  });
});
