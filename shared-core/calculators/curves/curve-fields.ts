import { choiceField, percentField } from '#core/domain/fields';
import type { StrainLimits } from './strain';

/** Limits and grain, as inputs of the calculators for curves; the limits are settings because fabric differs. */
export function grainField() {
  return choiceField(['bias', 'straight'], {
    title: 'Strip is cut on the',
    help: 'Bias bends and stretches; straight grain hardly does.',
  });
}

export function limitFields() {
  return {
    comfortableLimit: percentField({
      title: 'Lies by itself up to',
      isSeldom: true,
      help: 'Threads turned from 90° to 80° give 8 %.',
      minimum: 1,
      maximum: 40,
    }),
    hardLimit: percentField({
      title: 'Hard from',
      isSeldom: true,
      help: 'Threads turned to 70° give 16 %.',
      minimum: 1,
      maximum: 40,
    }),
    impossibleLimit: percentField({
      title: 'Impossible from',
      isSeldom: true,
      help: 'Threads turned to 60° give 22 %.',
      minimum: 1,
      maximum: 40,
    }),
    straightLimit: percentField({
      title: 'Straight grain gives',
      isSeldom: true,
      help: 'Common practice: 2 %.',
      minimum: 0.5,
      maximum: 20,
    }),
  };
}

export interface LimitInputs {
  readonly comfortableLimit: number;
  readonly hardLimit: number;
  readonly impossibleLimit: number;
  readonly straightLimit: number;
}

/** From a lattice of threads turned to 80°, 70° and 60° (derived), and common practice for straight grain. */
export const STARTING_LIMITS: LimitInputs = {
  comfortableLimit: 8,
  hardLimit: 16,
  impossibleLimit: 22,
  straightLimit: 2,
};

/** Put in rising order, so that a slip in one setting cannot turn the verdicts round. */
export function limitsFromInputs(inputs: LimitInputs): StrainLimits {
  const hard = Math.max(inputs.comfortableLimit, inputs.hardLimit);
  return {
    comfortable: inputs.comfortableLimit,
    hard,
    impossible: Math.max(hard, inputs.impossibleLimit),
    straight: inputs.straightLimit,
  };
}
