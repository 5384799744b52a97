import { choiceField, percentField } from '#core/domain/fields';
import type { StrainLimits } from './strain';

/** The grain of a strip on a curve. */
export function grainField() {
  return choiceField(['bias', 'straight'], {
    title: 'Strip is cut on the',
    help: 'Bias bends and stretches. Straight grain hardly does.',
  });
}

/** How far a strip can give. The limits are fields because fabrics differ. */
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
      title: 'Impossible from',
      isSeldom: true,
      help: 'Weave that shifts by 30° stretches about 22%.',
      minimum: 1,
      maximum: 40,
    }),
    straightLimit: percentField({
      title: 'Straight grain gives',
      isSeldom: true,
      help: 'Common practice: 2%.',
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

/**
 * For bias: how much a weave stretches along the bias if its threads shift from a right angle to 80°, 70° and 60° (derived,
 * √2·cos(θ/2) − 1). For straight grain: common practice.
 */
export const STARTING_LIMITS: LimitInputs = {
  comfortableLimit: 8,
  hardLimit: 16,
  impossibleLimit: 22,
  straightLimit: 2,
};

/** Puts the limits in ascending order, so that a typing error in one of them cannot swap the verdicts. */
export function limitsFromInputs(inputs: LimitInputs): StrainLimits {
  const hard = Math.max(inputs.comfortableLimit, inputs.hardLimit);
  return {
    comfortable: inputs.comfortableLimit,
    hard,
    impossible: Math.max(hard, inputs.impossibleLimit),
    straight: inputs.straightLimit,
  };
}
