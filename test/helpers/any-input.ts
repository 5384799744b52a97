import fc from 'fast-check';
import { z } from 'zod';
import { boundsOfSchema } from '#core/domain/field-bounds';

/**
 * Any input a schema lets through, to the ends of its limits: lists of up to three, texts from a few words that name the
 * same fabrics and blocks again.
 */
export function anyInputOf(schema: z.core.$ZodType): fc.Arbitrary<unknown> {
  if (schema instanceof z.ZodReadonly) return anyInputOf(schema.def.innerType);
  if (schema instanceof z.ZodDefault) return anyInputOf(schema.def.innerType);
  if (schema instanceof z.ZodOptional) return anyInputOf(schema.def.innerType);
  if (schema instanceof z.ZodNullable) return fc.option(anyInputOf(schema.def.innerType));
  if (schema instanceof z.ZodDiscriminatedUnion) return fc.oneof(...schema.options.map(anyInputOf));
  if (schema instanceof z.ZodEnum) return fc.constantFrom(...schema.options);
  if (schema instanceof z.ZodLiteral) return fc.constantFrom(...schema.values);
  if (schema instanceof z.ZodBoolean) return fc.boolean();
  if (schema instanceof z.ZodString) return fc.constantFrom('Light', 'Dark', 'Six');
  if (schema instanceof z.ZodArray) {
    const minLength = boundsOfSchema(schema).minimum ?? 0;
    return fc.array(anyInputOf(schema.element), { minLength, maxLength: 3 });
  }
  if (schema instanceof z.ZodObject) {
    const fields = Object.entries<z.core.$ZodType>(schema.shape);
    return fc.record(Object.fromEntries(fields.map(([name, field]) => [name, anyInputOf(field)])));
  }
  if (schema instanceof z.ZodNumber) {
    const { minimum, maximum } = boundsOfSchema(schema);
    const [min, max] = [minimum ?? 0, maximum ?? 100];
    const ends = fc.constantFrom(min, max);
    if (schema.format !== 'safeint') return fc.oneof(ends, fc.double({ min, max, noNaN: true }));
    // Mostly small, as on the bench: two inputs of the largest kind are seldom answered at all.
    const small = fc
      .double({ min: 0, max: 1, noNaN: true })
      .map((x) => Math.round(min + (max - min) * x ** 4));
    return fc.oneof(
      { weight: 8, arbitrary: small },
      { weight: 2, arbitrary: fc.integer({ min, max }) },
      ends,
    );
  }
  throw new Error('No value is drawn for this kind of field');
}
