import { fitLengths, type LengthModel, normalOf, type Slope } from './fit-lengths';
import { solveLinear } from './solve-linear';

/** What one length would have to be, if all the others are right. */
export interface SoleChange {
  /** Its place in the list of lengths. */
  readonly index: number;
  readonly fits: number;
  /** `fits` minus the measured length. */
  readonly changedBy: number;
  /** What the other lengths still disagree by without it: the root of their summed squares. 0 where they are just enough. */
  readonly leftOver: number;
}

/** Measured lengths, the model they follow, and its unknowns fitted to them. */
export interface Fitted {
  readonly model: LengthModel;
  readonly measured: readonly number[];
  readonly unknowns: readonly number[];
}

/**
 * The change of each length alone that makes it fit the others, in the order of the lengths; without those that the others do not
 * determine. Changes within the accuracy follow from the slopes at the fit, larger ones from a fit without the length.
 */
export function soleChangesOf(fitted: Fitted, accuracy: number): readonly SoleChange[] {
  const { model, measured, unknowns } = fitted;
  const lengths = model.lengthsAt(unknowns);
  const off = lengths.map((length, index) => length - (measured[index] ?? 0));
  const squares = off.reduce((sum, one) => sum + one * one, 0);
  const normal = normalOf(model, unknowns);
  return model.slopesAt(unknowns).flatMap((row, index) => {
    const share = shareChecked(normal, row);
    const [length, misfit] = [measured[index] ?? 0, off[index] ?? 0];
    const changedBy = misfit / share;
    if (share >= UNCHECKED && Math.abs(changedBy) <= accuracy) {
      const leftOver = Math.sqrt(Math.max(0, squares - misfit * changedBy));
      return [{ index, fits: length + changedBy, changedBy, leftOver }];
    }
    const without = fitWithout(fitted, index);
    if (without === null) return [];
    const fits = without.lengths[index] ?? 0;
    return [{ index, fits, changedBy: fits - length, leftOver: without.leftOver }];
  });
}

/** Below this share of a length, its slopes at the fit do not say what the others make of it. */
const UNCHECKED = 1e-9;

/** How much of an error in one length shows as its misfit, from 0 (none: nothing checks it) to 1. */
function shareChecked(normal: readonly (readonly number[])[], row: readonly Slope[]): number {
  const slopes = normal.map(() => 0);
  for (const { unknown, slope } of row) slopes[unknown] = (slopes[unknown] ?? 0) + slope;
  const solved = solveLinear(normal, slopes);
  return solved === null ? 0 : 1 - slopes.reduce((sum, slope, at) => sum + slope * (solved[at] ?? 0), 0);
}

function fitWithout({ model, measured, unknowns }: Fitted, leftOut: number) {
  const others = fitLengths(model, measured, unknowns, leftOut);
  if (others === null) return null;
  const lengths = model.lengthsAt(others);
  const fits = lengths[leftOut] ?? 0;
  // Where the others hardly determine the length, the search runs away.
  if (!(fits > 0 && fits < measured.reduce((sum, length) => sum + length, 0))) return null;
  const rest = lengths.map((one, at) => (at === leftOut ? 0 : one - (measured[at] ?? 0)));
  return { lengths, unknowns: others, leftOver: Math.hypot(...rest) };
}

/** By how much a shape is unlike what a maker means it to be, from its lengths and unknowns. */
export type Unevenness = (lengths: readonly number[], unknowns: readonly number[]) => number;

/** By how much lengths that are meant to be alike differ, added up over groups of their places. */
export function unevenIn(groups: readonly (readonly number[])[]): Unevenness {
  return (lengths) =>
    groups.reduce((sum, group) => {
      const sizes = group.map((index) => lengths[index] ?? 0);
      return sum + Math.max(...sizes) - Math.min(...sizes);
    }, 0);
}

export interface Closure {
  readonly soleChanges: readonly SoleChange[];
  /** The smallest change of one length alone after which the lengths agree best. Null if no length alone can. */
  readonly error: number | null;
  /** What the error may be from small errors alone: they add up over lengths that check one another. */
  readonly limit: number;
  /** Where the error is over the limit, the lengths to measure again first. */
  readonly suspects: readonly SoleChange[];
}

/** As a share of the accuracy: lengths whose change leaves the others to disagree by nearly the same explain the misfit equally well. */
const EQUALLY_WELL = 1 / 4;

/**
 * Whether lengths fit together. Leaving out the wrong length lets the others agree best. Several may do so equally well, above all
 * where only one length is more than the shape needs. Of these, the suspects are the ones whose change leaves the most even shape.
 */
export function closureOf(fitted: Fitted, accuracy: number, unevenness: Unevenness = () => 0): Closure {
  const soleChanges = soleChangesOf(fitted, accuracy);
  const least = Math.min(...soleChanges.map(({ leftOver }) => leftOver));
  const explaining = soleChanges.filter(({ leftOver }) => leftOver <= least + EQUALLY_WELL * accuracy);
  const sizes = explaining.map(({ changedBy }) => Math.abs(changedBy));
  const error = sizes.length === 0 ? null : Math.min(...sizes);
  const limit = accuracy * Math.sqrt(Math.max(1, fitted.measured.length - fitted.unknowns.length));
  if (error === null || error <= limit) return { soleChanges, error, limit, suspects: [] };
  const shapes = explaining.map((change) => {
    const without = fitWithout(fitted, change.index);
    return { change, uneven: without === null ? Infinity : unevenness(without.lengths, without.unknowns) };
  });
  const even = Math.min(...shapes.map(({ uneven }) => uneven));
  const suspects = shapes.filter(({ uneven }) => uneven <= even + accuracy).map(({ change }) => change);
  return { soleChanges, error, limit, suspects };
}
