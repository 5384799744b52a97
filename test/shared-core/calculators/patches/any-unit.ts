import fc from 'fast-check';
import { z } from 'zod';
import type { UnitPlan } from '#core/calculators/patches/patch-unit';
import { unitSizesField, type UnitSizes } from '#core/calculators/patches/patch-units';
import type { Polygon } from '#core/geometry/polygon';
import { type Length, lengthFromInches, lengthFromMillimeters, UNITS_PER_INCH } from '#core/units/length';
import { rulerLength } from '#test/helpers/arbitraries';

/** A millionth of an inch. */
export const TINY = UNITS_PER_INCH * 1e-6;

export const unitKinds: readonly UnitSizes['unit'][] = unitSizesField.options.map(
  (option) => option.unwrap().shape.unit.value,
);

function shapeOf(kind: UnitSizes['unit']): Readonly<Record<string, z.core.$ZodType>> {
  const option = unitSizesField.options.find((one) => one.unwrap().shape.unit.value === kind);
  if (option === undefined) throw new Error(`No unit ${kind}`);
  return option.unwrap().shape;
}

/** Sizes of one kind of unit, drawn field by field from its own schema: lengths from 1/2 in to 24 in, counts from 1 to 4. */
export function anySizesOf(kind: UnitSizes['unit']): fc.Arbitrary<UnitSizes> {
  const fields = Object.entries(shapeOf(kind)).map(([name, schema]) => [name, anyOfField(schema)] as const);
  return fc.record(Object.fromEntries(fields)).map((sizes) => unitSizesField.parse(sizes));
}

function anyOfField(schema: z.core.$ZodType): fc.Arbitrary<unknown> {
  const meta = z.globalRegistry.get(schema);
  if (meta?.['kind'] === 'length') return rulerLength(24, 16).filter((size) => size >= UNITS_PER_INCH / 2);
  if (meta?.['kind'] === 'count') return fc.integer({ min: 1, max: 4 });
  if (meta?.['kind'] === 'flag') return fc.boolean();
  if (schema instanceof z.ZodEnum) return fc.constantFrom(...schema.options);
  if (schema instanceof z.ZodLiteral) return fc.constantFrom(...schema.values);
  throw new Error('No values are drawn for this kind of field');
}

/** The seams makers sew, in inches and in millimeters. */
export const anySeam: fc.Arbitrary<Length> = fc.constantFrom(
  ...[1 / 8, 1 / 4, 3 / 8, 1 / 2].map(lengthFromInches),
  ...[5, 6, 7.5, 10].map(lengthFromMillimeters),
);

export function startOf(kind: UnitSizes['unit']): UnitSizes {
  const option = unitSizesField.options.find((one) => one.unwrap().shape.unit.value === kind);
  const [start] = z.globalRegistry.get(option!)?.['examples'] as readonly unknown[];
  return unitSizesField.parse(start);
}

/** Same shape and size, turned or turned over: some order of the corners makes every distance between two of them alike. */
export function areCongruent(one: Polygon, other: Polygon): boolean {
  if (one.length !== other.length) return false;
  const rounds = one.map((_, start) => other.map((_corner, step) => other[(start + step) % other.length]!));
  return [...rounds, ...rounds.map((round) => [...round].reverse())].some((round) =>
    one.every((corner, first) =>
      one.every((next, second) => {
        const [from, to] = [round[first]!, round[second]!];
        const [here, there] = [
          Math.hypot(next.x - corner.x, next.y - corner.y),
          Math.hypot(to.x - from.x, to.y - from.y),
        ];
        return Math.abs(here - there) < TINY;
      }),
    ),
  );
}

/** The finished pieces that are cut as each patch. */
export function finishedByPatch(plan: UnitPlan): readonly (readonly Polygon[])[] {
  return plan.patches.map((_, patch) =>
    plan.finishedPatches.filter((piece) => piece.patch === patch).map((piece) => piece.polygon),
  );
}
