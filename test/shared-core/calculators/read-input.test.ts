import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { describeRead } from '#core/calculators/read-field';
import { readInput } from '#core/calculators/read-input';
import {
  choiceField,
  countField,
  flagField,
  lengthField,
  numberField,
  percentField,
  textField,
} from '#core/domain/fields';
import { outlineSchema } from '#core/domain/outline';
import { settingsSchema, STARTING_SETTINGS } from '#core/domain/workshop';
import type { FieldProblem } from '#core/field-problem';
import { lengthFromInches, lengthFromUnits } from '#core/units/length';

const inches = lengthFromInches;

const schema = z.object({
  strip: lengthField({ title: 'Strip', minimum: inches(1 / 4), maximum: inches(8) }),
  strips: countField({ title: 'Strips', minimum: 1, maximum: 40 }),
  factor: numberField({ title: 'Factor', minimum: 0, maximum: 4 }),
  extra: percentField({ title: 'Extra', minimum: 0, maximum: 100 }),
  fold: choiceField(['single', 'double'], { title: 'Fold' }),
  isTight: flagField({ title: 'Tight' }),
  label: textField({ title: 'Label', minimum: 1, maximum: 20 }),
  outline: outlineSchema,
  hole: z
    .object({ diameter: lengthField({ title: 'Across' }) })
    .readonly()
    .nullable(),
  lines: z
    .array(z.object({ name: textField({ title: 'Name' }), size: lengthField({ title: 'Size' }) }))
    .min(1)
    .max(3),
});

const good = {
  strip: '2 1/2 in',
  strips: 7,
  factor: 2.5,
  extra: 5,
  fold: 'double',
  isTight: false,
  label: 'for the porch',
  outline: { shape: 'circle', diameter: '36' },
  hole: { diameter: 52_832 },
  lines: [{ name: 'one', size: '24 cm' }],
};

function problems(raw: unknown): readonly FieldProblem[] {
  const read = readInput(schema, raw, 'in');
  return read.ok ? [] : read.error;
}

const changed = (change: object) => problems({ ...good, ...change });

