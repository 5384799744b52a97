import { z } from 'zod';
import type { FieldKind } from '#core/domain/fields';

/** The library's own closed union of what a schema may be. */
export function definitionOf(schema: z.core.$ZodType): z.core.$ZodTypes['_zod']['def'] {
  return (schema as z.core.$ZodTypes)._zod.def;
}

/** The field that tells the variants of a union apart; null for any other union. */
export function discriminatorOf(def: z.core.$ZodUnionDef): string | null {
  return 'discriminator' in def && typeof def.discriminator === 'string' ? def.discriminator : null;
}

/** The closed list of values of an enum, a literal or a union of literals; null for anything else. */
export function choicesOfSchema(schema: z.core.$ZodType): readonly (string | number)[] | null {
  const def = definitionOf(schema);
  if (def.type === 'enum') return Object.values(def.entries);
  if (def.type === 'literal') {
    return def.values.filter((value) => typeof value === 'string' || typeof value === 'number');
  }
  if (def.type !== 'union' || discriminatorOf(def) !== null) return null;
  const choices = def.options.map(choicesOfSchema);
  return choices.every((some) => some !== null) ? choices.flat() : null;
}

/** The values of the field `key` by which this variant is known. */
export function tagsOfOption(option: z.core.$ZodType, key: string): readonly (string | number)[] {
  const def = definitionOf(option);
  if (def.type === 'readonly') return tagsOfOption(def.innerType, key);
  const field = def.type === 'object' ? def.shape[key] : undefined;
  return field === undefined ? [] : (choicesOfSchema(field) ?? []);
}

export interface NumberMeta {
  readonly kind: FieldKind | undefined;
  /** With a space before it, or empty. */
  readonly unit: string;
}

/** What the library says of a schema never changes, and asking it costs more than all the rest of reading a field. */
const NUMBER_META = new WeakMap<z.core.$ZodType, NumberMeta>();

/** What a number is a number of, from its own words. */
export function metaOfNumber(schema: z.core.$ZodType): NumberMeta {
  const known = NUMBER_META.get(schema);
  if (known !== undefined) return known;
  const meta = z.globalRegistry.get(schema);
  const unit = typeof meta?.['unit'] === 'string' ? ` ${meta['unit']}` : '';
  const found: NumberMeta = { kind: meta?.['kind'] as FieldKind | undefined, unit };
  NUMBER_META.set(schema, found);
  return found;
}
