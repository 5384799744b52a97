import { z } from 'zod';
import { boundsOfSchema } from './field-bounds';
import type { FieldKind } from '#core/domain/fields';

/** The fields of a schema with their words and limits, for a form and for reading an input. */
export type FieldDescription = FieldWording &
  (
    | {
        readonly form: 'length' | 'count' | 'number' | 'percent' | 'minor' | 'weight';
        readonly minimum: number | undefined;
        readonly maximum: number | undefined;
        readonly unit: string | undefined;
      }
    | { readonly form: 'choice'; readonly values: readonly (string | number)[] }
    | { readonly form: 'flag' | 'date' }
    | {
        readonly form: 'text';
        readonly minimum: number | undefined;
        readonly maximum: number | undefined;
        readonly isFabricName: boolean;
      }
    | { readonly form: 'group'; readonly fields: readonly NamedField[] }
    | {
        readonly form: 'rows';
        readonly row: FieldDescription;
        readonly minimum: number;
        /** Infinity if there is no limit. */
        readonly maximum: number;
      }
    | { readonly form: 'one-of'; readonly key: string; readonly variants: readonly Variant[] }
  );

interface FieldWording {
  /** From the schema, or else from the name of the field. */
  readonly title: string;
  readonly help: string | undefined;
  /** May be left blank. */
  readonly isOptional: boolean;
  /** What a field that was added later is read as where it is missing. */
  readonly startsAs?: string | number | boolean;
  /** The value of a blank field. */
  readonly empty: 'null' | 'absent';
  /** Rarely changed. */
  readonly isSeldom: boolean;
}

export interface NamedField {
  readonly key: string;
  readonly field: FieldDescription;
}

/** One variant of an object, named by the value of one key. */
export interface Variant {
  readonly value: string;
  /** All values of the key for this variant; mostly one. */
  readonly values: readonly (string | number)[];
  /** Without the key. */
  readonly fields: readonly NamedField[];
  /** The values to start with; empty if the schema has none. */
  readonly example: Readonly<Record<string, unknown>>;
}

interface Wrapped extends Pick<FieldWording, 'startsAs'> {
  readonly core: z.core.$ZodType;
  readonly meta: Readonly<Record<string, unknown>>;
  readonly isOptional: boolean;
  readonly empty: 'null' | 'absent';
}

/** A schema never changes, so it is described once. */
const DESCRIPTIONS = new WeakMap<z.core.$ZodType, FieldDescription>();

/** Throws RangeError for a kind of schema that it cannot describe, so that a new kind of field is noticed at once. */
export function describeSchema(schema: z.core.$ZodType): FieldDescription {
  const known = DESCRIPTIONS.get(schema);
  if (known !== undefined) return known;
  const description = describeField(schema, '');
  DESCRIPTIONS.set(schema, description);
  return description;
}

function describeField(schema: z.core.$ZodType, name: string): FieldDescription {
  const { core, meta, isOptional, empty, startsAs } = unwrap(schema);
  const words: FieldWording = {
    title: textOf(meta['title']) ?? wordsOfName(name),
    help: textOf(meta['description']),
    isOptional,
    empty,
    isSeldom: meta['isSeldom'] === true,
    ...(startsAs === undefined ? {} : { startsAs }),
  };
  if (core instanceof z.ZodObject) return { ...words, form: 'group', fields: describeFields(core) };
  if (core instanceof z.ZodArray)
    return { ...words, form: 'rows', row: describeField(core.element, ''), ...listLimits(core) };
  if (core instanceof z.ZodDiscriminatedUnion) return { ...words, form: 'one-of', ...describeVariants(core) };
  if (core instanceof z.ZodEnum) return { ...words, form: 'choice', values: core.options };
  if (core instanceof z.ZodUnion) return { ...words, form: 'choice', values: core.options.flatMap(valuesOf) };
  if (core instanceof z.ZodLiteral) return { ...words, form: 'choice', values: valuesOf(core) };
  if (core instanceof z.ZodBoolean) return { ...words, form: 'flag' };
  if (core instanceof z.ZodNumber) return { ...words, ...describeNumber(core, meta) };
  if (core instanceof z.ZodString) {
    return meta['kind'] === 'date'
      ? { ...words, form: 'date' }
      : {
          ...words,
          form: 'text',
          minimum: core.minLength ?? undefined,
          maximum: core.maxLength ?? undefined,
          isFabricName: meta['isFabricName'] === true,
        };
  }
  throw new RangeError(`No form for the field ${name}`);
}

