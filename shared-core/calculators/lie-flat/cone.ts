/** The shape that a ring takes when its wedges make less or more than a full circle. Angles in radians, lengths in any one unit. */

const FULL_TURN = 2 * Math.PI;

/**
 * How far a cone stands up over `reach` along its fabric if `missing` of the full turn was taken out: its edge has the length of a
 * circle with the radius reach · (1 − missing ÷ full turn), and the fabric keeps its length. 0 ≤ missing ≤ full turn.
 */
export function coneRise(reach: number, missing: number): number {
  return reach * Math.sqrt(1 - (1 - missing / FULL_TURN) ** 2);
}

/** The angle that may be missing while pressing the ring flat eases in no more than this share of its fabric. */
export function angleForFullness(share: number): number {
  return FULL_TURN * share;
}

/**
 * From the lowest to the highest point of an edge `reach` from the middle, if `extra` was added to the full turn and the ring
 * stands in `waves` even waves, two or more. The fabric does not stretch, so the edge stays on a ball with the radius `reach`. An
 * even wave of height a (in radians) on that ball is a²(k² − 1) ÷ 4 of the full turn longer. Too low by less than 3% up to 20° and
 * less than 15% up to 180°.
 */
export function waveHeight(reach: number, extra: number, waves: number): number {
  return 2 * reach * Math.sin(2 * Math.sqrt(extra / FULL_TURN / (waves ** 2 - 1)));
}
