import type { z } from 'zod';
import type { FieldProblem, Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';

const READ_AT_MOST = 80;

/** Reads a call's input by its schema. A text with a zero character is refused: SQLite would stop reading at it. */
export function checkInput<Input>(schema: z.ZodType<Input>, raw: unknown): Result<Input, Problem> {
  const read = schema.safeParse(raw, { reportInput: true });
  if (!read.success) {
    const fields = read.error.issues.map(({ path, message, input }): FieldProblem => ({
      path: path.map((part) => (typeof part === 'number' ? part : String(part))),
      read: clip(input),
      expected: message,
    }));
    return failure<Problem>({ code: 'invalid-input', fields });
  }
  const zero = pathToZero(read.data);
  if (zero === null) return success(read.data);
  return failure<Problem>({
    code: 'invalid-input',
    fields: [{ path: zero, read: 'a zero character', expected: 'text without it' }],
  });
}

function clip(input: unknown): string {
  if (input === undefined) return '';
  if (typeof input === 'string') return input.slice(0, READ_AT_MOST);
  if (typeof input === 'number' || typeof input === 'boolean') return String(input);
  return input === null ? 'nothing' : 'a group of values';
}

function pathToZero(value: unknown): FieldProblem['path'] | null {
  if (typeof value === 'string') return value.includes('\0') ? [] : null;
  if (typeof value !== 'object' || value === null || value instanceof Uint8Array) return null;
  for (const [key, part] of Object.entries(value)) {
    const path = pathToZero(part);
    if (path !== null) return [key, ...path];
  }
  return null;
}
