import type { Measurements } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import type { Calculation, Calculator } from '../calculator';
import { completeInput } from '../complete-input';
import type { LengthQuantity, Quantity, Sentence } from '../explanation';
import { lengthNearest, lengthUp } from '../quantities';
import { cutStepOfSettings } from '../shared-fields';

/** Steps in order under one heading, each a sentence with its quantities. */
export interface StepGroup {
  readonly title: string;
  readonly steps: readonly Sentence[];
}

/** An answer saved with the stage: which calculator, and what the maker chose there. */
export interface StageAnswer {
  readonly calculator: string;
  readonly ownInput: unknown;
  readonly savedAt: number;
}

/** What the steps of a stage are worked out from. */
export interface StepGrounds {
  readonly stage: Pick<Stage, 'kind'>;
  /** The kinds of the stages before it in the project. */
  readonly before: readonly Stage['kind'][];
  readonly measurements: Measurements;
  readonly answers: readonly StageAnswer[];
}

interface WorkedOut<Input extends object, Details extends object> {
  readonly input: Input;
  readonly calculation: Calculation<Details>;
}

/**
 * What the calculator says for the project as it is now, with the maker's own choices where they were saved. Null when that input has
 * no answer.
 */
export function answerNow<Input extends object, Details extends object>(
  calculator: Calculator<Input, Details>,
  { measurements, answers }: Pick<StepGrounds, 'measurements' | 'answers'>,
): WorkedOut<Input, Details> | null {
  const own = answers.find((one) => one.calculator === calculator.name)?.ownInput ?? {};
  const completed = completeInput(calculator, measurements, own);
  const input = completed.ok ? calculator.input.safeParse(completed.value.input) : undefined;
  if (input?.success !== true) return null;
  const calculation = calculator.calculate(input.data);
  return calculation.ok ? { input: input.data, calculation: calculation.value } : null;
}

/** A step with its quantities; `says` names each in braces. */
export function step(says: string, values: Readonly<Record<string, Quantity>> = {}): Sentence {
  return { says, values };
}

type Settled = Pick<StepGrounds, 'measurements'>;

/** A length to compare with a tape, to the nearest cutting step. The sentence says “about”. */
export function about(exact: number, { measurements }: Settled): LengthQuantity {
  return lengthNearest(exact, cutStepOfSettings(measurements.settings));
}

/** A length that must not be too short, up to the next cutting step. */
export function atLeast(exact: number, { measurements }: Settled): LengthQuantity {
  return lengthUp(exact, cutStepOfSettings(measurements.settings));
}
