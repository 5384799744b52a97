import { bestChoice, leastContrastOf, type RatedChoice } from './best-choice';
import type { ChoiceProblem, Suggestion } from './choice-problem';
import { areaOf, type Candidate, candidatesFor } from './role-candidates';

/** A search for suggestions that can be asked for one more at a time, so that a worker stays free to stop. */
export interface SuggestionSearch {
  /** The next best suggestion; null when there is no other. */
  next(): Suggestion | null;
  /** Works out the fabrics of one more role; true while there are roles left. Nothing is suggested before. */
  prepare(): boolean;
}

/**
 * Fabrics for every role of a top, the best first. Each suggestion differs from every one before it in half of its roles, and when
 * no more of those are left in fewer, down to one. Whatever is suggested has been cut on paper by the cutting planner.
 */
export function suggestFabrics(problem: ChoiceProblem): SuggestionSearch {
  const wholeArea = problem.roles.reduce((sum, role) => sum + areaOf(role), 0);
  const candidates: (readonly Candidate[])[] = [];
  const found: Suggestion[] = [];
  let differsIn = Math.ceil(problem.roles.length / 2);
  const prepare = () => {
    const role = problem.roles[candidates.length];
    if (role !== undefined) candidates.push(candidatesFor(problem, role, areaOf(role) / wholeArea));
    return candidates.length < problem.roles.length;
  };
  return {
    prepare,
    next() {
      while (prepare());
      for (; differsIn > 0; differsIn -= 1) {
        const best = bestChoice(problem, candidates, { found: found.map(({ choice }) => choice), differsIn });
        if (best === null) continue;
        const suggestion = suggestionOf(problem, best, wholeArea);
        found.push(suggestion);
        return suggestion;
      }
      return null;
    },
  };
}

function suggestionOf(
  problem: ChoiceProblem,
  { candidates, score }: RatedChoice,
  wholeArea: number,
): Suggestion {
  const choice = candidates.map(({ fabric }) => fabric);
  return {
    choice,
    score,
    leastContrast: leastContrastOf(problem, choice),
    fromLeftovers: candidates.reduce((sum, { fromLeftovers }, role) => {
      const own = problem.roles[role];
      return own === undefined ? sum : sum + (fromLeftovers * areaOf(own)) / wholeArea;
    }, 0),
    toBuy: candidates.flatMap(({ lengthToBuy, minorToBuy }, role) =>
      lengthToBuy === 0 ? [] : [{ role, length: lengthToBuy, minor: minorToBuy }],
    ),
  };
}
