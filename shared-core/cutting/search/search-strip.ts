import type { CuttingRule, StripProblem } from '../tree/cut-plan';
import type { CutLimits } from '../blocks/beam-move';
import type { SearchNews } from '../strips/improve-strips';
import { firstStrips, improveStrips } from '../strips/improve-strips';
import { improveGuillotine } from '../blocks/improve-guillotine';

/** A strip problem in grid steps, with a height that no layout can go below. */
export interface GridProblem extends StripProblem {
  readonly bound: number;
}

/** The whole search on one strip: a first layout in strips at once, then better ones under the rule until none is known. */
export function* searchStrip(
  { patches, stripWidth, bound }: GridProblem,
  rule: CuttingRule,
  limits: CutLimits,
  random: () => number,
  news: SearchNews,
): Generator<unknown, void> {
  let first = 0;
  yield* firstStrips(patches, stripWidth, {
    bound: (height) => news.bound(height),
    layout(height, tree) {
      first = height;
      news.layout(height, tree);
    },
  });
  if (rule === '2-stage') yield* improveStrips(patches, stripWidth, first, bound, random, news);
  else yield* improveGuillotine(patches, stripWidth, first, bound, limits, random, news);
}
