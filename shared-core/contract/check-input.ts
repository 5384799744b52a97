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
  switch (issue.code) {
    case 'too_small': {
      const minimum = Number(issue.minimum);
      if (issue.origin === 'string') return { code: 'empty' };
      return issue.origin === 'array' ? { code: 'too-few', minimum } : { code: 'too-small', minimum };
    }
    case 'too_big': {
      const maximum = Number(issue.maximum);
      if (issue.origin === 'string') return { code: 'text-too-long', maximum };
      return issue.origin === 'array' ? { code: 'too-many', maximum } : { code: 'too-large', maximum };
    }
    case 'invalid_type':
      return typeof issue.input === 'number' && Number.isFinite(issue.input)
        ? { code: 'not-whole' }
        : { code: 'unreadable' };
    default:
      return { code: 'unreadable' };
  }
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
