import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';

/** The answer to an input that must have one; throws with the refusal otherwise. */
export function answerOf<Input extends object, Details extends object>(
  calculator: Calculator<Input, Details>,
  input: Input,
): Calculation<Details> {
  const answer = calculator.calculate(input);
  if (!answer.ok) throw new Error(`Refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
}

/** Why an input that must have no answer has none; throws otherwise. */
export function refusalOf<Input extends object>(calculator: Calculator<Input>, input: Input): Refusal {
  const answer = calculator.calculate(input);
  if (answer.ok) throw new Error('Not refused');
  return answer.error;
}
