import { z } from 'zod';

export interface FieldBounds {
  readonly minimum: number | null;
  readonly maximum: number | null;
}

const NO_BOUNDS: FieldBounds = { minimum: null, maximum: null };

/** A schema never changes, so its bounds are worked out once. */
const BOUNDS = new WeakMap<z.core.$ZodType, FieldBounds>();

/** The smallest and largest value of a number, or length of a text or list. */
export function boundsOfSchema(schema: z.core.$ZodType): FieldBounds {
  const known = BOUNDS.get(schema);
  if (known !== undefined) return known;
  const found = findBounds(schema);
  BOUNDS.set(schema, found);
  return found;
}

function findBounds(schema: z.core.$ZodType): FieldBounds {
  if (schema instanceof z.ZodNumber) {
    return { minimum: limitOrNull(schema.minValue), maximum: limitOrNull(schema.maxValue) };
  }
  if (schema instanceof z.ZodString) return { minimum: schema.minLength, maximum: schema.maxLength };
  if (schema instanceof z.ZodArray) {
    // The library tells the length of a list only in JSON Schema.
    const { minItems, maxItems } = z.toJSONSchema(schema, { unrepresentable: 'any' });
    return { minimum: minItems ?? null, maximum: maxItems ?? null };
  }
  return NO_BOUNDS;
}

/** A whole number without a limit of its own has that of the safe integers, any other number infinity. */
function limitOrNull(limit: number | null): number | null {
  return limit === null || Math.abs(limit) >= Number.MAX_SAFE_INTEGER ? null : limit;
}

/** ` from 1 to 9`, ` of 1 or more`, ` up to 9`, or nothing if there are no bounds. */
export function boundsInWords({ minimum, maximum }: FieldBounds, write: (value: number) => string): string {
  if (minimum !== null && maximum !== null) return ` from ${write(minimum)} to ${write(maximum)}`;
  if (minimum !== null) return ` of ${write(minimum)} or more`;
  return maximum === null ? '' : ` up to ${write(maximum)}`;
}

export function isWithin(value: number, { minimum, maximum }: FieldBounds): boolean {
  return (minimum === null || value >= minimum) && (maximum === null || value <= maximum);
}
