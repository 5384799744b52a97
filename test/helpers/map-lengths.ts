import type { z } from 'zod';
import { describeSchema, type FieldDescription, type NamedField } from '#core/domain/describe-schema';

type Change = (length: number) => unknown;

/** An input with every length in it changed, found by its schema; everything else stays as it is. */
export function mapLengths(schema: z.core.$ZodType, value: unknown, change: Change): unknown {
  return mapField(describeSchema(schema), value, change);
}

function mapField(field: FieldDescription, value: unknown, change: Change): unknown {
  if (value === null || value === undefined) return value;
  if (field.form === 'rows') return asList(value).map((item) => mapField(field.row, item, change));
  if (field.form === 'group') return mapFields(field.fields, value, change);
  if (field.form === 'one-of') {
    const tag = new Map<string, unknown>(Object.entries(value)).get(field.key);
    const variant = field.variants.find(({ values }) => values.some((one) => one === tag));
    return variant === undefined ? value : mapFields(variant.fields, value, change);
  }
  return field.form === 'length' && typeof value === 'number' ? change(value) : value;
}

function mapFields(fields: readonly NamedField[], value: object, change: Change): unknown {
  const byKey = new Map(fields.map(({ key, field }) => [key, field]));
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]: [string, unknown]) => {
      const field = byKey.get(key);
      return [key, field === undefined ? inner : mapField(field, inner, change)];
    }),
  );
}

function asList(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
