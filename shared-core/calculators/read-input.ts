import type { z } from 'zod';
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
import { choicesOfSchema, definitionOf, discriminatorOf, metaOfNumber, tagsOfOption } from './schema-parts';

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
  const def = definitionOf(schema);
  if (def.type === 'object') return readGroup(def.shape, raw, bareUnit, path);
  if (def.type === 'readonly') return readBySchema(def.innerType, raw, bareUnit, path);
  if (def.type === 'nullable') {
    return raw === null ? success(null) : readBySchema(def.innerType, raw, bareUnit, path);
  }
  if (def.type === 'optional' || def.type === 'default') {
    return raw === undefined ? success(undefined) : readBySchema(def.innerType, raw, bareUnit, path);
  }
  if (def.type === 'array') return readList(schema, def.element, raw, bareUnit, path);
  const key = def.type === 'union' ? discriminatorOf(def) : null;
  if (def.type === 'union' && key !== null) return readVariant(def.options, key, raw, bareUnit, path);
  const leaf = readLeaf(schema, raw, bareUnit);
  return leaf.ok ? leaf : failure([{ path, ...leaf.error }]);
}

function readLeaf(schema: z.core.$ZodType, raw: unknown, bareUnit: LengthUnit): Result<unknown, FieldFault> {
  const { type } = definitionOf(schema);
  if (type === 'number') {
    const { kind, unit } = metaOfNumber(schema);
    if (kind === 'length') return readLengthField(schema, raw, bareUnit);
    return readNumberField(schema, raw, kind, unit);
  }
  if (type === 'boolean') return readFlagField(raw);
  if (type === 'string') return readTextField(schema, raw);
  const values = choicesOfSchema(schema);
  return values === null ? success(raw) : readChoiceField(values, raw);
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
  const fields: [string, unknown][] = [];
  const problems: FieldProblem[] = [];
  for (const [name, schema] of Object.entries(shape)) {
    const value = Object.hasOwn(raw, name) ? raw[name] : undefined;
    const outcome = readBySchema(schema, value, bareUnit, [...path, name]);
    if (!outcome.ok) problems.push(...outcome.error);
    else if (outcome.value !== undefined) fields.push([name, outcome.value]);
  }
  if (problems.length + unknown.length > 0) return failure([...problems, ...unknown]);
  return success(Object.fromEntries(fields));
}

function readList(
  schema: z.core.$ZodType,
  element: z.core.$ZodType,
  raw: unknown,
  bareUnit: LengthUnit,
  path: Path,
): Outcome {
  const bounds = boundsOfSchema(schema);
  const { minimum } = bounds;
  const maximum = bounds.maximum ?? MOST_ITEMS;
  if (!Array.isArray(raw) || raw.length > maximum || raw.length < (minimum ?? 0)) {
    const expected = `a list${boundsInWords({ minimum, maximum }, String)} items`;
    return failure([{ path, read: describeRead(raw), expected }]);
  }
  const items: unknown[] = [];
  const problems: FieldProblem[] = [];
  raw.forEach((item: unknown, index) => {
    const outcome = readBySchema(element, item, bareUnit, [...path, index]);
    if (outcome.ok) items.push(outcome.value);
    else problems.push(...outcome.error);
  });
  return problems.length > 0 ? failure(problems) : success(items);
}

function readVariant(
  options: readonly z.core.$ZodType[],
  key: string,
  raw: unknown,
  bareUnit: LengthUnit,
  path: Path,
): Outcome {
  if (!isGroup(raw)) {
    return failure([{ path, read: describeRead(raw), expected: `a group of fields with "${key}"` }]);
  }
  const tag = Object.hasOwn(raw, key) ? raw[key] : undefined;
  const chosen = options.find((option) => tagsOfOption(option, key).some((known) => known === tag));
  if (chosen !== undefined) return readBySchema(chosen, raw, bareUnit, path);
  const known = options.flatMap((option) => tagsOfOption(option, key)).join(', ');
  return failure([{ path: [...path, key], read: describeRead(tag), expected: `one of: ${known}` }]);
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