describe('reading an input', () => {
  it('accepts lengths as text with a unit, as a plain number in the unit of the form, or as whole units', () => {
    const read = readInput(schema, good, 'in');
    expect(read).toEqual({
      ok: true,
      value: {
        ...good,
        strip: inches(2.5),
        outline: { shape: 'circle', diameter: inches(36) },
        hole: { diameter: inches(6.5) },
        lines: [{ name: 'one', size: lengthFromUnits(24 * 3_200) }],
      },
    });
    const metric = readInput(schema, { ...good, strip: '6' }, 'cm');
    expect(metric.ok && metric.value.strip).toBe(6 * 3_200);
  });

  it('accepts numbers, choices and yes or no as the text of a form', () => {
    const texts = {
      strips: ' 7 ',
      factor: '2,5',
      extra: '5 %',
      fold: ' double',
      isTight: 'no',
      label: '  porch ',
    };
    const read = readInput(schema, { ...good, ...texts }, 'in');
    expect(read.ok && read.value).toMatchObject({
      strips: 7,
      factor: 2.5,
      extra: 5,
      fold: 'double',
      isTight: false,
      label: 'porch',
    });
  });

  it.each<[string, object, FieldProblem]>([
    [
      'a length below the minimum',
      { strip: '1/8 in' },
      { path: ['strip'], read: '"1/8 in"', expected: 'a length from ¼ in to 8 in' },
    ],
    [
      'a length above the maximum',
      { strip: 80_000 },
      { path: ['strip'], read: '80000', expected: 'a length from ¼ in to 8 in' },
    ],
    [
      'text that is not a length',
      { strip: 'wide' },
      { path: ['strip'], read: '"wide"', expected: 'a length from ¼ in to 8 in, such as 9 1/2 or 9.5 in' },
    ],
    [
      'a fraction of a unit',
      { strip: 2.5 },
      {
        path: ['strip'],
        read: '2.5',
        expected: 'a length from ¼ in to 8 in, as text such as 9 1/2 in or as whole 1/320 mm',
      },
    ],
    [
      'a length of the wrong type',
      { strip: true },
      { path: ['strip'], read: 'true', expected: 'a length from ¼ in to 8 in' },
    ],
    [
      'half a strip',
      { strips: 2.5 },
      { path: ['strips'], read: '2.5', expected: 'a whole number from 1 to 40' },
    ],
    [
      'a number out of bounds',
      { factor: -1 },
      { path: ['factor'], read: '-1', expected: 'a number from 0 to 4' },
    ],
    [
      'a percentage that is text',
      { extra: 'some' },
      { path: ['extra'], read: '"some"', expected: 'a number from 0 to 100%' },
    ],
    [
      'an unknown choice',
      { fold: 'triple' },
      { path: ['fold'], read: '"triple"', expected: 'one of: single, double' },
    ],
    [
      'neither yes nor no',
      { isTight: 1 },
      { path: ['isTight'], read: '1', expected: 'yes or no (true or false)' },
    ],
    [
      'empty text',
      { label: ' ' },
      { path: ['label'], read: 'nothing', expected: 'text from 1 to 20 characters' },
    ],
    [
      'an unknown shape',
      { outline: { shape: 'heart' } },
      {
        path: ['outline', 'shape'],
        read: '"heart"',
        expected: 'one of: square, rectangle, rounded, circle, ellipse, hexagon, octagon, sides',
      },
    ],
    [
      'a shape without its size',
      { outline: { shape: 'circle' } },
      { path: ['outline', 'diameter'], read: 'nothing', expected: 'a length from 1/64 in to 393 11/16 in' },
    ],
    [
      'a list instead of a group',
      { outline: [] },
      { path: ['outline'], read: 'a list of 0', expected: 'a group of fields with "shape"' },
    ],
    [
      'an empty list',
      { lines: [] },
      { path: ['lines'], read: 'a list of 0', expected: 'a list from 1 to 3 items' },
    ],
    [
      'a fault deep in a list',
      { lines: [good.lines[0], { name: 'two', size: 0 }] },
      { path: ['lines', 1, 'size'], read: '0', expected: 'a length from 1/64 in to 393 11/16 in' },
    ],
  ])('reports %s with its place, what was read and what is expected', (_what, change, problem) => {
    expect(changed(change)).toEqual([problem]);
  });

  it('writes limits in the units of the form, rounded inward', () => {
    const read = readInput(schema, { ...good, strip: 'x' }, 'cm');
    expect(read.ok ? [] : read.error[0]?.expected).toBe(
      'a length from 6.5 mm to 20.3 cm, such as 24 or 24.5 cm',
    );
  });

  it('reports unknown fields, and all faults together', () => {
    const found = changed({ strpi: 3, strips: 0, fold: 'x' });
    expect(found.map(({ path }) => path.join('.'))).toEqual(['strips', 'fold', 'strpi']);
    expect(found[2]?.expected).toMatch(/^one of the fields strip, strips, factor/);
  });

  it('accepts null only for a field that may be blank', () => {
    expect(changed({ hole: null })).toEqual([]);
    expect(changed({ strip: null })).toEqual([
      { path: ['strip'], read: 'nothing', expected: 'a length from ¼ in to 8 in' },
    ]);
  });

  it('returns its own result unchanged when it reads it again', () => {
    const first = readInput(schema, good, 'in');
    expect(first.ok && readInput(schema, first.value, 'cm')).toEqual(first);
    expect(readInput(settingsSchema, STARTING_SETTINGS, 'in')).toEqual({
      ok: true,
      value: STARTING_SETTINGS,
    });
  });

  it('reports a rule of the whole input as a problem of the field it names', () => {
    const pair = z
      .object({
        from: countField({ title: 'From', minimum: 0, maximum: 9 }),
        to: countField({ title: 'To', minimum: 0, maximum: 9 }),
      })
      .refine(({ from, to }) => from <= to, { path: ['to'], message: 'a number not below the first' });
    const read = readInput(pair, { from: 5, to: 2 }, 'in');
    expect(read).toEqual({
      ok: false,
      error: [{ path: ['to'], read: '2', expected: 'a number not below the first' }],
    });
  });

  it('reports the value at the place such a rule names, and nothing for a place that does not exist', () => {
    const list = z.object({ sizes: z.array(countField({ title: 'Size', minimum: 0, maximum: 9 })).max(3) });
    const readAt = (path: (string | number)[]) => {
      const read = readInput(
        list.refine(() => false, { path, message: 'another size' }),
        { sizes: [4, 7] },
        'in',
      );
      return read.ok ? [] : read.error;
    };
    expect(readAt(['sizes', 1])).toEqual([{ path: ['sizes', 1], read: '7', expected: 'another size' }]);
    const nothing = describeRead(undefined);
    for (const path of [['sizes', 'length'], ['toString'], ['sizes', 5], ['sizes', 0, 'x']])
      expect(readAt(path)).toEqual([{ path, read: nothing, expected: 'another size' }]);
  });

  it('accepts any text if there is no limit, and reports anything else', () => {
    const free = z.object({ note: z.string() });
    expect(readInput(free, { note: ' as cut ' }, 'in')).toEqual({ ok: true, value: { note: 'as cut' } });
    expect(readInput(free, { note: 5 }, 'in')).toMatchObject({
      error: [{ path: ['note'], expected: 'text' }],
    });
  });
});

