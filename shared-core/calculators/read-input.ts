import { z } from 'zod';
import type { FieldKind } from '#core/domain/fields';
import type { FieldProblem } from '#core/field-problem';
import { failure, type Result, success } from '#core/result';
import { clipRead } from '#core/units/typed-text';
import type { LengthUnit } from '#core/units/length-unit';
import { boundsInWords, boundsOfSchema } from './field-bounds';
import {
  describeRead,
  type FieldFault,
  readChoiceField,
  readFlagField,
  readLengthField,
  readNumberField,
  readTextField,
} from './read-field';

/** More than this helps nobody; a list without a limit of its own gets the other. */
const MOST_PROBLEMS = 20;
const MOST_ITEMS = 1_000;

type Path = FieldProblem['path'];
type Outcome = Result<unknown, readonly FieldProblem[]>;

/**
 * Reads an input of any make (JSON of a command line, the texts of a form) by its schema. A length may be text
 * (`9 1/2 in`; a bare number is in `bareUnit`) or whole 1/320 mm. Every fault is data with its path, never an exception:
 * the walk follows the schema, so neither depth nor size of what was sent can hold it up.
 */
export function readInput<Input>(
  schema: z.ZodType<Input>,
  raw: unknown,
  bareUnit: LengthUnit,
): Result<Input, readonly FieldProblem[]> {
  const read = readBySchema(schema, raw, bareUnit, []);
  if (!read.ok) return failure(read.error.slice(0, MOST_PROBLEMS));
  const checked = schema.safeParse(read.value);
  if (checked.success) return success(checked.data);
  const problems = checked.error.issues.slice(0, MOST_PROBLEMS).map((issue): FieldProblem => {
    const path = issue.path.filter((step) => typeof step !== 'symbol');
    return { path, read: describeRead(valueAt(read.value, path)), expected: issue.message };
  });
  return failure(problems);
}

function readBySchema(schema: z.core.$ZodType, raw: unknown, bareUnit: LengthUnit, path: Path): Outcome {
  if (schema instanceof z.ZodReadonly) return readBySchema(schema.def.innerType, raw, bareUnit, path);
  if (schema instanceof z.ZodNullable) {
    return raw === null ? success(null) : readBySchema(schema.def.innerType, raw, bareUnit, path);
  }
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) {
    return raw === undefined ? success(undefined) : readBySchema(schema.def.innerType, raw, bareUnit, path);
  }
  if (schema instanceof z.ZodObject) return readGroup(schema.shape, raw, bareUnit, path);
  if (schema instanceof z.ZodArray) return readList(schema, raw, bareUnit, path);
  if (schema instanceof z.ZodDiscriminatedUnion) return readVariant(schema, raw, bareUnit, path);
  const leaf = readLeaf(schema, raw, bareUnit);
  return leaf.ok ? leaf : failure([{ path, ...leaf.error }]);
}

function readLeaf(schema: z.core.$ZodType, raw: unknown, bareUnit: LengthUnit): Result<unknown, FieldFault> {
  const meta = z.globalRegistry.get(schema);
  const kind = meta?.['kind'] as FieldKind | undefined;
  if (kind === 'length') return readLengthField(schema, raw, bareUnit);
  const values = choicesOfSchema(schema);
  if (values !== null) return readChoiceField(values, raw);
  const unit = typeof meta?.['unit'] === 'string' ? ` ${meta['unit']}` : '';
  if (schema instanceof z.ZodNumber) return readNumberField(schema, raw, kind, unit);
  if (schema instanceof z.ZodBoolean) return readFlagField(raw);
  if (schema instanceof z.ZodString) return readTextField(schema, raw);
  return success(raw);
}

