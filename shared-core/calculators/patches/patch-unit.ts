import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import type { Polygon } from '#core/geometry/polygon';
import { type Length, lengthFromInches } from '#core/units/length';
import type { CutEdge, EdgeTerm } from './cut-edge';
import type { CutShape } from './cut-shapes';

/** The fabric of the unit that a patch is cut from. */
export type FabricRole = 'first' | 'second' | 'third';

/** A patch to cut: its sizes, and how many of it make how many units. */
export interface CutPatch {
  readonly name: string;
  readonly role: FabricRole;
  /** Across the strip: the width of the strip. */
  readonly across: CutEdge;
  /** Along the strip: the crosscut. For a shape that is not a rectangle, the length of its side. */
  readonly along: CutEdge;
  readonly shape: CutShape;
  readonly takes: number;
  readonly makes: number;
  /** fabric: cut from fabric; sewn: a block or top, which takes no fabric of its own; fabric-joined: from joined strips if one is too short. */
  readonly source: 'fabric' | 'sewn' | 'fabric-joined';
  /** Whether its long side is vertical in the unit; matters for a directional print. */
  readonly standsUp?: boolean;
}

/** A patch at its place in the finished unit. */
export interface FinishedPatch {
  /** Index of its cut patch. */
  readonly patch: number;
  readonly polygon: Polygon;
}

/** The patches of a unit, as cut and as finished; the finished ones cover the outline exactly once. All in 1/320 mm. */
export interface UnitPlan {
  readonly width: number;
  readonly length: number;
  readonly outline: Polygon;
  readonly finishedPatches: readonly FinishedPatch[];
  readonly patches: readonly CutPatch[];
}

/** Finished sizes worked out from cut ones, with the formula for the main size. */
export interface FromCut<Sizes> {
  readonly sizes: Sizes;
  /** Uses the cut size `C`, the seam `s` and the symbols of `terms`. */
  readonly formula: string;
  readonly terms?: readonly EdgeTerm[];
  readonly cut: number;
  readonly finished: number;
}

/**
 * One kind of patch or unit. To add one, add a file in `units/` and its lines in `patch-units.ts`. The finished patches are data, so
 * that tests can grow them by the seam as an independent check of every cut size.
 */
export interface PatchUnit<Sizes extends { readonly unit: string } = { readonly unit: string }> {
  readonly kind: Sizes['unit'];
  /** The fabrics it is cut from: what each is for, to follow “for”. */
  readonly fabrics: Readonly<Partial<Record<FabricRole, string>>>;
  /** If the sizes are cut sizes: what they are the sizes of. */
  readonly cutMeans: string;
  /** From finished sizes. */
  plan(sizes: Sizes, seam: number): UnitPlan;
  /** From cut sizes. If the cut patch is too small, the finished sizes are 0 or negative. */
  fromCut(sizes: Sizes, seam: number): FromCut<Sizes>;
  /** Parts to trim before they are joined, where trimming the whole unit would cut off points. Finished sizes. */
  partToTrim?(sizes: Sizes): { readonly name: string; readonly width: number; readonly length: number };
  /** Tips for this unit, in whole sentences. */
  tips?(sizes: Sizes): readonly string[];
}

/** The sizes of a unit as plain numbers instead of whole lengths. */
export type Computed<Sizes> = {
  readonly [Name in keyof Sizes]: Sizes[Name] extends Length ? number : Sizes[Name];
};

/** A size of one unit, up to 100 in. */
export function sizeField(title: string, help?: string) {
  const maximum = lengthFromInches(100);
  return lengthField(help === undefined ? { title, maximum } : { title, help, maximum });
}

/** The fields of one unit. `start` holds the sizes that the form starts with. */
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
