import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { boundsInWords, boundsOfSchema, isWithin } from '#core/domain/field-bounds';
import {
  describeRead,
  readChoiceField,
  readFlagField,
  readLengthField,
  readNumberField,
  readWeightField,
} from '#core/calculators/read-field';
import { readInput } from '#core/calculators/read-input';
import { lengthField } from '#core/domain/fields';
import { lengthFromInches, lengthFromUnits, MAX_LENGTH_UNITS } from '#core/units/length';

const FREE = { minimum: null, maximum: null };

const choices = () => z.union([z.literal(4), z.literal('eight')]);

it('a length without a minimum is not negative', () => {
  const free = z.number().meta({ kind: 'length' });
  expect(readLengthField(boundsOfSchema(free), '5 in', 'in')).toEqual({
    ok: true,
    value: lengthFromInches(5),
  });
  expect(readLengthField(boundsOfSchema(free), '-5 in', 'in')).toMatchObject({ error: { read: '"-5 in"' } });
});

describe('the bounds of a schema', () => {
  it.each([
    [z.int().min(2).max(9), { minimum: 2, maximum: 9 }],
    [z.number().min(2), { minimum: 2, maximum: null }],
    [z.number().max(9), { minimum: null, maximum: 9 }],
    [z.number(), { minimum: null, maximum: null }],
    [z.boolean(), { minimum: null, maximum: null }],
    [z.string().trim().min(1).max(20), { minimum: 1, maximum: 20 }],
    [z.string().regex(/x/), { minimum: null, maximum: null }],
    [z.array(z.number()).min(3).max(60), { minimum: 3, maximum: 60 }],
    [z.array(z.number()).max(4), { minimum: null, maximum: 4 }],
  ])('are those of schema %#', (schema, bounds) => {
    expect(boundsOfSchema(schema)).toEqual(bounds);
    expect(boundsOfSchema(schema)).toBe(boundsOfSchema(schema));
  });

  it('are written, also if one is missing', () => {
    const words = (minimum: number | null, maximum: number | null) =>
      boundsInWords({ minimum, maximum }, String);
    expect([words(1, 9), words(1, null), words(null, 9), words(null, null)]).toEqual([
      ' from 1 to 9',
      ' of 1 or more',
      ' up to 9',
      '',
    ]);
  });

  it('contain a value on them and none beyond; a missing one has no end', () => {
    const within = (value: number, minimum: number | null, maximum: number | null) => {
      return isWithin(value, { minimum, maximum });
    };
    expect([within(1, 1, 9), within(9, 1, 9), within(0, 1, 9), within(10, 1, 9)]).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect([within(-1e9, null, 9), within(1e9, 1, null), within(-1, null, null)]).toEqual([true, true, true]);
    expect([within(-1, 1, null), within(10, null, 9)]).toEqual([false, false]);
  });
});

