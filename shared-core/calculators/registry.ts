import type { StageKind } from '#core/domain/stage';
import { continuousBias } from './binding/continuous-bias';
import type { Calculator } from './calculator';

/** Every calculator of the notebook, in the order a maker meets them; adding one is adding one line here. */
export const calculators: readonly Calculator[] = [continuousBias];

export function calculatorByName(name: string): Calculator | undefined {
  return calculators.find((calculator) => calculator.name === name);
}

export function calculatorsForStage(kind: StageKind): readonly Calculator[] {
  return calculators.filter((calculator) => calculator.stageKinds.includes(kind));
}
