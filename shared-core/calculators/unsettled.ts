import type { CalculationId, StageId } from '#core/domain/ids';
import type { Hole } from '#core/domain/outline';
import type { Measurements } from '#core/domain/measurements';
import type { UnsettledFact } from '#core/domain/project-facts';
import type { Calculator } from './calculator';
import { answerCalculator, isSameData } from './complete-input';
import { trialsIn } from './fact-fields';
import { calculatorByName } from './registry';

interface SavedAnswer {
  readonly id: CalculationId;
  readonly stageId: StageId;
  readonly calculator: string;
  readonly ownInput: unknown;
}

/** The facts on which the saved answers of a project disagree with it: what they decide, and what was only tried in them. */
export function unsettledFacts(
  answers: readonly SavedAnswer[],
  measurements: Measurements,
): readonly UnsettledFact[] {
  return answers.flatMap(({ id: calculationId, stageId, calculator: name, ownInput }) => {
    const calculator = calculatorByName(name);
    if (calculator === undefined) return [];
    const own = Object.fromEntries(Object.entries(ownInput ?? {}));
    const hole = decidedHole(calculator, measurements, own);
    const isDecided = hole === null || isSameData(hole, measurements.hole);
    const decided = isDecided ? [] : [{ fact: 'hole' as const, answer: { hole } }];
    const tried = trialsIn(calculator, measurements, own).map((one) => ({
      fact: one.fact,
      answer: one.tried,
    }));
    return [...decided, ...tried].map((one) => ({ calculationId, stageId, calculator: name, ...one }));
  });
}

/** The hole that an answer from these numbers decides; null if the calculator decides none or has no answer. */
export function decidedHole(
  calculator: Calculator,
  measurements: Measurements,
  ownInput: object,
): Hole | null {
  if (!('decidesHole' in calculator)) return null;
  const answered = answerCalculator(calculator, measurements, ownInput);
  return answered.ok ? calculator.decidesHole(answered.value.calculation.details) : null;
}
