import { z } from 'zod';
import { describe, expect, test } from 'vitest';
import { checkInput } from '#core/contract/check-input';

const schema = z.object({
  name: z.string().trim().min(1).max(5),
  count: z.int().min(2).max(9),
  items: z.array(z.string()).min(1).max(2),
  kind: z.enum(['a', 'b']),
});
const GOOD = { name: 'moss', count: 3, items: ['x'], kind: 'a' };

describe('an input', () => {
  test('that fits is read, with its text trimmed', () => {
    expect(checkInput(schema, { ...GOOD, name: ' moss ' })).toEqual({ ok: true, value: GOOD });
  });

  test.each<[string, object, object]>([
    ['a missing field', { name: undefined }, { path: ['name'], fault: { code: 'empty' } }],
    ['an empty text', { name: '' }, { path: ['name'], fault: { code: 'empty' } }],
    ['a text of spaces', { name: '   ' }, { path: ['name'], fault: { code: 'empty' } }],
    ['a null', { count: null }, { path: ['count'], fault: { code: 'empty' } }],
    ['a long text', { name: 'mosses' }, { path: ['name'], fault: { code: 'text-too-long', maximum: 5 } }],
    ['a small number', { count: 1 }, { path: ['count'], fault: { code: 'too-small', minimum: 2 } }],
    ['a large number', { count: 10 }, { path: ['count'], fault: { code: 'too-large', maximum: 9 } }],
    ['a fraction', { count: 2.5 }, { path: ['count'], fault: { code: 'not-whole' } }],
    ['text for a number', { count: 'three' }, { path: ['count'], fault: { code: 'unreadable' } }],
    ['not a number', { count: Number.NaN }, { path: ['count'], fault: { code: 'unreadable' } }],
    ['too few items', { items: [] }, { path: ['items'], fault: { code: 'too-few', minimum: 1 } }],
    [
      'too many items',
      { items: ['x', 'y', 'z'] },
      { path: ['items'], fault: { code: 'too-many', maximum: 2 } },
    ],
    ['an unknown choice', { kind: 'c' }, { path: ['kind'], fault: { code: 'unreadable' } }],
    [
      'a zero character deep inside',
      { items: ['x', 'y\0'] },
      { path: ['items', '1'], fault: { code: 'zero-character' } },
    ],
  ])('with %s is refused by the field and its fault', (_what, changes, field) => {
    expect(checkInput(schema, { ...GOOD, ...changes })).toEqual({
      ok: false,
      error: { code: 'invalid-input', fields: [field] },
    });
  });

  test('that is wrong as a whole is refused without a field', () => {
    expect(checkInput(schema, 'nothing like it')).toEqual({
      ok: false,
      error: { code: 'invalid-input', fields: [{ path: [], fault: { code: 'unreadable' } }] },
    });
  });
});
