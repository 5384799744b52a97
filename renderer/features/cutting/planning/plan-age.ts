import type { KeptWithTicks } from '#core/cutting/tree/kept-plan';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { cuttablePieces, freeToCut, type Shelf } from './job-of-setup';
import { locksOf } from '../table/locked-cuts';
import { isSameSource, type PatchSource } from '../desk/patch-sources';

/** Why a kept plan is no longer made for what there is. */
export type PlanChange = 'lists' | 'fabric-found' | 'stash';

/**
 * What has changed since a plan was kept, cuts by the plan itself and their leftovers aside: lists that were kept anew or are
 * gone, a fabric of a list that is in the stash by now, pieces that came, went, or are longer or shorter to these projects.
 */
export function changesSince(
  kept: KeptWithTicks,
  now: {
    readonly setup: CuttingSetup;
    readonly shelf: Shelf;
    readonly sources: readonly PatchSource[];
  },
): readonly PlanChange[] {
  const changes: PlanChange[] = [];
  const { setup } = kept.plan;
  const isListSame = setup.taken.every(({ source, keptAt }) =>
    now.sources.some((one) => isSameSource(one, source) && one.keptAt === keptAt),
  );
  if (!isListSame) changes.push('lists');
  if (now.setup.fabricChoices.length > setup.fabricChoices.length) changes.push('fabric-found');
  if (isShelfOther(kept, now.shelf)) changes.push('stash');
  return changes;
}

function isShelfOther(kept: KeptWithTicks, shelf: Shelf): boolean {
  const { setup, plannedWith } = kept.plan;
  const locks = locksOf(kept, setup.lines);
  const onShelf = new Map(
    [...shelf.fabrics.values()].flatMap(({ pieces }) => pieces).map((piece) => [piece.id, piece]),
  );
  const isPlannedOther = plannedWith
    .filter(({ pieceId }) => !setup.leftOut.includes(pieceId))
    .some(({ pieceId, length }) => {
      const piece = onShelf.get(pieceId);
      const free = piece === undefined ? 0 : freeToCut(piece, shelf.ownHolds);
      return free + (locks.get(pieceId)?.length ?? 0) !== length;
    });
  if (isPlannedOther) return true;
  const known = new Set([
    ...plannedWith.map(({ pieceId }) => pieceId),
    ...kept.ticked.flatMap(({ leftovers }) => leftovers),
    ...setup.leftOut,
  ]);
  return [...shelf.fabrics.values()]
    .flatMap((onIt) => cuttablePieces(onIt, shelf.ownHolds))
    .some(({ id }) => !known.has(id));
}
