import type { z } from 'zod';
import { assertNever } from '#core/assert-never';
import { describeSchema, type FieldDescription, type NamedField } from '#core/domain/describe-schema';
import { boundsInWords, type FieldBounds } from '#core/domain/field-bounds';
import type { FieldProblem } from '#core/field-problem';
import { failure, type Result, success } from '#core/result';
import type { LengthUnit } from '#core/units/length-unit';
import { clipRead } from '#core/units/typed-text';
import {
  describeRead,
  type FieldFault,
  readChoiceField,
  readFlagField,
  readLengthField,
  readNumberField,
  readTextField,
  readWeightField,
} from './read-field';

/** More problems than this help nobody. */
const MOST_PROBLEMS = 20;
/** For a list without a limit of its own. */
const MOST_ITEMS = 1_000;

type Path = FieldProblem['path'];
type Outcome = Result<unknown, readonly FieldProblem[]>;

/** Where a value is in the input, and the unit of a plain number in a length field. */
interface Place {
  readonly path: Path;
  readonly bareUnit: LengthUnit;
}

/**
 * Reads any input (JSON of the command line, the texts of a form) by its schema. A length may be text (`9 1/2 in`; a plain
 * number is in `bareUnit`) or whole 1/320 mm. Every fault is data with its path, never an exception. Reading follows the schema,
 * so neither the depth nor the size of the input can slow it down.
 */
export function readInput<Input>(
  schema: z.ZodType<Input>,
  raw: unknown,
  bareUnit: LengthUnit,
): Result<Input, readonly FieldProblem[]> {
  const read = readField(describeSchema(schema), raw, { path: [], bareUnit });
  if (!read.ok) return failure(read.error.slice(0, MOST_PROBLEMS));
  const checked = schema.safeParse(read.value);
  if (checked.success) return success(checked.data);
  const problems = checked.error.issues.slice(0, MOST_PROBLEMS).map((issue): FieldProblem => {
    const path = issue.path.filter((step) => typeof step !== 'symbol');
    return { path, read: describeRead(valueAt(read.value, path)), expected: issue.message };
  });
  return failure(problems);
}

function readField(field: FieldDescription, raw: unknown, place: Place): Outcome {
  if (field.isOptional && raw === (field.empty === 'null' ? null : undefined)) return success(raw);
  if (field.form === 'group') return readGroup(field.fields, raw, place);
  if (field.form === 'rows') return readList(field, raw, place);
  if (field.form === 'one-of') return readVariant(field, raw, place);
  const leaf = readLeaf(field, raw, place.bareUnit);
  return leaf.ok ? leaf : failure([{ path: place.path, ...leaf.error }]);
}

type Leaf = Exclude<FieldDescription, { readonly form: 'group' | 'rows' | 'one-of' }>;

function readLeaf(field: Leaf, raw: unknown, bareUnit: LengthUnit): Result<unknown, FieldFault> {
  switch (field.form) {
    case 'length':
      return readLengthField(boundsOf(field), raw, bareUnit);
    case 'count':
    case 'number':
    case 'percent':
    case 'minor': {
      const unit = field.unit === undefined ? '' : field.unit === '%' ? '%' : ` ${field.unit}`;
      return readNumberField({ bounds: boundsOf(field), isWhole: field.form === 'count', unit }, raw);
    }
    case 'weight':
      return readWeightField(boundsOf(field), raw, bareUnit);
    case 'flag':
      return readFlagField(raw);
    case 'choice':
      return readChoiceField(field.values, raw);
    case 'text':
      return readTextField(boundsOf(field), raw);
    case 'date':
      return readTextField({ minimum: null, maximum: null }, raw);
    default:
      return assertNever(field);
  }
}

interface Limited {
  readonly minimum: number | undefined;
  readonly maximum: number | undefined;
}

function boundsOf({ minimum, maximum }: Limited): FieldBounds {
  return { minimum: minimum ?? null, maximum: maximum ?? null };
}

function readGroup(fields: readonly NamedField[], raw: unknown, place: Place): Outcome {
  const names = fields.map(({ key }) => key);
  if (!isGroup(raw)) {
    const expected = `a group of fields: ${names.join(', ')}`;
    return failure([{ path: place.path, read: describeRead(raw), expected }]);
  }
  const unknown = unknownFields(names, raw, place.path);
  const values: [string, unknown][] = [];
  const problems: FieldProblem[] = [];
  for (const { key, field } of fields) {
    const value = Object.hasOwn(raw, key) ? raw[key] : undefined;
    const outcome = readField(field, value, { ...place, path: [...place.path, key] });
    if (!outcome.ok) problems.push(...outcome.error);
    else if (outcome.value !== undefined) values.push([key, outcome.value]);
  }
  if (problems.length + unknown.length > 0) return failure([...problems, ...unknown]);
  return success(Object.fromEntries(values));
}

function unknownFields(names: readonly string[], raw: object, path: Path): readonly FieldProblem[] {
  return Object.keys(raw)
    .filter((name) => !names.includes(name))
    .slice(0, MOST_PROBLEMS)
    .map((name) => ({
      path: [...path, clipRead(name)],
      read: 'an unknown field',
      expected: `one of the fields ${names.join(', ')}`,
    }));
}

type RowsField = Extract<FieldDescription, { readonly form: 'rows' }>;

function readList({ row, minimum, maximum: limit }: RowsField, raw: unknown, place: Place): Outcome {
  const maximum = Number.isFinite(limit) ? limit : MOST_ITEMS;
  if (!Array.isArray(raw) || raw.length > maximum || raw.length < minimum) {
    const words = boundsInWords({ minimum: minimum === 0 ? null : minimum, maximum }, String);
    return failure([{ path: place.path, read: describeRead(raw), expected: `a list${words} items` }]);
  }
  const items: unknown[] = [];
  const problems: FieldProblem[] = [];
  raw.forEach((item: unknown, index) => {
    const outcome = readField(row, item, { ...place, path: [...place.path, index] });
    if (outcome.ok) items.push(outcome.value);
    else problems.push(...outcome.error);
  });
  return problems.length > 0 ? failure(problems) : success(items);
}

type OneOfField = Extract<FieldDescription, { readonly form: 'one-of' }>;

function readVariant({ key, variants }: OneOfField, raw: unknown, place: Place): Outcome {
  if (!isGroup(raw)) {
    const expected = `a group of fields with "${key}"`;
    return failure([{ path: place.path, read: describeRead(raw), expected }]);
  }
  const tag = Object.hasOwn(raw, key) ? raw[key] : undefined;
  const chosen = variants.find(({ values }) => values.some((value) => value === tag));
  if (chosen === undefined) {
    const expected = `one of: ${variants.flatMap(({ values }) => values).join(', ')}`;
    return failure([{ path: [...place.path, key], read: describeRead(tag), expected }]);
  }
  return readGroup([{ key, field: tagField(chosen.values) }, ...chosen.fields], raw, place);
}

function tagField(values: readonly (string | number)[]): FieldDescription {
  const words = { title: '', help: undefined, isOptional: false, empty: 'absent', isSeldom: false } as const;
  return { ...words, form: 'choice', values };
}

function isGroup(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}

function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((inside, step) => {
    if (Array.isArray(inside)) return typeof step === 'number' ? (inside[step] as unknown) : undefined;
    return isGroup(inside) && Object.hasOwn(inside, step) ? inside[step] : undefined;
  }, value);
}