function describeFields(object: z.ZodObject): readonly NamedField[] {
  return shapeEntries(object).map(([key, field]) => ({ key, field: describeField(field, key) }));
}

/** Zod types the fields of a plain `ZodObject` as any. */
function shapeEntries(object: z.ZodObject): readonly (readonly [string, z.core.$ZodType])[] {
  const shape: Readonly<Record<string, z.core.$ZodType>> = object.shape;
  return Object.entries(shape);
}

function describeVariants(union: z.ZodDiscriminatedUnion): {
  readonly key: string;
  readonly variants: readonly Variant[];
} {
  const key = union.def.discriminator;
  const variants = union.options.map((option) => {
    const { core, meta } = unwrap(option);
    if (!(core instanceof z.ZodObject)) throw new RangeError(`A variant of ${key} is not an object`);
    const tag = Object.fromEntries(shapeEntries(core))[key];
    if (tag === undefined) throw new RangeError(`A variant without ${key}`);
    const values = valuesOf(tag);
    return {
      value: String(values[0]),
      values,
      fields: describeFields(core).filter((field) => field.key !== key),
      example: firstExample(meta),
    };
  });
  return { key, variants };
}

function firstExample(meta: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const examples = meta['examples'];
  const first: unknown = Array.isArray(examples) ? examples[0] : undefined;
  return typeof first === 'object' && first !== null ? Object.fromEntries(Object.entries(first)) : {};
}

function describeNumber(number: z.ZodNumber, meta: Readonly<Record<string, unknown>>) {
  const { minimum, maximum } = boundsOfSchema(number);
  const kind = meta['kind'] as FieldKind | undefined;
  const isNamed =
    kind === 'length' || kind === 'count' || kind === 'percent' || kind === 'minor' || kind === 'weight';
  return {
    form: isNamed ? kind : number.format === 'safeint' ? ('count' as const) : ('number' as const),
    minimum: minimum ?? undefined,
    maximum: maximum ?? undefined,
    unit: textOf(meta['unit']),
  };
}

/** Removes the wrappers that make a field read-only or optional. The words of the outermost wrapper count. */
function unwrap(schema: z.core.$ZodType): Wrapped {
  const meta = z.globalRegistry.get(schema) ?? {};
  if (schema instanceof z.ZodReadonly || schema instanceof z.ZodNonOptional) {
    const inner = unwrap(schema.def.innerType);
    return { ...inner, meta: { ...inner.meta, ...meta } };
  }
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) {
    const { core, meta: inner } = unwrap(schema.def.innerType);
    const empty = schema instanceof z.ZodNullable ? 'null' : 'absent';
    return { core, meta: { ...inner, ...meta }, isOptional: true, empty, ...startOf(schema) };
  }
  return { core: schema, meta, isOptional: false, empty: 'absent' };
}

function startOf(schema: z.core.$ZodType): Pick<FieldWording, 'startsAs'> {
  const value = schema instanceof z.ZodDefault ? schema.def.defaultValue : undefined;
  const isPlain = typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean';
  return isPlain ? { startsAs: value } : {};
}

/** The strings and numbers of an enum or a literal. */
function valuesOf(schema: z.core.$ZodType): readonly (string | number)[] {
  const { core } = unwrap(schema);
  const all: readonly unknown[] =
    core instanceof z.ZodEnum ? core.options : core instanceof z.ZodLiteral ? [...core.values] : [];
  const values = all.filter((value) => typeof value === 'string' || typeof value === 'number');
  if (values.length === 0) throw new RangeError('Not a choice of strings or numbers');
  return values;
}

function listLimits(list: z.ZodArray): { readonly minimum: number; readonly maximum: number } {
  const { minimum, maximum } = boundsOfSchema(list);
  return { minimum: minimum ?? 0, maximum: maximum ?? Infinity };
}

function textOf(value: unknown): string | undefined {
  return typeof value === 'string' && value !== '' ? value : undefined;
}

/** `stripWidth` becomes `Strip width`, for a field without a title of its own. */
function wordsOfName(name: string): string {
  const spaced = name
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/[-_]/g, ' ')
    .toLowerCase();
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}
