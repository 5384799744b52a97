import type { CutLimits, PatchType } from '../tree/cut-plan';
import type { SearchNews } from '../tree/search-news';
import { beamContext, movesUpTo } from './beam-context';
import { searchBeam } from './guillotine-beam';
import { patchKinds } from './patch-kinds';
import { treesOfMoves } from './beam-tree';

/** Weights of open edges used in turn, found by trial on published problems: light, very light, heavy. */
const EDGE_WEIGHTS = [0.15, 0.08, 0.3] as const;
const LAST_BEAM_WIDTH = 60_000;

export interface GuillotineTask {
  readonly patches: readonly PatchType[];
  readonly stripWidth: number;
  /** Height of the layout to improve on. */
  readonly first: number;
  /** No layout is lower. */
  readonly bound: number;
  readonly limits: CutLimits;
  /** Numbers in [0, 1). */
  readonly random: () => number;
}

/**
 * Looks for lower guillotine layouts until one meets the bound. It doubles the beam width from turn to turn, and within a
 * turn halves the range between the bound and the best height by asking the beam to fill exactly the height in the middle.
 */
export function* improveGuillotine(task: GuillotineTask, news: SearchNews): Generator<unknown, void> {
  const { patches, stripWidth, first, bound, limits } = task;
  const kinds = patchKinds(patches, stripWidth, first, limits.maxStages === 0);
  const copies = patches.map((patch) => patch.copies);
  const areas = patches.map((patch) => patch.width * patch.height);
  const context = beamContext({ kinds, limits }, areas, task.random);
  let best = first;
  for (let turn = 0; best > bound; turn++) {
    const beamWidth = 2 ** turn;
    if (beamWidth > LAST_BEAM_WIDTH) return;
    let low = bound;
    while (low < best) {
      const height = Math.floor((low + best) / 2);
      const roots = [{ width: stripWidth, height }];
      const edgeWeight = EDGE_WEIGHTS[turn % EDGE_WEIGHTS.length]!;
      const outcome = yield* searchBeam(context, {
        copies,
        roots,
        beamWidth,
        edgeWeight,
        mustPlaceAll: true,
      });
      if (!outcome.isComplete) {
        low = height + 1;
        continue;
      }
      const [tree] = treesOfMoves(context, copies, roots, movesUpTo(context.history, outcome.last));
      best = height;
      news.layout(height, tree!);
    }
  }
}
