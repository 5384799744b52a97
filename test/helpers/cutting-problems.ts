import fc from 'fast-check';
import type { CuttingRule, PatchType, StripProblem } from '#core/cutting/tree/cut-plan';
import { type CuttingAnswer, createCuttingSearch } from './cutting-search';
import { seededRandom } from '#core/units/seeded-random';

/** A strip problem in which every patch fits the strip unturned. */
export function stripProblem(most: {
  types: number;
  copies: number;
  width: number;
}): fc.Arbitrary<StripProblem> {
  return fc.integer({ min: 1, max: most.width }).chain((stripWidth) =>
    fc.record({
      stripWidth: fc.constant(stripWidth),
      patches: fc.array(
        fc.record({
          width: fc.integer({ min: 1, max: stripWidth }),
          height: fc.integer({ min: 1, max: most.width }),
          copies: fc.integer({ min: 0, max: most.copies }),
          mayTurn: fc.boolean(),
        }),
        { maxLength: most.types },
      ),
    }),
  );
}

/** The answer after this many steps of the search, and after the first layout at the earliest. */
export function answerAfter(
  problem: StripProblem,
  rule: CuttingRule,
  steps: number,
  seed = 1,
): CuttingAnswer {
  const search = createCuttingSearch(problem, { rule, random: seededRandom(seed) });
  let done = 0;
  search.step(() => done++, steps);
  let answer = search.answer();
  while (answer === undefined) {
    search.step(() => 0, 0);
    answer = search.answer();
  }
  return answer;
}

/** Patches of seeded sizes on a narrow strip, few enough that every layout can be tried. */
export function smallProblem(seed: number, patchCount: number, mayTurn: boolean): StripProblem {
  const random = seededRandom(seed);
  const between = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const stripWidth = between(8, 14);
  const patches: PatchType[] = [];
  for (let left = patchCount; left > 0;) {
    const copies = Math.min(left, between(1, 2));
    patches.push({ width: between(2, 8), height: between(2, 8), copies, mayTurn });
    left -= copies;
  }
  return { stripWidth, patches };
}
