import type { PatchType, StripProblem } from '../tree/cut-plan';

/**
 * A length that no layout of any kind can go below, rounded up to whole units; 0 without patches. It is the best of three
 * bounds: the longest patch; total area over width; and area with widths changed by dual feasible functions, which count
 * patches wider than half the fabric in full (Fekete and Schepers 2001).
 */
export function lengthBound({ stripWidth, patches }: StripProblem): number {
  const longest = patches.reduce((most, patch) => Math.max(most, leastLength(patch, stripWidth)), 0);
  const bends = bendings(patches, stripWidth);
  return bends.reduce((bound, bend) => Math.max(bound, bentBound(patches, stripWidth, bend)), longest);
}

/**
 * A dual feasible function times `scale`: widths that together fit the strip are changed to widths of at most `scale`
 * together.
 */
interface Bending {
  readonly scale: number;
  readonly of: (width: number) => number;
}

const MOST_WAVES = 30;

function bendings(patches: readonly PatchType[], stripWidth: number): Bending[] {
  const plain = { scale: stripWidth, of: (width: number) => width };
  const widths = patches.flatMap((patch) => (patch.mayTurn ? [patch.width, patch.height] : [patch.width]));
  const limits = [...new Set(widths)].filter((width) => 2 * width <= stripWidth);
  const half = Math.floor(stripWidth / 2);
  const cut = [...limits, half].map((limit) => ({
    scale: stripWidth,
    of: (width: number) => (width > stripWidth - limit ? stripWidth : width < limit ? 0 : width),
  }));
  const waves = Array.from({ length: MOST_WAVES }, (_, index) => index + 1).map((k) => ({
    scale: k * stripWidth,
    of: (width: number) =>
      ((k + 1) * width) % stripWidth === 0
        ? k * width
        : Math.floor(((k + 1) * width) / stripWidth) * stripWidth,
  }));
  return [plain, ...cut, ...waves];
}

function bentBound(patches: readonly PatchType[], stripWidth: number, bend: Bending): number {
  let sum = 0;
  for (const patch of patches) {
    let least = Infinity;
    if (patch.width <= stripWidth) least = bend.of(patch.width) * patch.height;
    if (patch.mayTurn && patch.height <= stripWidth)
      least = Math.min(least, bend.of(patch.height) * patch.width);
    if (least < Infinity) sum += least * patch.copies;
  }
  return Math.ceil(sum / bend.scale - 1e-9);
}

function leastLength(patch: PatchType, stripWidth: number): number {
  if (patch.copies === 0) return 0;
  const fits = patch.width <= stripWidth;
  const fitsTurned = patch.mayTurn && patch.height <= stripWidth;
  if (fits && fitsTurned) return Math.min(patch.width, patch.height);
  return fits ? patch.height : fitsTurned ? patch.width : 0;
}
