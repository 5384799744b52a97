import type { PatchToCut } from '#core/domain/patch-list';
import { failure, type Result, success } from '#core/result';
import {
  type Length,
  LENGTH_ZERO,
  lengthAdd,
  lengthFromExact,
  lengthTimes,
  KILOMETER_UNITS,
} from '#core/units/length';
import { type AlongStrip, patchesPerStrip, stripsToCut, stripsToJoin } from './fill-strips';

/** Patches of one size to cut from one fabric, with the sizes for the ruler. */
export interface PatchDemand {
  readonly fabric: string;
  readonly name: string;
  /** Width of its strips, and the length it takes along them. */
  readonly stripWidth: Length;
  readonly along: AlongStrip;
  readonly isRectangle: boolean;
  /** Whether it may be turned by a quarter on the fabric. */
  readonly mayTurn: boolean;
  /** Whether it may be cut from joined strips if one strip is too short. */
  readonly mayJoin: boolean;
}

/** Strips to cut from one fabric across its width. `length` is what all of them take along the fabric. */
export interface StripsToCut {
  readonly fabric: string;
  readonly width: Length;
  readonly strips: number;
  readonly length: Length;
  readonly isJoined: boolean;
}

export interface FabricNeeded {
  readonly strips: readonly StripsToCut[];
  readonly patches: readonly PatchToCut[];
}

export interface ShortFabric {
  readonly code: 'wider-than-fabric' | 'too-much-fabric';
  readonly demand: PatchDemand;
}

/** A quarter of a kilometer. More must be a typing error. */
const MOST_FABRIC = KILOMETER_UNITS / 4;

/** Cut in strips first, then crosscut: patches of the same fabric and strip width share strips. */
export function fabricNeeded(
  demands: readonly PatchDemand[],
  usableWidth: Length,
  seam: Length,
): Result<FabricNeeded, ShortFabric> {
  const strips: StripsToCut[] = [];
  const patches: PatchToCut[] = [];
  let total = 0;
  for (const group of groupsOf(
    demands.map((demand) => asStrips(turned(demand, usableWidth), usableWidth)),
    usableWidth,
  )) {
    const needed = stripsOf(group, usableWidth, seam);
    if (needed === null) return failure({ code: 'wider-than-fabric', demand: longestOf(group) });
    const { fabric, stripWidth } = group[0];
    total += needed * stripWidth;
    if (total > MOST_FABRIC) return failure({ code: 'too-much-fabric', demand: longestOf(group) });
    const length = lengthTimes(stripWidth, needed);
    strips.push({
      fabric,
      width: stripWidth,
      strips: needed,
      length,
      isJoined: mustJoin(group[0], usableWidth),
    });
    patches.push(...patchesOf(group, needed, usableWidth));
  }
  return success({ strips, patches: mergeEqual(patches) });
}

export interface FabricLength {
  readonly fabric: string;
  readonly length: Length;
}

/** Length of each fabric over the whole usable width, without a safety extra; in the order in which the fabrics first appear. */
export function lengthPerFabric(strips: readonly StripsToCut[]): readonly FabricLength[] {
  const sums = new Map<string, Length>();
  for (const { fabric, length } of strips) {
    sums.set(fabric, lengthAdd(sums.get(fabric) ?? LENGTH_ZERO, length));
  }
  return [...sums].map(([fabric, length]) => ({ fabric, length }));
}

/**
 * A patch longer than the fabric is wide is turned to lie along the fabric. So is one that takes a whole strip by itself, if turning
 * saves fabric. A patch that must not turn stays as it is.
 */
function turned(demand: PatchDemand, usableWidth: Length): PatchDemand {
  if (!demand.isRectangle || !demand.mayTurn) return demand;
  const { stripWidth, along } = demand;
  if (patchesPerStrip(along, usableWidth) > 1) return demand;
  const other: PatchDemand = {
    ...demand,
    stripWidth: lengthFromExact(along.first, 'up'),
    along: { first: stripWidth, pitch: stripWidth, count: along.count },
  };
  if (along.first > usableWidth) return demand.mayJoin ? demand : other;
  const [asIs, across] = [demand, other].map((one) => {
    return (stripsToCut([one.along], usableWidth) ?? Infinity) * one.stripWidth;
  });
  return (across ?? Infinity) < (asIs ?? 0) ? other : demand;
}

type Group = [PatchDemand, ...PatchDemand[]];

/** A shape asks for pieces of strip, each as long as its patches take, and for no less in the last one. */
function asStrips(demand: PatchDemand, usableWidth: Length): PatchDemand {
  const { along, isRectangle } = demand;
  const strips = isRectangle ? null : stripsToCut([along], usableWidth);
  if (strips === null) return demand;
  const most = Math.min(along.count, patchesPerStrip(along, usableWidth));
  const first = lengthFromExact(along.first + (most - 1) * along.pitch, 'up');
  return { ...demand, along: { first, pitch: first, count: strips } };
}

/** Pieces of the same fabric and strip width share strips, and so do joined ones. */
function groupsOf(demands: readonly PatchDemand[], usableWidth: Length): Iterable<Group> {
  const groups = new Map<string, Group>();
  for (const demand of demands) {
    const key = JSON.stringify([demand.fabric, demand.stripWidth, mustJoin(demand, usableWidth)]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [demand]);
    else group.push(demand);
  }
  return groups.values();
}

function mustJoin({ along, mayJoin }: PatchDemand, usableWidth: Length): boolean {
  return mayJoin && along.first > usableWidth;
}

function longestOf(group: Group): PatchDemand {
  return group.reduce((longest, one) => (one.along.first > longest.along.first ? one : longest));
}

function stripsOf(group: Group, usableWidth: Length, seam: Length): number | null {
  const patches = group.map((one) => one.along);
  return mustJoin(group[0], usableWidth)
    ? stripsToJoin(patches, usableWidth, seam)
    : stripsToCut(patches, usableWidth);
}

/** For the cutting planner: a joined patch asks for strips, any other for its rectangle. */
function patchesOf(group: Group, strips: number, usableWidth: Length): readonly PatchToCut[] {
  const [{ fabric, stripWidth: length, mayTurn }] = group;
  if (mustJoin(group[0], usableWidth))
    return [{ fabric, width: usableWidth, length, count: strips, mayTurn }];
  return group.map((one) => {
    const width = lengthFromExact(one.along.first, 'up');
    return { fabric, width, length, count: one.along.count, mayTurn: one.mayTurn };
  });
}

function mergeEqual(patches: readonly PatchToCut[]): readonly PatchToCut[] {
  const merged = new Map<string, PatchToCut>();
  for (const patch of patches) {
    const key = JSON.stringify([patch.fabric, patch.width, patch.length, patch.mayTurn]);
    const before = merged.get(key)?.count ?? 0;
    merged.set(key, { ...patch, count: before + patch.count });
  }
  return [...merged.values()];
}
