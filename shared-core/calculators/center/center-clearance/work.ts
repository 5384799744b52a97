import type { CenterClearanceInput, OnePatch, SeamsMeet } from './input';
import { distanceToPatchEdge, patchOf, seamsCrossed } from './center-patch';

/** Radii of the circles around the center of the hole, in 1/320 mm, not rounded. */
export interface HoleCircles {
  readonly cutRadius: number;
  readonly seamRadius: number;
  /** Of the edge of the fold on the back. */
  readonly backRadius: number;
}

export interface PatchClearance extends HoleCircles {
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

export interface SeamsClearance extends HoleCircles {
  readonly seamsCrossed: number;
  /** Along the seam line from one seam to the next, if they are spaced evenly. */
  readonly betweenSeams: number;
}

export type CenterClearanceDetails = PatchClearance | SeamsClearance;

export function workOutPatch(input: CenterClearanceInput, asked: OnePatch): PatchClearance {
  const circles = circlesOf(input);
  const patch = patchOf(asked);
  const center = { x: asked.offsetAcross, y: asked.offsetDown };
  const centerToEdge = distanceToPatchEdge(patch, center);
  const clearanceAtSeam = centerToEdge - circles.seamRadius;
  return {
    ...circles,
    centerToEdge,
    clearanceAtCut: centerToEdge - circles.cutRadius,
    clearanceAtSeam,
    clearanceAtBack: centerToEdge - circles.backRadius,
    worstClearance: clearanceAtSeam - asked.accuracy,
    seamsCrossed: seamsCrossed(patch, center, circles.seamRadius),
    staysInside: clearanceAtSeam >= 0,
    largestHole: 2 * (centerToEdge - input.seamAllowance),
  };
}

/** Seams that run outward from the center are all crossed once, whatever the size of the hole. */
export function workOutSeams(input: CenterClearanceInput, { seams }: SeamsMeet): SeamsClearance {
  const circles = circlesOf(input);
  return { ...circles, seamsCrossed: seams, betweenSeams: (2 * Math.PI * circles.seamRadius) / seams };
}

function circlesOf({ holeDiameter, seamAllowance, backCover }: CenterClearanceInput): HoleCircles {
  const seamRadius = holeDiameter / 2 + seamAllowance;
  return { cutRadius: holeDiameter / 2, seamRadius, backRadius: seamRadius + backCover };
}
