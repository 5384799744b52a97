import type { PatchType } from '../tree/cut-plan';
import { usableLengths } from './usable-lengths';

/**
 * Every way to lay a patch (its type, turned or not), largest area first, in parallel arrays for the planner's inner loops.
 */
export interface PatchKinds {
  readonly count: number;
  readonly width: Int32Array;
  readonly height: Int32Array;
  readonly type: Int32Array;
  readonly turned: Uint8Array;
  readonly area: Float64Array;
  /** For every width, the least height of a kind that is at most that wide; higher than any fabric where there is none. */
  readonly leastHeight: Int32Array;
  readonly usableWidth: Int32Array;
  readonly usableHeight: Int32Array;
  /** Mean of the shorter sides, weighted by copies. */
  readonly meanSide: number;
}

const TOO_HIGH = 2 ** 30;

/**
 * The kinds that fit a fabric of the given width and height. `trimsEarly` counts fabric that no row of patches can use as
 * waste at once; it must be false where stages are limited, because the trim would be a stage of its own.
 */
export function patchKinds(
  patches: readonly PatchType[],
  width: number,
  height: number,
  trimsEarly: boolean,
): PatchKinds {
  const kinds = patches.flatMap((patch, type) => {
    const straight = { width: patch.width, height: patch.height, type, turned: 0 };
    const turned = { width: patch.height, height: patch.width, type, turned: 1 };
    return patch.mayTurn && patch.width !== patch.height ? [straight, turned] : [straight];
  });
  const fitting = kinds
    .filter((kind) => kind.width <= width && kind.height <= height && patches[kind.type]!.copies > 0)
    .sort((a, b) => b.width * b.height - a.width * a.height || b.height - a.height);
  const copies = (kind: (typeof kinds)[number]) => patches[kind.type]!.copies;
  const leastHeight = new Int32Array(width + 1).fill(TOO_HIGH);
  for (const kind of fitting) leastHeight[kind.width] = Math.min(leastHeight[kind.width]!, kind.height);
  for (let x = 1; x <= width; x++) leastHeight[x] = Math.min(leastHeight[x]!, leastHeight[x - 1]!);
  const weight = fitting.reduce((sum, kind) => sum + copies(kind), 0);
  const usable = trimsEarly
    ? usableLengths
    : (_: unknown, limit: number) => Int32Array.from({ length: limit + 1 }, (_x, x) => x);
  return {
    count: fitting.length,
    width: Int32Array.from(fitting, (kind) => kind.width),
    height: Int32Array.from(fitting, (kind) => kind.height),
    type: Int32Array.from(fitting, (kind) => kind.type),
    turned: Uint8Array.from(fitting, (kind) => kind.turned),
    area: Float64Array.from(fitting, (kind) => kind.width * kind.height),
    leastHeight,
    usableWidth: usable(
      fitting.map((kind) => ({ length: kind.width, copies: copies(kind) })),
      width,
    ),
    usableHeight: usable(
      fitting.map((kind) => ({ length: kind.height, copies: copies(kind) })),
      height,
    ),
    meanSide:
      fitting.reduce((sum, kind) => sum + Math.min(kind.width, kind.height) * copies(kind), 0) /
      Math.max(1, weight),
  };
}
