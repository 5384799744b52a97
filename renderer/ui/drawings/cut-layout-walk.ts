import type { PlacedPatch } from '#core/cutting/tree/cut-plan';

/** Where the arrow keys go from a patch, or from none, in the drawing's own directions. */
const WAYS: Readonly<Record<string, 'far' | 'near' | 'right' | 'left'>> = {
  ArrowRight: 'far',
  ArrowLeft: 'near',
  ArrowDown: 'right',
  ArrowUp: 'left',
};

/**
 * The index of the patch that a key leads to: the nearest one in that direction, or else the next or previous one in the order of
 * cutting. Home and End lead to the first and the last. Undefined for all other keys.
 */
export function patchAfterKey(
  placed: readonly PlacedPatch[],
  current: number | null,
  key: string,
): number | undefined {
  const last = placed.length - 1;
  if (last < 0) return undefined;
  if (key === 'Home') return 0;
  if (key === 'End') return last;
  const way = WAYS[key];
  if (way === undefined) return undefined;
  const from = current === null ? undefined : placed[current];
  if (current === null || from === undefined) return 0;
  const isOnward = way === 'far' || way === 'right';
  return nearestBeside(placed, from, way) ?? Math.min(last, Math.max(0, current + (isOnward ? 1 : -1)));
}

/** The index of the patch under a point of the fabric, or null. */
export function patchUnder(
  placed: readonly PlacedPatch[],
  { x, y }: { readonly x: number; readonly y: number },
): number | null {
  const found = placed.findIndex(
    (patch) => x >= patch.x && x <= patch.x + patch.width && y >= patch.y && y <= patch.y + patch.height,
  );
  return found < 0 ? null : found;
}

/** The nearest patch that is wholly beyond this one and overlaps it sideways. Of equally near ones, the one most in line. */
function nearestBeside(
  placed: readonly PlacedPatch[],
  from: PlacedPatch,
  way: 'far' | 'near' | 'right' | 'left',
): number | undefined {
  const isAlong = way === 'far' || way === 'near';
  const [start, side] = isAlong ? (['y', 'x'] as const) : (['x', 'y'] as const);
  const [length, breadth] = isAlong ? (['height', 'width'] as const) : (['width', 'height'] as const);
  let best: { readonly index: number; readonly away: number; readonly aside: number } | undefined;
  placed.forEach((patch, index) => {
    const away =
      way === 'far' || way === 'right'
        ? patch[start] - (from[start] + from[length])
        : from[start] - (patch[start] + patch[length]);
    const isBeside = patch[side] < from[side] + from[breadth] && from[side] < patch[side] + patch[breadth];
    if (away < 0 || !isBeside) return;
    const aside = Math.abs(patch[side] - from[side]);
    if (best === undefined || away < best.away || (away === best.away && aside < best.aside)) {
      best = { index, away, aside };
    }
  });
  return best?.index;
}
