import { expect, test } from 'vitest';
import { z } from 'zod';
import { boundsInWords, boundsOfSchema, isWithin } from '#core/domain/field-bounds';

test.each([
  ['a number at least', z.number().min(3), { minimum: 3, maximum: null }],
  ['a number at most', z.number().max(9), { minimum: null, maximum: 9 }],
  ['a number between', z.int().min(-2).max(9), { minimum: -2, maximum: 9 }],
  ['a text, by its length', z.string().min(1).max(40), { minimum: 1, maximum: 40 }],
  ['a text with only a maximum length', z.string().max(40), { minimum: null, maximum: 40 }],
  ['a list, by its length', z.array(z.number()).min(2).max(5), { minimum: 2, maximum: 5 }],
  ['a list with only a minimum length', z.array(z.number().max(7)).min(2), { minimum: 2, maximum: null }],
  ['a text with a pattern', z.string().regex(/^a/), { minimum: null, maximum: null }],
  ['a text that starts with a digit', z.string().startsWith('9'), { minimum: null, maximum: null }],
  [
    'a date, whose bounds are not numbers',
    z.date().min(new Date(0)).max(new Date(9)),
    { minimum: null, maximum: null },
  ],
  ['a set, which has no bounds here', z.set(z.number()).min(2).max(5), { minimum: null, maximum: null }],
  ['anything', z.unknown(), { minimum: null, maximum: null }],
])('the bounds of %s', (_name, schema, bounds) => {
  const found = boundsOfSchema(schema);
  expect(found).toEqual(bounds);
  expect(boundsOfSchema(schema)).toBe(found);
});

test('bounds are written in words, and a value on one of them is within', () => {
  const words = (minimum: number | null, maximum: number | null) =>
    boundsInWords({ minimum, maximum }, (value) => `${String(value)} in`);
  expect(words(1, 9)).toBe(' from 1 in to 9 in');
  expect(words(1, null)).toBe(' of 1 in or more');
  expect(words(null, 9)).toBe(' up to 9 in');
  expect(words(null, null)).toBe('');
  const bounds = { minimum: 1, maximum: 9 };
  expect([0, 1, 5, 9, 10].map((value) => isWithin(value, bounds))).toEqual([false, true, true, true, false]);
  expect(isWithin(-1e9, { minimum: null, maximum: 9 })).toBe(true);
  expect(isWithin(1e9, { minimum: 1, maximum: null })).toBe(true);
});
