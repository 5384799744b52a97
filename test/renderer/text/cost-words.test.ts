import { expect, test } from 'vitest';
import { currencyFromCode } from '#core/units/money';
import { costWords, loneCostWords, unpricedWords } from '#renderer/text/cost-words';
import { inches } from '#test/helpers/workshop';

const money = { currency: currencyFromCode('USD'), locale: 'en-US' };
const area = inches(10) * inches(12);

test.each([
  ['all known', 1_250, 0, '$12.50', '$12.50'],
  ['free', 0, 0, '$0.00', ''],
  ['some not known', 1_250, area, 'at least $12.50', 'at least $12.50'],
  ['all not known', 0, area, 'not known', 'cost not known'],
])('a cost, %s, in words', (_what, minor, unpricedArea, words, alone) => {
  expect(costWords({ minor, unpricedArea }, money)).toBe(words);
  expect(loneCostWords({ minor, unpricedArea }, money)).toBe(alone);
});

test('what has no price is said as an area', () => {
  const inch = { system: 'inch', inchStep: 8 } as const;
  expect(unpricedWords({ minor: 5, unpricedArea: area }, inch)).toBe(
    'No price on record for 120 sq in of it.',
  );
  expect(unpricedWords({ minor: 5, unpricedArea: 0 }, inch)).toBe('');
});
