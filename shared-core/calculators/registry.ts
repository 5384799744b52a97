import type { StageKind } from '#core/domain/stage-kinds';
import { accuracy } from './accuracy/accuracy';
import { backing } from './backing/backing';
import { batting } from './batting/batting';
import { biasStrips } from './binding/bias-strips/bias-strips';
import { continuousBias } from './binding/continuous-bias/continuous-bias';
import { outerBinding } from './binding/outer-binding/outer-binding';
import { scrappyBinding } from './binding/scrappy-binding/scrappy-binding';
import type { Calculator } from './calculator';
import { fabricWidth } from './fabric-width/fabric-width';
import { hangingSleeve } from './hanging-sleeve/hanging-sleeve';
import { facing } from './edge-finish/facing/facing';
import { piping } from './edge-finish/piping/piping';
import { prairiePoints } from './edge-finish/prairie-points/prairie-points';
import { ruffle } from './edge-finish/ruffle/ruffle';
import { handFinish } from './hand-finish/hand-finish';
import { centerClearance } from './center/center-clearance/center-clearance';
import { centerFind } from './center/center-find/center-find';
import { holeSize } from './center/hole-size/hole-size';
import { slitClosure } from './center/slit-closure/slit-closure';
import { coverSize } from './cover-size/cover-size';
import { curveStrain } from './curves/curve-strain/curve-strain';
import { innerBinding } from './curves/inner-binding/inner-binding';
import { lieFlat } from './lie-flat/lie-flat';
import { longStrips } from './long-strips/long-strips';
import { longarmPrice } from './longarm-price/longarm-price';
import { machineThread } from './machine-thread/machine-thread';
import { quiltingThread } from './quilting-thread/quilting-thread';
import { fussyCutting } from './patches/fussy-cutting/fussy-cutting';
import { projectPrice } from './project-price/project-price';
import { packageWeight } from './package-weight/package-weight';
import { patchSize } from './patches/patch-size/patch-size';
import { patternList } from './patches/pattern-list/pattern-list';
import { seamCheck } from './seam-check/seam-check';
import { top } from './top/top';
import { wedgeRing } from './wedge-ring/wedge-ring';
import { washing } from './washing/washing';

/** Every calculator, in the order a maker meets them. */
export const calculators: readonly Calculator[] = [
  patchSize,
  patternList,
  fussyCutting,
  top,
  wedgeRing,
  lieFlat,
  longStrips,
  accuracy,
  seamCheck,
  backing,
  batting,
  longarmPrice,
  quiltingThread,
  outerBinding,
  scrappyBinding,
  holeSize,
  centerFind,
  centerClearance,
  slitClosure,
  innerBinding,
  continuousBias,
  biasStrips,
  curveStrain,
  prairiePoints,
  piping,
  facing,
  ruffle,
  hangingSleeve,
  handFinish,
  packageWeight,
  projectPrice,
  machineThread,
  washing,
  coverSize,
  fabricWidth,
];

export function calculatorByName(name: string): Calculator | undefined {
  return calculators.find((calculator) => calculator.name === name);
}

/** The calculators chosen for a stage, or those of its kind when none were chosen, in the order of the list. Unknown names are skipped. */
export function calculatorsForStage({
  kind,
  calculators: chosen,
}: {
  readonly kind: StageKind;
  readonly calculators: readonly string[] | null;
}): readonly Calculator[] {
  return calculators.filter(({ name, stageKinds }) => chosen?.includes(name) ?? stageKinds.includes(kind));
}
