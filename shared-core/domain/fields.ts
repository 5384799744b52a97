import { z } from 'zod';
import { type Length, lengthFromMeters, lengthFromInches } from '#core/units/length';

/**
 * Each function makes the schema of one kind of field. A field carries its own words (`title`, `description`) and its `kind`, so
 * that forms, the command line and the JSON schema of a calculator all come from one place.
 */
export type FieldKind =
  'length' | 'count' | 'number' | 'percent' | 'minor' | 'weight' | 'choice' | 'flag' | 'text' | 'date';

export interface FieldWords {
  readonly title: string;
  readonly help?: string;
  /** Rarely changed: a form tucks it away. */
  readonly isSeldom?: boolean;
}

interface FieldMeta {
  readonly title: string;
  readonly description?: string;
  readonly kind: FieldKind;
  /** The unit of a bare number typed into the field; for `number` fields the words shown beside it. */
  readonly unit?: string;
  readonly isSeldom?: boolean;
  /** The text is the name of a fabric, so those of the stash are suggested. */
  readonly isFabricName?: boolean;
}

interface LengthFieldOptions extends FieldWords {
  readonly minimum?: Length;
  readonly maximum?: Length;
}

/** 10 m: larger than any quilt top; a bolt of fabric has its own maximum. */
const WIDEST_PIECE = lengthFromMeters(10);
const NARROWEST_PIECE = lengthFromInches(1 / 64);

/** A length in whole 1/320 mm, from 1/64 in to 10 m by default. */
export function lengthField(options: LengthFieldOptions): z.ZodType<Length, Length> {
  const { minimum = NARROWEST_PIECE, maximum = WIDEST_PIECE } = options;
  const schema = z
    .int()
    .min(minimum)
    .max(maximum)
    .meta({ ...words(options), kind: 'length', unit: '1/320 mm' } satisfies FieldMeta);
  return schema as unknown as z.ZodType<Length, Length>;
}

interface NumberFieldOptions extends FieldWords {
  readonly minimum: number;
  readonly maximum: number;
  readonly unit?: string;
}

/** A whole number of things. */
export function countField(options: NumberFieldOptions): z.ZodType<number, number> {
  return z
    .int()
    .min(options.minimum)
    .max(options.maximum)
    .meta({ ...words(options), kind: 'count', ...unitOf(options) } satisfies FieldMeta);
}

/** A plain number that is not a length: a rate, a factor, a ratio. */
export function numberField(options: NumberFieldOptions): z.ZodType<number, number> {
  return z
    .number()
    .min(options.minimum)
    .max(options.maximum)
    .meta({ ...words(options), kind: 'number', ...unitOf(options) } satisfies FieldMeta);
}

/** Percent: 5 is 5%. */
export function percentField(options: NumberFieldOptions): z.ZodType<number, number> {
  return z
    .number()
    .min(options.minimum)
    .max(options.maximum)
    .meta({ ...words(options), kind: 'percent', unit: '%' } satisfies FieldMeta);
}

/** An amount or rate in minor units of the workshop's currency; fractions of a cent are allowed in rates. */
export function minorField(options: NumberFieldOptions): z.ZodType<number, number> {
  return z
    .number()
    .min(options.minimum)
    .max(options.maximum)
    .meta({ ...words(options), kind: 'minor', ...unitOf(options) } satisfies FieldMeta);
}

/** A weight in grams. */
export function weightField(options: NumberFieldOptions): z.ZodType<number, number> {
  return z
    .number()
    .min(options.minimum)
    .max(options.maximum)
    .meta({ ...words(options), kind: 'weight', unit: 'g' } satisfies FieldMeta);
}

/** One of a closed list of values. */
export function choiceField<const Values extends readonly [string, ...string[]]>(
  values: Values,
  options: FieldWords,
): z.ZodType<Values[number], Values[number]> {
  return z.enum(values).meta({ ...words(options), kind: 'choice' } satisfies FieldMeta);
}

export function flagField(options: FieldWords): z.ZodType<boolean, boolean> {
  return z.boolean().meta({ ...words(options), kind: 'flag' } satisfies FieldMeta);
}

/**
 * A field added after answers had been saved without it: read as `value` where it is missing. It keeps its words, and is typed like
 * any other field. Choose the value that leaves such an answer as it was.
 */
export function withDefault<Value extends boolean | number | string>(
  field: z.ZodType<Value, Value>,
  value: Value,
): z.ZodType<Value, Value> {
  const later = new z.ZodDefault({ type: 'default', innerType: field, defaultValue: value });
  return later.meta(field.meta() ?? {}) as unknown as z.ZodType<Value, Value>;
}

interface TextFieldOptions extends FieldWords {
  readonly isFabricName?: boolean;
  readonly minimum?: number;
  readonly maximum?: number;
}

/** Text trimmed at both ends; up to 200 characters by default. */
export function textField(options: TextFieldOptions): z.ZodType<string, string> {
  return z
    .string()
    .trim()
    .min(options.minimum ?? 0)
    .max(options.maximum ?? 200)
    .meta({
      ...words(options),
      kind: 'text',
      ...(options.isFabricName === true ? { isFabricName: true } : {}),
    } satisfies FieldMeta);
}

function words({
  title,
  help,
  isSeldom = false,
}: FieldWords): Pick<FieldMeta, 'title' | 'description' | 'isSeldom'> {
  return {
    title,
    ...(help === undefined ? {} : { description: help }),
    ...(isSeldom ? { isSeldom } : {}),
  };
}

function unitOf(options: { readonly unit?: string }): { readonly unit?: string } {
  return options.unit === undefined ? {} : { unit: options.unit };
}
