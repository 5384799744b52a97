import type { KeptWithTicks } from '#core/cutting/tree/kept-plan';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { cuttablePieces, freeToCut, type PlanStash } from './job-of-setup';
import { locksOf } from '../table/locked-cuts';
import { isSameSource, type PatchSource } from '../desk/patch-sources';

/** Why a saved plan is out of date. */
export type PlanChange = 'lists' | 'fabric-found' | 'stash';

/**
 * What has changed since a plan was saved: a list was saved again or deleted, a fabric of a list came into the stash, or the
 * pieces that may be cut are others or have another length. Cuts by the plan itself, and their leftovers, do not count.
 */
export function changesSince(
  saved: KeptWithTicks,
  now: {
    readonly setup: CuttingSetup;
    readonly stash: PlanStash;
    readonly sources: readonly PatchSource[];
  },
): readonly PlanChange[] {
  const changes: PlanChange[] = [];
  const { setup } = saved.plan;
  const isListSame = setup.taken.every(({ source, keptAt }) =>
    now.sources.some((one) => isSameSource(one, source) && one.savedAt === keptAt),
  );
  if (!isListSame) changes.push('lists');
  if (now.setup.fabricChoices.length > setup.fabricChoices.length) changes.push('fabric-found');
  if (isStashChanged(saved, now.stash)) changes.push('stash');
  return changes;
}

function isStashChanged(saved: KeptWithTicks, stash: PlanStash): boolean {
  const { setup, plannedWith } = saved.plan;
  const locks = locksOf(saved, setup.lines);
  const inStash = new Map(
    [...stash.fabrics.values()].flatMap(({ pieces }) => pieces).map((piece) => [piece.id, piece]),
  );
  const isAnyLengthChanged = plannedWith
    .filter(({ pieceId }) => !setup.leftOut.includes(pieceId))
    .some(({ pieceId, length }) => {
      const piece = inStash.get(pieceId);
      const free = piece === undefined ? 0 : freeToCut(piece, stash.ownHolds);
      return free + (locks.get(pieceId)?.length ?? 0) !== length;
    });
  if (isAnyLengthChanged) return true;
  const accountedFor = new Set([
    ...plannedWith.map(({ pieceId }) => pieceId),
    ...saved.ticked.flatMap(({ leftovers }) => leftovers),
    ...setup.leftOut,
  ]);
  return [...stash.fabrics.values()]
    .flatMap((fabric) => cuttablePieces(fabric, stash.ownHolds))
    .some(({ id }) => !accountedFor.has(id));
}
