import type { FieldDescription, NamedField, Variant } from './describe-schema';

export type FieldPath = readonly (string | number)[];

/** What is wrong, by the path of the field it is wrong with. */
export interface PathProblem {
  readonly path: FieldPath;
  readonly words: string;
}

/** What the drawing of one field is given, whatever its form. */
export interface SchemaFieldProps {
  readonly field: FieldDescription;
  readonly value: unknown;
  readonly fallback?: unknown;
  readonly path: FieldPath;
  readonly problems: readonly PathProblem[];
  readonly onChange: (value: unknown) => void;
}

/** The words for exactly this path; null when there are none. */
export function problemAt(problems: readonly PathProblem[], path: FieldPath): string | null {
  const found = problems.find((problem) => problem.path.join('.') === path.join('.'));
  return found?.words ?? null;
}

/** A value to start a new row or part with: the least that is allowed, the first choice, no text. */
export function startingValue(field: FieldDescription): unknown {
  if (field.isOptional) return field.empty === 'null' ? null : undefined;
  switch (field.form) {
    case 'length':
    case 'count':
    case 'number':
    case 'percent':
    case 'minor':
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
 * A newly chosen form of an object, with the sizes its schema gives to begin with. What was entered under the same names for
 * another form stays, where it is of the same kind.
 */
export function startingVariant(
  key: string,
  { value, fields, example }: Variant,
  kept: Readonly<Record<string, unknown>> = {},
): Record<string, unknown> {
  return { [key]: value, ...startingObject(fields, { example, kept }) };
}

function startingObject(
  fields: readonly NamedField[],
  { example = {}, kept = {} }: Partial<Record<'example' | 'kept', Readonly<Record<string, unknown>>>> = {},
): Record<string, unknown> {
  return Object.fromEntries(
    fields.map(({ key, field }) => {
      const start = Object.hasOwn(example, key) ? example[key] : startingValue(field);
      const isAlike =
        Object.hasOwn(kept, key) &&
        typeof kept[key] === typeof start &&
        Array.isArray(kept[key]) === Array.isArray(start);
      return [key, isAlike ? kept[key] : start];
    }),
  );
}

/** What was entered as an object; anything else counts as an empty one. */
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
