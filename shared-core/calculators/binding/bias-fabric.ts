import { biasFabricLength, layBiasStrips, squaredStripsLength } from './bias-strips/work';
import { LONGEST_BIAS_FABRIC } from './binding-fields';
import { planContinuousBias } from './continuous-bias/work';

interface BiasNeed {
  readonly needed: number;
  readonly strip: number;
  readonly seam: number;
  readonly squareStep: number;
  /** Usable width: no square is larger. */
  readonly fabricWidth: number;
  readonly shortest: number;
}

/** Fabric that gives a bias strip, in 1/320 mm. Its sides are never more than the fabric, never zero. */
export interface BiasFabricPlan {
  readonly way: 'continuous' | 'joined';
  readonly pieces: number;
  readonly width: number;
  readonly length: number;
  readonly gives: number;
}

/** Squares for continuous bias, or else strips joined from the full width; null when this fabric gives neither. */
export function planBiasFabric(need: BiasNeed): BiasFabricPlan | null {
  return continuousPlan(need) ?? joinedPlan(need);
}

function continuousPlan(need: BiasNeed): BiasFabricPlan | null {
  const plan = planContinuousBias({ ...need, largest: need.fabricWidth });
  if (plan === null) return null;
  return {
    way: 'continuous',
    pieces: plan.squares,
    width: plan.side,
    length: plan.side,
    gives: plan.gives,
  };
}

function joinedPlan(need: BiasNeed): BiasFabricPlan | null {
  const { strip, seam, shortest, fabricWidth: width, needed, squareStep: step } = need;
  const fabric = { strip, seam, shortest, width };
  const length = biasFabricLength(fabric, { needed, step, longest: LONGEST_BIAS_FABRIC });
  if (length === null) return null;
  const gives = squaredStripsLength(layBiasStrips({ ...fabric, length }), strip);
  return { way: 'joined', pieces: 1, width, length, gives };
}
