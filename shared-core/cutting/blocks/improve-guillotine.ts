import type { PatchType } from '../tree/cut-plan';
import type { CutLimits } from './beam-move';
import type { SearchNews } from '../strips/improve-strips';
import { beamWorkshop, movesUpTo } from './beam-context';
import { searchBeam } from './guillotine-beam';
import { patchKinds } from './patch-kinds';
import { treesOfMoves } from './beam-tree';

const EDGE_WEIGHTS = [0.15, 0.08, 0.3] as const;
const LAST_BEAM_WIDTH = 60_000;

/**
 * Looks for ever lower guillotine layouts until the bound is met: for every beam width, doubling, it halves the range
 * between bound and best height, asking the beam to fill exactly the height in the middle.
 */
export function* improveGuillotine(
  patches: readonly PatchType[],
  stripWidth: number,
  first: number,
  bound: number,
  limits: CutLimits,
  random: () => number,
  news: SearchNews,
): Generator<unknown, void> {
  const kinds = patchKinds(patches, stripWidth, first, limits.maxStages === 0);
  const copies = patches.map((patch) => patch.copies);
  const areas = patches.map((patch) => patch.width * patch.height);
  const shop = beamWorkshop(kinds, areas, limits, random);
  let best = first;
  for (let turn = 0; best > bound; turn++) {
    const beamWidth = 2 ** turn;
    if (beamWidth > LAST_BEAM_WIDTH) return;
    let low = bound;
    while (low < best) {
      const height = Math.floor((low + best) / 2);
      const roots = [{ width: stripWidth, height }];
      const edgeWeight = EDGE_WEIGHTS[turn % EDGE_WEIGHTS.length]!;
      const outcome = yield* searchBeam(shop, { copies, roots, beamWidth, edgeWeight, mustPlaceAll: true });
      if (!outcome.isComplete) {
        low = height + 1;
        continue;
      }
      const [tree] = treesOfMoves(kinds, copies, limits, roots, movesUpTo(shop.history, outcome.last));
      best = height;
      news.layout(height, tree!);
    }
  }
}
