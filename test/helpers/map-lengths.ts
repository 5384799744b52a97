import { z } from 'zod';
import { discriminatorOf, tagsOfOption } from '#core/calculators/schema-parts';

/** An input with every length in it changed, found by its schema; everything else as it is. */
export function mapLengths(
  schema: z.core.$ZodType,
  value: unknown,
  change: (length: number) => unknown,
): unknown {
  if (schema instanceof z.ZodReadonly) return mapLengths(schema.def.innerType, value, change);
  if (schema instanceof z.ZodNullable)
    return value === null ? null : mapLengths(schema.def.innerType, value, change);
  if (schema instanceof z.ZodArray)
    return asList(value).map((item) => mapLengths(schema.element, item, change));
  if (schema instanceof z.ZodObject) {
    const fields = Object.entries<z.core.$ZodType>(schema.shape);
    const given = new Map(Object.entries(value as object));
    return Object.fromEntries(
      fields.map(([name, field]) => [name, mapLengths(field, given.get(name), change)]),
    );
  }
  if (schema instanceof z.ZodDiscriminatedUnion) {
    const tag = discriminatorOf(schema.def) ?? '';
    const given = new Map<string, unknown>(Object.entries(value as object)).get(tag);
    const own = schema.options.find((option) => tagsOfOption(option, tag).some((known) => known === given));
    return own === undefined ? value : mapLengths(own, value, change);
  }
  const isLength = z.globalRegistry.get(schema)?.['kind'] === 'length';
  return isLength && typeof value === 'number' ? change(value) : value;
}

function asList(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
