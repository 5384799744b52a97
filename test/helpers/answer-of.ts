import { formatSentence } from '#core/calculators/format-quantity';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import { currencyFromCode } from '#core/units/money';

/** The answer to an input that must have one; throws with the refusal otherwise. */
export function answerOf<Input extends object, Details extends object>(
  calculator: Calculator<Input, Details>,
  input: Input,
): Calculation<Details> {
  const answer = calculator.calculate(input);
  if (!answer.ok) throw new Error(`Refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
}

/** Why an input that must have no answer has none, in a whole sentence; throws otherwise. */
export function refusalOf<Input extends object>(calculator: Calculator<Input>, input: Input): Refusal {
  const answer = calculator.calculate(input);
  if (answer.ok) throw new Error('Not refused');
  const style = {
    display: { system: 'inch', inchStep: 8 },
    currency: currencyFromCode('USD'),
    locale: 'en-US',
  } as const;
  const sentence = formatSentence(answer.error, style);
  if (/[{}]|undefined|NaN/.test(sentence)) throw new Error(`No sentence: ${sentence}`);
  return answer.error;
}
