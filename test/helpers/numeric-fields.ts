import type { z } from 'zod';
import { describeSchema, type FieldDescription, type NamedField } from '#core/domain/describe-schema';

/** A number of an input: where it is, and up to what it may be raised. */
export interface NumericField {
  readonly path: readonly (string | number)[];
  readonly value: number;
  readonly maximum: number;
  readonly isWhole: boolean;
}

/** Every number in an input, found by its schema. */
export function numericFields(schema: z.core.$ZodType, input: object): readonly NumericField[] {
  return fieldsIn(describeSchema(schema), input, []);
}

/** The same input with one of its numbers changed. */
export function withNumber(value: unknown, path: NumericField['path'], number: number): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return number;
  if (Array.isArray(value))
    return value.map((item: unknown, at) => (at === key ? withNumber(item, rest, number) : item));
  return Object.fromEntries(
    Object.entries(value as object).map(([name, inner]: [string, unknown]) => [
      name,
      name === key ? withNumber(inner, rest, number) : inner,
    ]),
  );
}

function fieldsIn(
  field: FieldDescription,
  value: unknown,
  path: NumericField['path'],
): readonly NumericField[] {
  switch (field.form) {
    case 'length':
    case 'count':
    case 'number':
    case 'percent':
    case 'minor':
    case 'weight':
      if (typeof value !== 'number') return [];
      return [
        {
          path,
          value,
          maximum: field.maximum ?? value,
          isWhole: field.form === 'length' || field.form === 'count',
        },
      ];
    case 'rows':
      return (Array.isArray(value) ? value : []).flatMap((item: unknown, at) =>
        fieldsIn(field.row, item, [...path, at]),
      );
    case 'group':
      return namedFieldsIn(field.fields, value, path);
    case 'one-of': {
      const tag = new Map<string, unknown>(Object.entries(value ?? {})).get(field.key);
      const variant = field.variants.find(({ values }) => values.some((one) => one === tag));
      return variant === undefined ? [] : namedFieldsIn(variant.fields, value, path);
    }
    case 'choice':
    case 'flag':
    case 'date':
    case 'text':
      return [];
  }
}

function namedFieldsIn(
  fields: readonly NamedField[],
  value: unknown,
  path: NumericField['path'],
): readonly NumericField[] {
  const inner = new Map<string, unknown>(Object.entries(value ?? {}));
  return fields.flatMap(({ key, field }) => fieldsIn(field, inner.get(key), [...path, key]));
}
