import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { currencyFromCode, moneyFromMinor } from '#core/units/money';
import { formatMoney, formatMoneyForEditing, minorDigits } from '#core/units/format-money';
import { type MoneyProblem, parseMoney } from '#core/units/parse-money';
import { anyMoney } from '#test/helpers/arbitraries';

const [USD, EUR, JPY, KWD] = [
  currencyFromCode('USD'),
  currencyFromCode('EUR'),
  currencyFromCode('JPY'),
  currencyFromCode('KWD'),
];

describe('an amount of money', () => {
  it('is whole minor units of a currency with a three-letter code', () => {
    expect(moneyFromMinor(-0, USD)).toEqual({ minor: 0, currency: 'USD' });
    expect(() => moneyFromMinor(0.5, USD)).toThrow(RangeError);
    expect(() => moneyFromMinor(2 ** 53, USD)).toThrow(RangeError);
    for (const code of ['usd', 'US', 'USDX', '', 'U$D'])
      expect(() => currencyFromCode(code)).toThrow(RangeError);
  });
});

describe('writing money', () => {
  // ISO 4217 gives the yen no minor unit and the Kuwaiti dinar three digits.
  it('knows the digits of each minor unit', () => {
    expect([USD, EUR, JPY, KWD].map(minorDigits)).toEqual([2, 2, 0, 3]);
    expect(minorDigits(currencyFromCode('QQQ'))).toBe(2);
  });

  it('follows the locale', () => {
    expect(formatMoney(moneyFromMinor(123_450, USD), 'en-US')).toBe('$1,234.50');
    expect(formatMoney(moneyFromMinor(-5, EUR), 'de-DE')).toBe('-0,05\u00a0€');
    expect(formatMoney(moneyFromMinor(1200, JPY), 'en-US')).toBe('¥1,200');
  });

  it('is exact to the last minor unit of the largest amount', () => {
    expect(formatMoney(moneyFromMinor(Number.MAX_SAFE_INTEGER, USD), 'en-US')).toBe('$90,071,992,547,409.91');
  });

  it('reads back as the same amount, from a field and from a page', () => {
    fc.assert(
      fc.property(anyMoney, (money) => {
        expect(parseMoney(formatMoneyForEditing(money), money.currency)).toEqual({ ok: true, value: money });
        expect(parseMoney(formatMoney(money, 'en-US'), money.currency)).toEqual({ ok: true, value: money });
      }),
      { numRuns: 500 },
    );
  });
});

describe('typed money', () => {
  it.each([
    '1234.5',
    '1234.50',
    '1234,50',
    '1234.500',
    '1,234.50',
    '1.234,50',
    "1'234.50",
    '1’234,50',
    '1 234,50',
    '1\u202f234,50',
    '$1,234.50',
    '$ 1234.5',
    '1234.50 $',
    '1234.50 USD',
    'usd 1234.50',
    'USD1234.50',
  ])('%s is 1234.50', (text) => {
    expect(parseMoney(text, USD)).toEqual({ ok: true, value: moneyFromMinor(123_450, USD) });
  });

  it.each<[string, number]>([
    ['0', 0],
    ['.5', 50],
    ['0.00', 0],
    ['0,250', 25],
    ['-3', -300],
    ['−3.10', -310],
    ['-$3', -300],
    ['$-3', -300],
    ['1,234,567', 123_456_700],
    ['0012', 1200],
  ])('%s is %d cents', (text, minor) => {
    expect(parseMoney(text, USD)).toEqual({ ok: true, value: moneyFromMinor(minor, USD) });
  });

  it('has as many decimals as the currency', () => {
    expect(parseMoney('1200 ¥', JPY)).toMatchObject({ ok: true, value: { minor: 1200 } });
    expect(parseMoney('1200.0', JPY)).toMatchObject({ ok: true, value: { minor: 1200 } });
    expect(parseMoney('1,200', JPY)).toMatchObject({ ok: true, value: { minor: 1200 } });
    expect(parseMoney('1200.5', JPY)).toMatchObject({ ok: false, error: { code: 'too-fine' } });
    expect(parseMoney('1.250', KWD)).toMatchObject({ ok: true, value: { minor: 1250 } });
    expect(parseMoney('1,250', KWD)).toMatchObject({ ok: false, error: { code: 'ambiguous' } });
    expect(parseMoney('1.2505', KWD)).toMatchObject({ ok: false, error: { code: 'too-fine' } });
  });

  it('is refused with examples in the decimals of its currency', () => {
    const expected = (currency: typeof USD) => parseMoney('much', currency);
    expect(expected(JPY)).toMatchObject({ error: { expected: ['12', '12 JPY'] } });
    expect(expected(USD)).toMatchObject({ error: { expected: ['12.50', '12 USD'] } });
    expect(expected(KWD)).toMatchObject({ error: { expected: ['12.500', '12 KWD'] } });
    expect(parseMoney('$5€', USD)).toMatchObject({ error: { code: 'not-an-amount' } });
  });

  const refused: readonly [string, MoneyProblem['code']][] = [
    ['', 'empty'],
    [' \n', 'empty'],
    ['abc', 'not-an-amount'],
    ['NaN', 'not-an-amount'],
    ['1e300', 'not-an-amount'],
    ['12.', 'not-an-amount'],
    ['1.2.3', 'not-an-amount'],
    ['1,23,456', 'not-an-amount'],
    ['1,234,50', 'not-an-amount'],
    ['1,234.567.8', 'not-an-amount'],
    ['0,123.50', 'not-an-amount'],
    ['1 2', 'not-an-amount'],
    ['--5', 'not-an-amount'],
    ['-$-5', 'not-an-amount'],
    ['5-', 'not-an-amount'],
    ['$5$', 'not-an-amount'],
    ['5 dollars', 'not-an-amount'],
    ['½', 'not-an-amount'],
    ['1,250', 'ambiguous'],
    ['1.250', 'ambiguous'],
    ['12.345', 'ambiguous'],
    ['0.125', 'too-fine'],
    ['12.3456', 'too-fine'],
    ['€5', 'other-currency'],
    ['5 EUR', 'other-currency'],
    ['90071992547409.92', 'out-of-range'],
    ['9'.repeat(80), 'out-of-range'],
    ['9'.repeat(81), 'not-an-amount'],
    ['1,'.repeat(5_000_000), 'not-an-amount'],
  ];
  // A name of a test holds the first letters only.
  it.each(refused.map(([text, code]) => [text.slice(0, 20), code, text] as const))(
    '%j is answered with %s',
    (_start, code, text) => {
      const money = parseMoney(text, USD);
      expect(money.ok ? money.value : money.error.code).toBe(code);
      if (money.ok) return;
      expect(money.error.expected.length).toBeGreaterThan(0);
      for (const example of money.error.expected)
        expect(parseMoney(example, USD)).toMatchObject({ ok: true });
    },
  );

  it('is never an exception', () => {
    const anyText = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 90 }),
      fc
        .array(fc.constantFrom(...Array.from("0123456789.,'- $€USDeur")), { maxLength: 16 })
        .map((some) => some.join('')),
    );
    fc.assert(
      fc.property(anyText, (text) => {
        const money = parseMoney(text, EUR);
        return !money.ok || Number.isSafeInteger(money.value.minor);
      }),
      { numRuns: 2000 },
    );
  });
});
