import type { SixLengths } from './quad-fit';

/** In the order of SixLengths. */
export const LENGTH_NAMES = ['top', 'right', 'bottom', 'left', 'downToRight', 'upToRight'] as const;
export type LengthName = (typeof LENGTH_NAMES)[number];

/** What one length would have to be, if the other five are right. */
export interface SoleChange {
  readonly name: LengthName;
  readonly fits: number;
  /** `fits` minus the measured length. */
  readonly changedBy: number;
  /** By how much opposite sides and the two diagonals then still differ, added up: 0 for a rectangle. */
  readonly unevenness: number;
}

export interface Closure {
  /** One for each length that can close the shape alone, in the order of SixLengths. */
  readonly soleChanges: readonly SoleChange[];
  /** The smallest change of one length alone that makes the six fit together. Null if no length alone can. */
  readonly error: number | null;
}

/**
 * How each length is found from the other five. A length joins two corners; the other two corners are joined by `base`, and each
 * end of the length is placed by its distances from the two ends of the base. The ends of a side are on one side of the base, the
 * ends of a diagonal on both.
 */
interface Placement {
  readonly base: LengthName;
  /** Distances of each end from the first and from the second end of the base. */
  readonly one: readonly [LengthName, LengthName];
  readonly other: readonly [LengthName, LengthName];
}

const PLACEMENTS: Readonly<Record<LengthName, Placement>> = {
  top: { base: 'bottom', one: ['downToRight', 'left'], other: ['right', 'upToRight'] },
  right: { base: 'left', one: ['upToRight', 'top'], other: ['bottom', 'downToRight'] },
  bottom: { base: 'top', one: ['downToRight', 'right'], other: ['left', 'upToRight'] },
  left: { base: 'right', one: ['top', 'downToRight'], other: ['upToRight', 'bottom'] },
  downToRight: { base: 'upToRight', one: ['top', 'left'], other: ['right', 'bottom'] },
  upToRight: { base: 'downToRight', one: ['top', 'right'], other: ['left', 'bottom'] },
};

/** The closure error of six measured lengths, exact and in their unit; nothing is rounded. */
export function closureOf(lengths: SixLengths): Closure {
  const soleChanges = LENGTH_NAMES.flatMap((name) => {
    const fits = lengthFromOthers(lengths, name);
    if (fits === null) return [];
    const unevenness = unevennessOf({ ...lengths, [name]: fits });
    return [{ name, fits, changedBy: fits - lengths[name], unevenness }];
  });
  const sizes = soleChanges.map(({ changedBy }) => Math.abs(changedBy));
  return { soleChanges, error: sizes.length === 0 ? null : Math.min(...sizes) };
}

/**
 * The lengths to measure again first. Any one length can be the wrong one, so this asks which change leaves opposite sides and
 * diagonals most alike, as a maker means them to be. Every length that does so within `tolerance` of the best is named.
 */
export function suspectsOf({ soleChanges }: Closure, tolerance: number): readonly SoleChange[] {
  const least = Math.min(...soleChanges.map(({ unevenness }) => unevenness));
  return soleChanges.filter(({ unevenness }) => unevenness <= least + tolerance);
}

function unevennessOf({ top, right, bottom, left, downToRight, upToRight }: SixLengths): number {
  return Math.abs(top - bottom) + Math.abs(right - left) + Math.abs(downToRight - upToRight);
}

function lengthFromOthers(lengths: SixLengths, name: LengthName): number | null {
  const { base, one, other } = PLACEMENTS[name];
  const along = lengths[base];
  const first = placedOn(along, lengths[one[0]], lengths[one[1]]);
  const second = placedOn(along, lengths[other[0]], lengths[other[1]]);
  if (first === null || second === null) return null;
  const isDiagonal = name === 'downToRight' || name === 'upToRight';
  return Math.hypot(first.x - second.x, isDiagonal ? first.y + second.y : first.y - second.y);
}

/** The point above a base on the x axis with these distances from its two ends. Null if they do not meet. */
function placedOn(base: number, fromFirst: number, fromSecond: number) {
  const x = (fromFirst ** 2 - fromSecond ** 2 + base ** 2) / (2 * base);
  const squared = fromFirst ** 2 - x ** 2;
  return squared < 0 ? null : { x, y: Math.sqrt(squared) };
}
