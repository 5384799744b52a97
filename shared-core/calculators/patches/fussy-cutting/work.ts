import { type Length, lengthFromUnits } from '#core/units/length';
import type { FussyCuttingInput } from './input';

/** Lengths in whole 1/320 mm. */
export interface FussyCuttingDetails {
  readonly cutWidth: Length;
  readonly cutLength: Length;
  /** From one patch to the next: as many whole repeats as a cut patch takes, so that no two overlap. */
  readonly stepAcross: Length;
  readonly stepAlong: Length;
  readonly across: number;
  readonly rows: number;
  readonly fabricLength: Length;
}

/**
 * How many patches fit wherever the print happens to start: its first whole figure may begin almost a whole repeat in from the edge,
 * so one repeat is set aside across and along. Null when not even one patch is sure to fit across the fabric.
 */
export function fussyCutting(input: FussyCuttingInput): FussyCuttingDetails | null {
  const { seam, repeatAcross, repeatAlong, fabricWidth, count } = input;
  const cutWidth = input.windowWidth + 2 * seam;
  const cutLength = input.windowLength + 2 * seam;
  const stepAcross = timesToReach(cutWidth, repeatAcross) * repeatAcross;
  const stepAlong = timesToReach(cutLength, repeatAlong) * repeatAlong;
  const room = fabricWidth - repeatAcross - cutWidth;
  if (room < 0) return null;
  const across = timesWithin(room, stepAcross) + 1;
  const rows = timesToReach(count, across);
  return {
    cutWidth: lengthFromUnits(cutWidth),
    cutLength: lengthFromUnits(cutLength),
    stepAcross: lengthFromUnits(stepAcross),
    stepAlong: lengthFromUnits(stepAlong),
    across,
    rows,
    fabricLength: lengthFromUnits(repeatAlong + (rows - 1) * stepAlong + cutLength),
  };
}

/** The patches that any length of this fabric is sure to give; 0 when it is too short for one. */
export function patchesFrom(length: number, details: FussyCuttingDetails, repeatAlong: number): number {
  const room = length - repeatAlong - details.cutLength;
  return room < 0 ? 0 : details.across * (timesWithin(room, details.stepAlong) + 1);
}

/** How often a whole number goes into another, exactly: all lengths here are whole units. */
function timesWithin(whole: number, step: number): number {
  return (whole - (whole % step)) / step;
}

/** The least whole number of steps that reaches a whole number. */
function timesToReach(whole: number, step: number): number {
  return timesWithin(whole + step - 1, step);
}
