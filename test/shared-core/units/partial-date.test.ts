import { expect, test } from 'vitest';
import { firstDayOf, isWholeDate, type PartialDate, partialDateFromText } from '#core/units/partial-date';

test.each(['2024', '2024-02', '2024-02-29', '0001', '9999-12'])('%s is a day, month or year', (text) => {
  expect(partialDateFromText(text)).toEqual({ ok: true, value: text });
});

test.each([
  '',
  '24',
  '2024-',
  '2024-13',
  '2024-2',
  '2023-02-29',
  '2024-03-05T00',
  '0000',
  ' 2024',
  '03/2024',
])('“%s” is none', (text) => {
  expect(partialDateFromText(text).ok).toBe(false);
});

test('sort as text, a year before its months and a month before its days', () => {
  const dates = ['2024-03-05', '2025', '2024', '2024-03'] as PartialDate[];
  expect(dates.toSorted()).toEqual(['2024', '2024-03', '2024-03-05', '2025']);
  expect(dates.map(firstDayOf)).toEqual(['2024-03-05', '2025-01-01', '2024-01-01', '2024-03-01']);
  expect(dates.map(isWholeDate)).toEqual([true, false, false, false]);
});
