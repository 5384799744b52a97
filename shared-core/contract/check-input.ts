import type { z } from 'zod';
import { failure, type Result, success } from '#core/result';
import type { FieldFault, InputProblem, Problem } from './problem';

/** Reads a call's input by its schema. Text with a zero character is refused, because SQLite would stop reading at it. */
export function checkInput<Input>(schema: z.ZodType<Input>, raw: unknown): Result<Input, Problem> {
  const read = schema.safeParse(raw, { reportInput: true });
  if (!read.success) {
    const fields = read.error.issues.map((issue): InputProblem => ({
      path: issue.path.map((part) => (typeof part === 'number' ? part : String(part))),
      fault: faultOf(issue),
    }));
    return failure<Problem>({ code: 'invalid-input', fields });
  }
  const path = pathToZero(read.data);
  if (path === null) return success(read.data);
  return failure<Problem>({ code: 'invalid-input', fields: [{ path, fault: { code: 'zero-character' } }] });
}

/** The schema library's own words are for programmers; only the kind of fault and its limit go on. */
function faultOf(issue: z.core.$ZodIssue): FieldFault {
  if (issue.input === undefined || issue.input === null || issue.input === '') return { code: 'empty' };
  if (issue.code === 'too_small') {
    if (issue.origin === 'string') return { code: 'empty' };
    const minimum = Number(issue.minimum);
    return issue.origin === 'array' ? { code: 'too-few', minimum } : { code: 'too-small', minimum };
  }
  if (issue.code === 'too_big') {
    const maximum = Number(issue.maximum);
    if (issue.origin === 'string') return { code: 'text-too-long', maximum };
    return issue.origin === 'array' ? { code: 'too-many', maximum } : { code: 'too-large', maximum };
  }
  const isFraction = issue.code === 'invalid_type' && Number.isFinite(issue.input);
  return { code: isFraction ? 'not-whole' : 'unreadable' };
}

function pathToZero(value: unknown): InputProblem['path'] | null {
  if (typeof value === 'string') return value.includes('\0') ? [] : null;
  if (typeof value !== 'object' || value === null || value instanceof Uint8Array) return null;
  for (const [key, part] of Object.entries(value)) {
    const path = pathToZero(part);
    if (path !== null) return [key, ...path];
  }
  return null;
}
