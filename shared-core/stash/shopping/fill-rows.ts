import type { NeedAmount, NeededPatch } from '#core/domain/need';
import type { PrintDirection, PrintRuns } from '#core/domain/stash';
import { roundDownTo, roundUpTo } from '#core/units/rounding';

/** What is still needed after some of it was cut, and the length that took. */
export interface Filled {
  readonly left: NeedAmount;
  readonly length: number;
}

/** any: a patch that may turn is cut either way. along: none is turned. across: the print runs across the piece, so all are. */
export type PatchTurning = 'any' | 'along' | 'across';

interface Fabric {
  readonly width: number;
  readonly length: number;
  readonly turning: PatchTurning;
}

/** How patches are cut from a piece of fabric, given the direction of its print. */
export function patchTurning(direction: PrintDirection, runs: PrintRuns): PatchTurning {
  return direction === 'any' ? 'any' : runs;
}

/** Cuts as much as one piece gives, in rows across it. `length` is the whole rows used from its near end. */
export function cutFrom(amount: NeedAmount, fabric: Fabric): Filled {
  switch (amount.measure) {
    case 'patches':
      return patchesFrom(amount.patches, fabric);
    case 'strips':
      return stripsFrom(amount, fabric);
    case 'thread':
    case 'notion':
      return fabric.length > 0 ? { left: { ...amount, length: 0 }, length: 0 } : { left: amount, length: 0 };
  }
}

/** Length of fabric this wide for all of it, without any extra; null when the fabric is too narrow for a patch or strip. */
export function lengthFor(amount: NeedAmount, fabric: Omit<Fabric, 'length'>): number | null {
  const { left, length } = cutFrom(amount, { ...fabric, length: Number.MAX_SAFE_INTEGER });
  return isNothing(left) ? length : null;
}

/** A measure to compare two states of one need: an area, or a length of strip, thread or cord. */
export function sizeOfNeed(amount: NeedAmount): number {
  if (amount.measure !== 'patches') return leftOf(amount);
  return amount.patches.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
}

export function isNothing(amount: NeedAmount): boolean {
  return amount.measure === 'patches' ? amount.patches.length === 0 : leftOf(amount) <= 0;
}

function leftOf(amount: Exclude<NeedAmount, { measure: 'patches' }>): number {
  return amount.measure === 'strips' ? amount.needed - amount.cost : amount.length;
}

/** Each strip adds the fabric width less one join. The first strip needs no join, hence `needed - cost`. */
function stripsFrom(amount: Extract<NeedAmount, { measure: 'strips' }>, { width, length }: Fabric): Filled {
  const { strip, needed, cost } = amount;
  const gain = width - cost;
  if (gain <= 0 || needed <= cost) return { left: amount, length: 0 };
  const wanted = roundUpTo((needed - cost) / gain, 1);
  const strips = Math.min(wanted, roundDownTo(length / strip, 1));
  const left = strips === wanted ? cost : needed - strips * gain;
  return { left: { ...amount, needed: left }, length: strips * strip };
}

/** As the print requires. Without a direction: as listed or, if that leaves less, with every patch turned that may be. */
function patchesFrom(patches: readonly NeededPatch[], fabric: Fabric): Filled {
  if (fabric.turning === 'along') return patchesInRows(patches, fabric, () => false);
  if (fabric.turning === 'across') return patchesInRows(patches, fabric, () => true);
  const asListed = patchesInRows(patches, fabric, ({ mayTurn, width }) => mayTurn && width > fabric.width);
  if (isNothing(asListed.left) || patches.every(({ mayTurn }) => !mayTurn)) return asListed;
  const turned = patchesInRows(patches, fabric, ({ mayTurn, length }) => mayTurn && length <= fabric.width);
  return sizeOfNeed(turned.left) < sizeOfNeed(asListed.left) ? turned : asListed;
}

/**
 * Patches of one length share rows. Each row is filled with the widest that still fit, and the same row is repeated while the
 * patches last: strips first, then cross cuts, as with a ruler. What is left keeps the direction it was asked in.
 */
function patchesInRows(
  asked: readonly NeededPatch[],
  fabric: Fabric,
  isTurned: (patch: NeededPatch) => boolean,
): Filled {
  const laid = asked.map((patch) =>
    isTurned(patch) ? { ...turnedPatch(patch), patch } : { ...patch, patch },
  );
  let used = 0;
  const left: NeededPatch[] = [];
  for (const length of new Set(laid.map((one) => one.length))) {
    const group = laid
      .filter((one) => one.length === length)
      .toSorted((one, other) => other.width - one.width);
    const rows = fillRows(group, fabric.width, roundDownTo((fabric.length - used) / length, 1));
    used += rows.count * length;
    left.push(...group.map(({ patch }, place) => ({ ...patch, count: rows.left[place] ?? 0 })));
  }
  return { left: { measure: 'patches', patches: left.filter(({ count }) => count > 0) }, length: used };
}

function turnedPatch(patch: NeededPatch): NeededPatch {
  return { ...patch, width: patch.length, length: patch.width };
}

function fillRows(
  group: readonly NeededPatch[],
  width: number,
  most: number,
): { readonly count: number; readonly left: readonly number[] } {
  const left = group.map(({ count }) => count);
  let count = 0;
  while (count < most) {
    const filling = fillOneRow(group, left, width);
    const times = filling.map((taken, place) =>
      taken === 0 ? Infinity : roundDownTo((left[place] ?? 0) / taken, 1),
    );
    const rows = Math.min(most - count, ...times);
    if (rows === Infinity || filling.every((taken) => taken === 0)) break;
    filling.forEach((taken, place) => {
      left[place] = (left[place] ?? 0) - taken * rows;
    });
    count += rows;
  }
  return { count, left };
}

function fillOneRow(
  group: readonly NeededPatch[],
  left: readonly number[],
  width: number,
): readonly number[] {
  let space = width;
  return group.map((patch, place) => {
    const taken = Math.min(left[place] ?? 0, roundDownTo(space / patch.width, 1));
    space -= taken * patch.width;
    return taken;
  });
}