describe('reading one field', () => {
  it.each<[unknown, string]>([
    [undefined, 'nothing'],
    [null, 'nothing'],
    ['  ', 'nothing'],
    [' two\nwords ', '"two words"'],
    [-0.5, '-0.5'],
    [false, 'false'],
    [[1, 2], 'a list of 2'],
    [{ a: 1 }, 'a group of fields'],
    [10n, 'a bigint'],
    [() => 1, 'a function'],
  ])('describes %s in words', (raw, words) => {
    expect(describeRead(raw)).toBe(words);
  });

  it('reads yes and no, true and false', () => {
    const read = (raw: unknown) => {
      const flag = readFlagField(raw);
      return flag.ok ? flag.value : null;
    };
    expect([true, 'yes', 'true'].map(read)).toEqual([true, true, true]);
    expect([false, 'no', 'false'].map(read)).toEqual([false, false, false]);
    expect([0, 'YES', ''].map(read)).toEqual([null, null, null]);
  });

  it('reads numbers from text that is clearly a number', () => {
    const read = (raw: unknown, isWhole = false) => {
      const number = readNumberField({ bounds: FREE, isWhole, unit: '' }, raw);
      return number.ok ? number.value : number.error.expected;
    };
    expect(['5', '+5', '-2.5', '.5', '5.', '2,5', '5 %', '5%'].map((raw) => read(raw))).toEqual([
      5, 5, -2.5, 0.5, 5, 2.5, 5, 5,
    ]);
    expect(['', '5 5', '%', '1e3', '0x10', '5%%', 'Infinity', '5 in'].map((raw) => read(raw))).toEqual(
      Array.from({ length: 8 }, () => 'a number'),
    );
    expect([read(`5${' '.repeat(39)}`), read(`5${' '.repeat(40)}`)]).toEqual([5, 'a number']);
    expect(Object.is(read(-0), 0)).toBe(true);
    expect([read(2.5, true), read(2, true), read(2.5)]).toEqual(['a whole number', 2, 2.5]);
  });

  it('names the unit of a number', () => {
    expect(readNumberField({ bounds: FREE, isWhole: true, unit: ' days' }, 2.5)).toMatchObject({
      error: { expected: 'a whole number days' },
    });
  });

  it('reads one of several values, or the only one', () => {
    expect(readChoiceField([4, 'eight'], ' 4 ')).toEqual({ ok: true, value: 4 });
    expect(readChoiceField([4, 'eight'], 'eight')).toEqual({ ok: true, value: 'eight' });
    expect(readChoiceField([4, 'eight'], ['eight'])).toMatchObject({
      error: { expected: 'one of: 4, eight' },
    });
    expect(readChoiceField(['only'], 'other')).toMatchObject({ error: { expected: 'only' } });
  });

  it('writes limits of a length in inches for feet and yards too', () => {
    const field = lengthField({ title: 'x', minimum: lengthFromInches(1), maximum: lengthFromInches(2) });
    const expected = (unit: 'in' | 'ft' | 'yd' | 'mm') => {
      const read = readLengthField(boundsOfSchema(field), true, unit);
      return read.ok ? '' : read.error.expected;
    };
    expect([expected('in'), expected('ft'), expected('yd')]).toEqual(
      Array.from({ length: 3 }, () => 'a length from 1 in to 2 in'),
    );
    expect(expected('mm')).toBe('a length from 2.6 cm to 5 cm');
    const any = z.int();
    expect(readLengthField(boundsOfSchema(any), MAX_LENGTH_UNITS, 'in').ok).toBe(true);
    expect(readLengthField(boundsOfSchema(any), MAX_LENGTH_UNITS + 1, 'in').ok).toBe(false);
  });
});

describe('a weight', () => {
  const upTo = { minimum: 0, maximum: 500 };

  it.each([
    ['6 oz', 170.097],
    ['0.25 kg', 250],
    [123.4, 123.4],
    [-0, 0],
  ])('is read from %j as %d g', (raw, grams) => {
    expect(readWeightField(upTo, raw, 'in')).toEqual({ ok: true, value: grams });
  });

  it('without a unit goes by the unit of lengths', () => {
    expect(readWeightField(upTo, '10', 'in')).toMatchObject({ ok: true, value: 283.495 });
    expect(readWeightField(upTo, '10', 'cm')).toMatchObject({ ok: true, value: 10 });
  });

  it.each([
    ['heavy', '"heavy"', 'a weight from 0 g to 500 g, such as 6 oz or 1 lb 2 oz'],
    ['2 lb', '"2 lb"', 'a weight from 0 g to 500 g'],
    [501, '501', 'a weight from 0 g to 500 g'],
    [Number.NaN, 'NaN', 'a weight from 0 g to 500 g'],
    [null, 'nothing', 'a weight from 0 g to 500 g'],
  ])('is not %j', (raw, read, expected) => {
    expect(readWeightField(upTo, raw, 'in')).toEqual({ ok: false, error: { read, expected } });
  });
});

