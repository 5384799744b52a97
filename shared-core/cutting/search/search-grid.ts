import type { PatchType } from '../tree/cut-plan';

/** The planner's grid: its steps are `x` by `y` true units. Patches are rounded up and fabric is rounded down. */
export interface SearchGrid {
  readonly x: number;
  readonly y: number;
}

/** With more steps across the fabric the grid is made coarser. On 42 in the steps stay finer than 1/64 in. */
const MOST_STEPS_ACROSS = 4096;
const MOST_STEPS_LONG = 2 ** 18;

/**
 * The largest common step of the patches' sizes, which loses nothing. Where that is too fine for a fabric of the given size,
 * the step is coarser and may lose up to one step for each patch. Turning needs the same step in both directions.
 */
export function searchGrid(patches: readonly PatchType[], width: number, length: number): SearchGrid {
  const x = stepOf(patches.map((patch) => patch.width));
  const y = stepOf(patches.map((patch) => patch.height));
  const canTurn = patches.some((patch) => patch.mayTurn && patch.width !== patch.height);
  const coarseX = Math.max(x, Math.ceil(width / MOST_STEPS_ACROSS));
  const coarseY = Math.max(y, Math.ceil(length / MOST_STEPS_LONG));
  if (!canTurn) return { x: x >= coarseX ? x : coarseX, y: y >= coarseY ? y : coarseY };
  const common = Math.max(greatestCommonStep(x, y), 1);
  const tooFine = Math.max(Math.ceil(width / MOST_STEPS_ACROSS), Math.ceil(length / MOST_STEPS_LONG));
  const coarse = Math.max(common, Math.min(tooFine, Math.max(1, width)));
  return { x: coarse, y: coarse };
}

/**
 * The patches in grid steps, for a fabric of the given true width. A patch that fits the width of the fabric also fits it on
 * the grid, although the fabric is rounded down. A square is never turned, because it is not square on a grid whose steps
 * differ.
 */
export function patchesOnGrid(
  patches: readonly PatchType[],
  grid: SearchGrid,
  fabricWidth: number,
): PatchType[] {
  const most = Math.floor(fabricWidth / grid.x);
  const stepsAcross = (length: number, step: number) => {
    const steps = Math.ceil(length / step);
    return length <= fabricWidth ? Math.min(steps, most) : steps;
  };
  return patches.map((patch) => {
    const mayTurn = patch.mayTurn && patch.width !== patch.height;
    return {
      ...patch,
      width: stepsAcross(patch.width, grid.x),
      height: mayTurn ? stepsAcross(patch.height, grid.y) : Math.ceil(patch.height / grid.y),
      mayTurn,
    };
  });
}

/** Whether sums of patches on the grid are exact, so that a proof on the grid holds in true units. */
export function isExactGrid(patches: readonly PatchType[], grid: SearchGrid): boolean {
  return patches.every((patch) => patch.width % grid.x === 0 && patch.height % grid.y === 0);
}

function stepOf(lengths: readonly number[]): number {
  return Math.max(1, lengths.reduce(greatestCommonStep, 0));
}

function greatestCommonStep(a: number, b: number): number {
  let [large, small] = [a, b];
  while (small !== 0) [large, small] = [small, large % small];
  return large;
}
