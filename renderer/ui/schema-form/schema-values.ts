import type { FieldDescription, NamedField, Variant } from '#core/domain/describe-schema';

export type FieldPath = readonly (string | number)[];

/** A problem, with the path of its field. */
export interface PathProblem {
  readonly path: FieldPath;
  readonly words: string;
}

/** The props of one field of any kind. */
export interface SchemaFieldProps {
  readonly field: FieldDescription;
  readonly value: unknown;
  readonly fallback?: unknown;
  readonly path: FieldPath;
  readonly problems: readonly PathProblem[];
  readonly onChange: (value: unknown) => void;
}

/** The problem of exactly this path, or null. */
export function problemAt(problems: readonly PathProblem[], path: FieldPath): string | null {
  const found = problems.find((problem) => problem.path.join('.') === path.join('.'));
  return found?.words ?? null;
}

/** The value of a new row or part: the smallest number allowed, the first choice, an empty text; or what the field itself starts as. */
export function startingValue(field: FieldDescription): unknown {
  if (field.startsAs !== undefined) return field.startsAs;
  if (field.isOptional) return field.empty === 'null' ? null : undefined;
  switch (field.form) {
    case 'length':
    case 'count':
    case 'number':
    case 'percent':
    case 'minor':
    case 'weight':
      return field.minimum ?? 0;
    case 'choice':
      return field.values[0];
    case 'flag':
      return false;
    case 'text':
    case 'date':
      return '';
    case 'group':
      return startingObject(field.fields);
    case 'rows':
      return Array.from({ length: field.minimum }, () => startingValue(field.row));
    case 'one-of': {
      const first = field.variants[0];
      return first === undefined ? {} : startingVariant(field.key, first);
    }
  }
}

/**
 * A newly chosen form of an object, with its schema's first values. Values already entered under the same names stay if they are
 * of the same kind.
 */
export function startingVariant(
  key: string,
  { value, fields, example }: Variant,
  entered: Readonly<Record<string, unknown>> = {},
): Record<string, unknown> {
  return { [key]: value, ...startingObject(fields, { example, entered }) };
}

function startingObject(
  fields: readonly NamedField[],
  {
    example = {},
    entered = {},
  }: Partial<Record<'example' | 'entered', Readonly<Record<string, unknown>>>> = {},
): Record<string, unknown> {
  return Object.fromEntries(
    fields.map(({ key, field }) => {
      const start = Object.hasOwn(example, key) ? example[key] : startingValue(field);
      const isAlike =
        Object.hasOwn(entered, key) &&
        typeof entered[key] === typeof start &&
        Array.isArray(entered[key]) === Array.isArray(start);
      return [key, isAlike ? entered[key] : start];
    }),
  );
}

/** The value as an object; empty if it is none. */
export function asObject(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : {};
}

export function asRows(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? (value as readonly unknown[]) : [];
}

export function asNumber(value: unknown): number | null {
  return typeof value === 'number' ? value : null;
}