/** The closed list of values of an enum, a literal or a union of literals; null for anything else. */
export function choicesOfSchema(schema: z.core.$ZodType): readonly (string | number)[] | null {
  if (schema instanceof z.ZodEnum) return schema.options;
  if (schema instanceof z.ZodLiteral) {
    return [...schema.values].filter((value) => typeof value === 'string' || typeof value === 'number');
  }
  if (!(schema instanceof z.ZodUnion) || schema instanceof z.ZodDiscriminatedUnion) return null;
  const choices = schema.options.map(choicesOfSchema);
  return choices.some((some) => some === null) ? null : choices.flatMap((some) => some ?? []);
}

function readGroup(
  shape: Readonly<Record<string, z.core.$ZodType>>,
  raw: unknown,
  bareUnit: LengthUnit,
  path: Path,
): Outcome {
  const names = Object.keys(shape);
  if (!isGroup(raw)) {
    return failure([{ path, read: describeRead(raw), expected: `a group of fields: ${names.join(', ')}` }]);
  }
  const unknown = Object.keys(raw)
    .filter((name) => !Object.hasOwn(shape, name))
    .slice(0, MOST_PROBLEMS)
    .map((name): FieldProblem => {
      return {
        path: [...path, clipRead(name)],
        read: 'an unknown field',
        expected: `one of the fields ${names.join(', ')}`,
      };
    });
  const outcomes = Object.entries(shape).map(([name, schema]) => {
    const value = Object.hasOwn(raw, name) ? raw[name] : undefined;
    return [name, readBySchema(schema, value, bareUnit, [...path, name])] as const;
  });
  const problems = outcomes.flatMap(([, outcome]) => (outcome.ok ? [] : outcome.error));
  if (problems.length + unknown.length > 0) return failure([...problems, ...unknown]);
  const fields = outcomes.map(([name, outcome]) => [name, outcome.ok ? outcome.value : undefined] as const);
  return success(Object.fromEntries(fields.filter(([, value]) => value !== undefined)));
}

function readList(schema: z.ZodArray, raw: unknown, bareUnit: LengthUnit, path: Path): Outcome {
  const bounds = boundsOfSchema(schema);
  const { minimum } = bounds;
  const maximum = bounds.maximum ?? MOST_ITEMS;
  if (!Array.isArray(raw) || raw.length > maximum || raw.length < (minimum ?? 0)) {
    const expected = `a list${boundsInWords({ minimum, maximum }, String)} items`;
    return failure([{ path, read: describeRead(raw), expected }]);
  }
  const outcomes = raw.map((item: unknown, index) =>
    readBySchema(schema.element, item, bareUnit, [...path, index]),
  );
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.error));
  if (problems.length > 0) return failure(problems);
  return success(outcomes.map((outcome) => (outcome.ok ? outcome.value : undefined)));
}

function readVariant(
  schema: z.ZodDiscriminatedUnion,
  raw: unknown,
  bareUnit: LengthUnit,
  path: Path,
): Outcome {
  const key = schema.def.discriminator;
  const options = schema.options.map((option) => ({ option, tags: tagsOfOption(option, key) }));
  if (!isGroup(raw)) {
    return failure([{ path, read: describeRead(raw), expected: `a group of fields with "${key}"` }]);
  }
  const tag = Object.hasOwn(raw, key) ? raw[key] : undefined;
  const chosen = options.find(({ tags }) => tags.some((known) => known === tag));
  if (chosen !== undefined) return readBySchema(chosen.option, raw, bareUnit, path);
  const known = options.flatMap(({ tags }) => tags).join(', ');
  return failure([{ path: [...path, key], read: describeRead(tag), expected: `one of: ${known}` }]);
}

function tagsOfOption(option: z.core.$ZodType, key: string): readonly (string | number)[] {
  if (option instanceof z.ZodReadonly) return tagsOfOption(option.def.innerType, key);
  const field =
    option instanceof z.ZodObject ? (option.shape[key] as z.core.$ZodType | undefined) : undefined;
  return field === undefined ? [] : (choicesOfSchema(field) ?? []);
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
