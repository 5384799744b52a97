import type { PatchType } from '../tree/cut-plan';

/**
 * What strips can hold. A strip is as high as one of its patches, and each patch is laid the narrowest way that fits the
 * height of the strip. Kinds (a type, turned or not) are in order of height.
 */
export interface StripModel {
  readonly types: number;
  readonly stripWidth: number;
  readonly copies: Uint16Array;
  /** Area over strip width: the least length that a copy costs. */
  readonly share: Float64Array;
  /** Distinct heights, lowest first. */
  readonly heights: Int32Array;
  /** Width of type t in a strip of height number s at [s * types + t], 0 if it does not fit. */
  readonly widths: Int32Array;
  readonly kindWidth: Int32Array;
  readonly kindHeight: Int32Array;
  readonly kindType: Int32Array;
  /** Number of a kind's height among `heights`. */
  readonly kindLevel: Int32Array;
  /** Types from the hardest to place: the largest least height first, then the largest area. */
  readonly hardFirst: Int32Array;
}

/** The model for patches that all fit the strip in some turning. */
export function stripModel(patches: readonly PatchType[], stripWidth: number): StripModel {
  const types = patches.length;
  const kinds = patches
    .flatMap((patch, type) => {
      const straight = { width: patch.width, height: patch.height, type };
      const turned = { width: patch.height, height: patch.width, type };
      return patch.mayTurn && patch.width !== patch.height ? [straight, turned] : [straight];
    })
    .filter((kind) => kind.width <= stripWidth && patches[kind.type]!.copies > 0)
    .sort((a, b) => a.height - b.height || a.width - b.width);
  const heights = [...new Set(kinds.map((kind) => kind.height))];
  const widths = new Int32Array(heights.length * types);
  const narrowest = new Int32Array(types);
  const leastHeight = new Int32Array(types);
  let next = 0;
  for (const [s, height] of heights.entries()) {
    for (; next < kinds.length && kinds[next]!.height <= height; next++) {
      const { type, width } = kinds[next]!;
      if (narrowest[type] === 0) leastHeight[type] = height;
      if (narrowest[type] === 0 || width < narrowest[type]!) narrowest[type] = width;
    }
    widths.set(narrowest, s * types);
  }
  const area = (type: number) => patches[type]!.width * patches[type]!.height;
  return {
    types,
    stripWidth,
    copies: Uint16Array.from(patches, (patch) => patch.copies),
    share: Float64Array.from(patches, (patch) => (patch.width * patch.height) / stripWidth),
    heights: Int32Array.from(heights),
    widths,
    kindWidth: Int32Array.from(kinds, (kind) => kind.width),
    kindHeight: Int32Array.from(kinds, (kind) => kind.height),
    kindType: Int32Array.from(kinds, (kind) => kind.type),
    kindLevel: Int32Array.from(kinds, (kind) => heights.indexOf(kind.height)),
    hardFirst: Int32Array.from(patches, (_, type) => type).sort(
      (a, b) => leastHeight[b]! - leastHeight[a]! || area(b) - area(a),
    ),
  };
}
