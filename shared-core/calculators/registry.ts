import type { StageKind } from '#core/domain/stage-kinds';
import { accuracy } from './accuracy/accuracy';
import { backing } from './backing/backing';
import { batting } from './batting/batting';
import { biasStrips } from './binding/bias-strips/bias-strips';
import { continuousBias } from './binding/continuous-bias/continuous-bias';
import { outerBinding } from './binding/outer-binding/outer-binding';
import type { Calculator } from './calculator';
import { fabricWidth } from './fabric-width/fabric-width';
import { handFinish } from './hand-finish/hand-finish';
import { centerClearance } from './center/center-clearance/center-clearance';
import { centerFind } from './center/center-find/center-find';
import { holeSize } from './center/hole-size/hole-size';
import { curveStrain } from './curves/curve-strain/curve-strain';
import { innerBinding } from './curves/inner-binding/inner-binding';
import { longarmPrice } from './longarm-price/longarm-price';
import { machineThread } from './machine-thread/machine-thread';
import { patchSize } from './patches/patch-size/patch-size';
import { top } from './top/top';
import { washing } from './washing/washing';

/** Every calculator of the notebook, in the order a maker meets them; adding one is adding one line here. */
export const calculators: readonly Calculator[] = [
  patchSize,
  top,
  accuracy,
  backing,
  batting,
  longarmPrice,
  outerBinding,
  holeSize,
  centerFind,
  centerClearance,
  innerBinding,
  continuousBias,
  biasStrips,
  curveStrain,
  handFinish,
  machineThread,
  washing,
  fabricWidth,
];

export function calculatorByName(name: string): Calculator | undefined {
  return calculators.find((calculator) => calculator.name === name);
}

/** Those chosen for a stage, in the order of the registry; where none were chosen, those of its kind. A name that is not known is left out. */
export function calculatorsForStage({
  kind,
  calculators: chosen,
}: {
  readonly kind: StageKind;
  readonly calculators: readonly string[] | null;
}): readonly Calculator[] {
  return calculators.filter(({ name, stageKinds }) => chosen?.includes(name) ?? stageKinds.includes(kind));
}
