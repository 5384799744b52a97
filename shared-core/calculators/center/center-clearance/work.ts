import { type CenterClearanceInput, patchOf } from './input';
import { distanceToPatchEdge, seamsCrossed } from './center-patch';

export interface CenterClearanceDetails {
  readonly cutRadius: number;
  readonly seamRadius: number;
  /** From the hole's center to the nearest seam of the patch; negative outside the patch. */
  readonly centerToEdge: number;
  /** From the cut edge, the seam line and the fold on the back to the nearest seam of the patch; negative outside the patch. */
  readonly clearanceAtCut: number;
  readonly clearanceAtSeam: number;
  readonly clearanceAtBack: number;
  /** At the seam line, if the center is off by the accuracy in the worst direction. */
  readonly worstClearance: number;
  readonly seamsCrossed: number;
  readonly staysInside: boolean;
  /** Largest hole with this center whose seam line stays inside the patch; 0 or negative if there is none. */
  readonly largestHole: number;
}

export function workOutClearance(input: CenterClearanceInput): CenterClearanceDetails {
  const patch = patchOf(input);
  const center = { x: input.offsetAcross, y: input.offsetDown };
  const cutRadius = input.holeDiameter / 2;
  const seamRadius = cutRadius + input.seamAllowance;
  const centerToEdge = distanceToPatchEdge(patch, center);
  const clearanceAtSeam = centerToEdge - seamRadius;
  return {
    cutRadius,
    seamRadius,
    centerToEdge,
    clearanceAtCut: centerToEdge - cutRadius,
    clearanceAtSeam,
    clearanceAtBack: clearanceAtSeam - input.backCover,
    worstClearance: clearanceAtSeam - input.accuracy,
    seamsCrossed: seamsCrossed(patch, center, seamRadius),
    staysInside: clearanceAtSeam >= 0,
    largestHole: 2 * (centerToEdge - input.seamAllowance),
  };
}
