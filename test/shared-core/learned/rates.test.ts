import { describe, expect, it } from 'vitest';
import type { WorkMeasure } from '#core/domain/clock';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import {
  type CountedWork,
  settingsWithOwnRates,
  minutesByOwnRate,
  ownRates,
  rateInUse,
} from '#core/learned/rates';
import { lengthFromInches } from '#core/units/length';

const work = (what: WorkMeasure, minutes: number, amount: number): CountedWork => ({
  minutes,
  done: { what, amount: what === 'hand' ? lengthFromInches(amount) : amount },
});
const hand = [work('hand', 60, 40), work('hand', 60, 30), work('hand', 30, 20)];

describe('the maker’s own rates', () => {
  it('are minutes per block, per inch by hand and per cut, each with its count and quartiles', () => {
    const rates = ownRates([
      work('blocks', 60, 5),
      work('blocks', 40, 4),
      work('blocks', 30, 2),
      work('cuts', 30, 60),
      ...hand,
      { minutes: 500, done: null },
    ]);
    expect(rates.blocks).toEqual({ count: 3, median: 12, low: 11, high: 13.5 });
    expect(rates.cuts).toMatchObject({ count: 1, median: 0.5 });
    expect(rates.hand).toMatchObject({ count: 3, median: 1.5, high: 1.75 });
  });

  it('replace the hand-sewing setting from three cases on', () => {
    expect(settingsWithOwnRates(STARTING_SETTINGS, ownRates(hand.slice(1)))).toBe(STARTING_SETTINGS);
    expect(settingsWithOwnRates(STARTING_SETTINGS, ownRates(hand)).handStitchPerHour).toBe(
      lengthFromInches(40),
    );
    const crawl = [1, 2, 3].map(() => work('hand', 600, 1));
    expect(settingsWithOwnRates(STARTING_SETTINGS, ownRates(crawl)).handStitchPerHour).toBe(
      lengthFromInches(1),
    );
  });

  it('give the minutes for an amount of work, once they are learned', () => {
    const rates = ownRates([work('blocks', 60, 5), work('blocks', 40, 4), work('blocks', 30, 2)]);
    expect(minutesByOwnRate(rates, 'blocks', 24)).toBe(288);
    expect(minutesByOwnRate(rates, 'cuts', 24)).toBeNull();
    expect([rateInUse(rates, 'blocks'), rateInUse(rates, 'cuts')]).toEqual([rates.blocks, null]);
  });
});
