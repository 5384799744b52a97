import { choiceField, percentField } from '#core/domain/fields';
import type { Refusal } from '../calculator';
import type { StrainLimits } from './strain';

/** The grain of a strip on a curve. */
export function grainField() {
  return choiceField(['bias', 'straight'], {
    title: 'Strip is cut on the',
    help: 'A curved edge takes bias, whatever its size.',
  });
}

/** How far a strip can give once it is turned. The limits are fields because fabrics differ. */
export function limitFields() {
  return {
    comfortableLimit: percentField({
      title: 'Goes around easily up to',
      isSeldom: true,
      help: 'Weave that shifts by 10° stretches about 8%.',
      minimum: 1,
      maximum: 40,
    }),
    hardLimit: percentField({
      title: 'Hard from',
      isSeldom: true,
      help: 'Weave that shifts by 20° stretches about 16%.',
      minimum: 1,
      maximum: 40,
    }),
    impossibleLimit: percentField({
      title: 'Too tight from',
      isSeldom: true,
      help: 'Weave that shifts by 30° stretches about 22%.',
      minimum: 1,
      maximum: 40,
    }),
  };
}

export interface LimitInputs {
  readonly comfortableLimit: number;
  readonly hardLimit: number;
  readonly impossibleLimit: number;
}

/** How much a weave stretches along the bias if its threads shift from a right angle to 80°, 70° and 60° (derived, √2·cos(θ/2) − 1). */
export const STARTING_LIMITS: LimitInputs = { comfortableLimit: 8, hardLimit: 16, impossibleLimit: 22 };

/** Puts the limits in ascending order, so that a typing error in one of them cannot swap the verdicts. */
export function limitsFromInputs(inputs: LimitInputs): StrainLimits {
  const hard = Math.max(inputs.comfortableLimit, inputs.hardLimit);
  return { comfortable: inputs.comfortableLimit, hard, impossible: Math.max(hard, inputs.impossibleLimit) };
}

/** Common practice: no teacher names a size of curve above which straight grain works. */
export function straightGrainRefusal(grain: 'bias' | 'straight'): Refusal | null {
  if (grain === 'bias') return null;
  return {
    code: 'needs-bias',
    field: ['grain'],
    says: 'A curved edge takes bias, whatever its size. Straight grain neither stands up while you sew nor turns smoothly.',
    values: {},
  };
}
