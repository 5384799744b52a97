import type { CalculationId, StageId } from '#core/domain/ids';
import type { Measurements } from '#core/domain/measurements';
import {
  type DecidedFacts,
  FACT_NAMES,
  type FactName,
  factsOfProject,
  type UnsettledFact,
} from '#core/domain/project-facts';
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
    const decided = openDecisions(calculator, measurements, own);
    const tried = trialsIn(calculator, measurements, own).map((one) => ({
      fact: one.fact,
      answer: one.tried,
    }));
    return [...decided, ...tried].map((one) => ({ calculationId, stageId, calculator: name, ...one }));
  });
}

/** A fact that an answer decides, and that the project has otherwise. */
export interface OpenDecision {
  readonly fact: FactName;
  readonly answer: DecidedFacts;
}

/** What an answer from these numbers decides and the project does not have; nothing where there is no answer. */
export function openDecisions(
  calculator: Calculator,
  measurements: Measurements,
  ownInput: object,
): readonly OpenDecision[] {
  if (!('decides' in calculator)) return [];
  const answered = answerCalculator(calculator, measurements, ownInput);
  if (!answered.ok) return [];
  const decided = calculator.decides(answered.value.calculation.details);
  const facts = factsOfProject(measurements);
  return FACT_NAMES.filter(
    (fact) => decided[fact] !== undefined && !isSameData(decided[fact], facts[fact]),
  ).map((fact) => ({ fact, answer: { [fact]: decided[fact] } }));
}