describe('hostile input', () => {
  const hostile: readonly unknown[] = [
    undefined,
    null,
    NaN,
    Infinity,
    -Infinity,
    1e300,
    -1e300,
    -0,
    Number.MAX_SAFE_INTEGER,
    '',
    ' ',
    '1e300',
    'NaN',
    '1/0',
    '٣',
    '\u0000',
    '🧵'.repeat(500),
    '9'.repeat(10_000_000),
    ' '.repeat(10_000_000),
    'a'.repeat(10_000_000),
    true,
    [],
    [[[[[]]]]],
    {},
    { toString: 'x', valueOf: 3 },
    JSON.parse('{"__proto__": {"polluted": true}, "constructor": 1}'),
    Array.from({ length: 1_000_000 }, () => 1),
    Symbol('x'),
    10n,
    () => 1,
    new Date(0),
    Object.create(null),
  ];

  it.each(Object.keys(good))('gives problems for any value of %s', (field) => {
    for (const value of hostile) {
      const found = problems({ ...good, [field]: value });
      for (const { path, read, expected } of found) {
        expect(path[0]).toBe(field);
        expect(read.length).toBeLessThan(90);
        expect(expected).not.toBe('');
      }
      if (typeof value === 'number' && !Number.isSafeInteger(value)) expect(found).not.toEqual([]);
    }
  });

  it('gives problems for any value instead of the whole input', () => {
    for (const value of hostile) expect(problems(value)).not.toEqual([]);
  });

  it('ignores keys of the prototype', () => {
    const sent: unknown = JSON.parse(JSON.stringify(good).replace('"strips"', '"__proto__"'));
    const found = problems(sent).map(({ path }) => path.join('.'));
    expect(found).toEqual(['strips', '__proto__']);
    expect(problems({ ...good, hasOwnProperty: 1 })[0]?.path).toEqual(['hasOwnProperty']);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('follows the depth of the schema, not of the input', () => {
    let deep: unknown = 1;
    for (let level = 0; level < 100_000; level += 1) deep = [deep];
    expect(changed({ outline: deep, strip: deep }).map(({ path }) => path)).toEqual([['strip'], ['outline']]);
  });

  it('reports at most twenty faults', () => {
    const many = Object.fromEntries(Array.from({ length: 100_000 }, (_, index) => [`field${index}`, index]));
    expect(problems(many).length).toBe(20);
  });

  it('never throws, and accepts only what fits the schema', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.keys(good)),
        fc.anything({ withBigInt: true, withDate: true, withNullPrototype: true }),
        (field, value) => {
          const read = readInput(schema, { ...good, [field]: value }, 'in');
          expect(read.ok ? schema.safeParse(read.value).success : read.error.length > 0).toBe(true);
        },
      ),
      { numRuns: 2_000 },
    );
  });
});