describe('a length with a sign', () => {
  const place = lengthField({ title: 'To the right', minimum: lengthFromUnits(-1 * lengthFromInches(9)) });

  it('is read from text if negative lengths are allowed', () => {
    expect(readLengthField(boundsOfSchema(place), '-2 1/2', 'in')).toEqual({ ok: true, value: -20_320 });
    expect(readLengthField(boundsOfSchema(place), '−1', 'in')).toEqual({ ok: true, value: -8_128 });
    expect(readLengthField(boundsOfSchema(place), '2', 'in')).toEqual({ ok: true, value: 16_256 });
    expect(readLengthField(boundsOfSchema(place), '-9', 'in').ok).toBe(true);
    expect(readLengthField(boundsOfSchema(place), '-9 1/8', 'in').ok).toBe(false);
  });

  it('is refused everywhere else', () => {
    const side = lengthField({ title: 'Side', minimum: lengthFromUnits(0) });
    expect(readLengthField(boundsOfSchema(side), '-2', 'in').ok).toBe(false);
    expect(readLengthField(boundsOfSchema(lengthField({ title: 'Side' })), '-2', 'in').ok).toBe(false);
  });
});

describe('reading an unusual input', () => {
  it('leaves out optional fields and fills in defaults', () => {
    const schema = z.object({
      note: z.string().optional(),
      times: z.int().default(3),
      size: z.int().optional(),
    });
    expect(readInput(schema, {}, 'in')).toEqual({ ok: true, value: { times: 3 } });
    expect(readInput(schema, { note: ' x ', times: '4', size: '5' }, 'in')).toEqual({
      ok: true,
      value: { note: 'x', times: 4, size: 5 },
    });
    expect(readInput(schema, { times: 'x' }, 'in')).toMatchObject({
      ok: false,
      error: [{ path: ['times'] }],
    });
    const read = readInput(schema, { note: undefined }, 'in');
    expect(read.ok && Object.keys(read.value)).toEqual(['times']);
  });

  it('accepts a list up to its limit', () => {
    const schema = z.object({ sides: z.array(z.int()).min(1).max(3) });
    expect(readInput(schema, { sides: [1, 2, 3] }, 'in').ok).toBe(true);
    expect(readInput(schema, { sides: [1, 2, 3, 4] }, 'in').ok).toBe(false);
    const endless = z.object({ sides: z.array(z.int()) });
    expect(readInput(endless, { sides: Array.from({ length: 1_001 }, () => 1) }, 'in')).toMatchObject({
      error: [{ expected: 'a list up to 1000 items' }],
    });
  });

  it('reads a variant by any of its tags, and a union of values as a choice', () => {
    const schema = z.object({
      line: z.discriminatedUnion('by', [z.object({ by: z.enum(['area', 'edge']), rate: z.int() })]),
      step: choices(),
    });
    const good = { line: { by: 'edge', rate: 2 }, step: '4' };
    expect(readInput(schema, good, 'in')).toEqual({ ok: true, value: { ...good, step: 4 } });
    expect(readInput(schema, { ...good, step: 5 }, 'in')).toMatchObject({
      error: [{ expected: 'one of: 4, eight' }],
    });
    expect(readInput(schema, { ...good, line: { by: 'inch' } }, 'in')).toMatchObject({
      error: [{ path: ['line', 'by'], expected: 'one of: area, edge' }],
    });
  });

  it('reports the value at which a rule of the whole input fails, also in lists, at most twenty times', () => {
    const odd = z.object({
      sizes: z.array(z.int().refine((size) => size % 2 === 1, 'an odd number')).max(50),
    });
    const read = readInput(odd, { sizes: [1, 2] }, 'in');
    expect(read).toEqual({
      ok: false,
      error: [{ path: ['sizes', 1], read: '2', expected: 'an odd number' }],
    });
    const many = readInput(odd, { sizes: Array.from({ length: 50 }, () => 2) }, 'in');
    expect(many.ok ? 0 : many.error.length).toBe(20);
    const nowhere = z
      .object({ size: z.int() })
      .refine(() => false, { path: ['size', 'deep'], message: 'no' });
    expect(readInput(nowhere, { size: 1 }, 'in')).toMatchObject({
      error: [{ path: ['size', 'deep'], read: 'nothing' }],
    });
  });

  it('throws for a schema with a kind of field that cannot be described, so that it is noticed at once', () => {
    const schema = z.object({ when: z.date() });
    expect(() => readInput(schema, { when: new Date(0) }, 'in')).toThrow(RangeError);
  });
});
