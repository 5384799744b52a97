import type { SearchRules, StripProblem } from '../tree/cut-plan';
import type { SearchNews } from '../tree/search-news';
import { firstStrips, improveStrips } from '../strips/improve-strips';
import { improveGuillotine } from '../blocks/improve-guillotine';

/** A strip problem in grid steps, with a height that no layout can go below. */
export interface GridProblem extends StripProblem {
  readonly bound: number;
}

/** Searches one strip: first a quick layout in strips, then better layouts under the rule until none is found. */
export function* searchStrip(
  problem: GridProblem,
  { rule, limits, random }: SearchRules,
  news: SearchNews,
): Generator<unknown, void> {
  let first = 0;
  yield* firstStrips(problem.patches, problem.stripWidth, {
    bound: (height) => news.bound(height),
    layout(height, tree) {
      first = height;
      news.layout(height, tree);
    },
  });
  if (rule === '2-stage') yield* improveStrips({ ...problem, first, random }, news);
  else yield* improveGuillotine({ ...problem, first, limits, random }, news);
}
