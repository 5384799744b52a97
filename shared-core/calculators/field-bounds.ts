import type { z } from 'zod';

export interface FieldBounds {
  readonly minimum: number | null;
  readonly maximum: number | null;
}

/** A schema never changes, so what it allows is worked out once for each. */
const BOUNDS = new WeakMap<z.core.$ZodType, FieldBounds>();

/** What a schema allows: the least and greatest value of a number, or length of a text or list. */
export function boundsOfSchema(schema: z.core.$ZodType): FieldBounds {
  const known = BOUNDS.get(schema);
  if (known !== undefined) return known;
  const checks: readonly z.core.$ZodCheck[] = schema._zod.def.checks ?? [];
  const found = checks.reduce<FieldBounds>((bounds, check) => ({ ...bounds, ...boundOfCheck(check) }), {
    minimum: null,
    maximum: null,
  });
  BOUNDS.set(schema, found);
  return found;
}

function boundOfCheck(check: z.core.$ZodCheck): Partial<FieldBounds> {
  const def = check._zod.def as z.core.$ZodCheckDef & {
    readonly value?: unknown;
    readonly minimum?: unknown;
    readonly maximum?: unknown;
  };
  if (def.check === 'greater_than' && typeof def.value === 'number') return { minimum: def.value };
  if (def.check === 'less_than' && typeof def.value === 'number') return { maximum: def.value };
  if (def.check === 'min_length' && typeof def.minimum === 'number') return { minimum: def.minimum };
  if (def.check === 'max_length' && typeof def.maximum === 'number') return { maximum: def.maximum };
  return {};
}

/** `from 1 to 9`, `of 1 or more`, `up to 9`, or nothing where all is allowed. */
export function boundsInWords({ minimum, maximum }: FieldBounds, write: (value: number) => string): string {
  if (minimum !== null && maximum !== null) return ` from ${write(minimum)} to ${write(maximum)}`;
  if (minimum !== null) return ` of ${write(minimum)} or more`;
  return maximum === null ? '' : ` up to ${write(maximum)}`;
}

export function isWithin(value: number, { minimum, maximum }: FieldBounds): boolean {
  return (minimum === null || value >= minimum) && (maximum === null || value <= maximum);
}
