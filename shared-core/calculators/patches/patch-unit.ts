import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import type { Polygon } from '#core/geometry/polygon';
import { type Length, lengthFromInches } from '#core/units/length';
import type { CutEdge, EdgeTerm } from './cut-edge';
import type { CutShape } from './cut-shapes';

/** Which of the unit's fabrics a patch is cut from. */
export type FabricRole = 'first' | 'second' | 'third';

/** A patch to cut, its sizes, and how many of it make how many units. */
export interface CutPatch {
  readonly name: string;
  readonly role: FabricRole;
  /** Across the strip: what the strip is cut at. */
  readonly across: CutEdge;
  /** Along the strip: the cross cut. For a shape that is not a rectangle, the length of its side. */
  readonly along: CutEdge;
  readonly shape: CutShape;
  readonly takes: number;
  readonly makes: number;
  /** From fabric; already sewn (a block, a top: no fabric of its own); joined where a strip of fabric is too short for it. */
  readonly source: 'fabric' | 'sewn' | 'fabric-joined';
  /** Whether its long side stands upright in the unit, as matters for a print that must not lie down. */
  readonly standsUp?: boolean;
}

/** A patch as it lies in the finished unit. */
export interface FinishedPiece {
  /** Index of the patch it was cut as. */
  readonly patch: number;
  readonly polygon: Polygon;
}

/** What a unit is made of; the pieces cover the outline exactly once. All in 1/320 mm. */
export interface UnitPlan {
  readonly width: number;
  readonly length: number;
  readonly outline: Polygon;
  readonly pieces: readonly FinishedPiece[];
  readonly patches: readonly CutPatch[];
}

/** Finished sizes worked out from cut ones, and how the size that decides was found. */
export interface FromCut<Sizes> {
  readonly sizes: Sizes;
  /** In the cut size `C`, the seam `s` and what `terms` say. */
  readonly formula: string;
  readonly terms?: readonly EdgeTerm[];
  readonly cut: number;
  readonly finished: number;
}

/**
 * One kind of patch or patch group. Adding one is adding a file in `units/` and its line in `patch-units.ts`. The finished
 * pieces are data, so that growing them by the seam is an independent check of every cut size.
 */
export interface PatchUnit<Sizes extends { readonly unit: string } = { readonly unit: string }> {
  readonly kind: Sizes['unit'];
  /** Which cut piece the sizes are those of, when they are cut sizes. */
  readonly cutMeans: string;
  /** From finished sizes. */
  plan(sizes: Sizes, seam: number): UnitPlan;
  /** From the sizes of the cut piece; a piece too small gives sizes of nothing or less. */
  fromCut(sizes: Sizes, seam: number): FromCut<Sizes>;
  /** What is good to know of this unit, in whole sentences. */
  tips?(sizes: Sizes): readonly string[];
}

/** The sizes of a unit with computed lengths in place of whole ones. */
export type Computed<Sizes> = {
  readonly [Name in keyof Sizes]: Sizes[Name] extends Length ? number : Sizes[Name];
};

/** A size of one unit, up to 100 in. */
export function sizeField(title: string, help?: string) {
  const maximum = lengthFromInches(100);
  return lengthField(help === undefined ? { title, maximum } : { title, help, maximum });
}

/** The fields of one unit. `start` are sizes to begin with when a maker chooses it. */
export function unitSizes<const Kind extends string, Fields extends z.core.$ZodLooseShape>(
  kind: Kind,
  title: string,
  fields: Fields,
  start: { readonly [Name in keyof Fields]: z.input<Fields[Name]> },
) {
  return z
    .object({ unit: z.literal(kind).meta({ title }), ...fields })
    .readonly()
    .meta({ title, examples: [{ unit: kind, ...start }] });
}
