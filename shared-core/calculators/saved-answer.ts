import type { Need } from '#core/domain/need';
import { type PatchList, patchListSchema } from '#core/domain/patch-list';
import type { WorkDone } from '#core/domain/clock';
import type { Length } from '#core/units/length';
import type { Calculation, Calculator, SavedQuestion } from './calculator';
import { calculatorByName } from './registry';

/** What has to be bought or on hand for a saved answer; nothing when it no longer reads. */
export function needsOfSavedAnswer(saved: SavedQuestion, usualWidth: Length): readonly Need[] {
  const answer = workedOutAgain(saved, (calculator) => 'needs' in calculator);
  return answer?.calculator.needs?.(answer.input, answer.details, usualWidth) ?? [];
}

/** What a saved answer hands to a cutting plan; nothing when it no longer reads, or asks for more than a plan can hold. */
export function cutsOfSavedAnswer(saved: SavedQuestion): PatchList {
  const answer = workedOutAgain(saved, (calculator) => 'cuts' in calculator);
  return patchListSchema.safeParse(answer?.calculator.cuts?.(answer.input, answer.details)).data ?? [];
}

/** How much there is to do by a saved answer; nothing when it no longer reads. */
export function workOfSavedAnswer(saved: SavedQuestion): readonly WorkDone[] {
  const answer = workedOutAgain(saved, (calculator) => 'workIn' in calculator);
  return answer?.calculator.workIn?.(answer.details) ?? [];
}

/**
 * A saved answer as far as other pages read it. Its details are worked out again from the input it was saved with: the input
 * has a schema that every calculator must have anyway, so no second schema can fall behind, and an answer of an older version
 * gives what the calculator would say today. Null when the calculator is unknown or has nothing of the kind, or when the input is refused. */
function workedOutAgain(
  { calculator: name, input: stored }: SavedQuestion,
  isOfUse: (calculator: Calculator) => boolean,
): { readonly calculator: Calculator; readonly input: object; readonly details: object } | null {
  const calculator = calculatorByName(name);
  if (calculator === undefined || !isOfUse(calculator)) return null;
  const input = calculator.input.safeParse(stored);
  if (!input.success) return null;
  const answer = calculator.calculate(input.data);
  return answer.ok ? { calculator, input: input.data, details: answer.value.details } : null;
}

/**
 * Those of a stage's saved answers that ask for fabric of their own. One that another of them includes is left out, such as
 * single patches beside the whole top; of several ways to one thing, such as a binding, the last saved counts.
 */
export function answersThatCount<Answer extends { readonly calculator: string; readonly savedAt: number }>(
  answers: readonly Answer[],
): readonly Answer[] {
  const included = new Set(answers.flatMap(({ calculator }) => calculatorByName(calculator)?.includes ?? []));
  const last = new Map<string, Answer>();
  for (const one of answers) {
    const way = calculatorByName(one.calculator)?.wayTo;
    const before = way === undefined ? undefined : last.get(way);
    if (way !== undefined && (before === undefined || one.savedAt >= before.savedAt)) last.set(way, one);
  }
  return answers.filter((one) => {
    const way = calculatorByName(one.calculator)?.wayTo;
    return !included.has(one.calculator) && (way === undefined || last.get(way) === one);
  });
}

/** A stored answer as a calculation; null when the stored data does not have the form of one. */
export function calculationOf(answer: unknown): Calculation | null {
  const isCalculation =
    typeof answer === 'object' &&
    answer !== null &&
    'figures' in answer &&
    Array.isArray(answer.figures) &&
    'notes' in answer &&
    'tables' in answer;
  return isCalculation ? (answer as unknown as Calculation) : null;
}
