import { expect, it } from 'vitest';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { factWords } from '#renderer/text/fact-words';

it.each([
  ['inch', lengthFromInches(1 / 32), '1/32 in'],
  ['inch', lengthFromInches(1 / 64), '1/64 in'],
  ['metric', lengthFromMillimeters(0.8), '0.8 mm'],
] as const)('an error of seams is written finer than sizes are shown in %s', (system, seamOff, words) => {
  const display = {
    length: { system, inchStep: 8 },
    currency: currencyFromCode('USD'),
    locale: 'en-US',
  } as const;
  expect(factWords('seamOff', { seamOff }, display)).toBe(words);
  expect(factWords('cutOff', { cutOff: seamOff }, display)).toBe(words);
});
