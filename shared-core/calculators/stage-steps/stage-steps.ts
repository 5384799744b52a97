import type { StageKind } from '#core/domain/stage-kinds';
import { innerBindingSteps, outerBindingSteps } from './binding';
import { centerCutSteps } from './center-cut';
import { handFinishSteps } from './hand-finish';
import { ownSteps, savedNames } from './own-steps';
import { piecingSteps } from './piecing';
import { homeQuiltingSteps, packingSteps } from './quilting';
import type { StepGrounds, StepGroup } from './step-group';

const STEPS: Readonly<Record<StageKind, (grounds: StepGrounds) => readonly StepGroup[]>> = {
  piecing: piecingSteps,
  longarm: packingSteps,
  'home-quilting': homeQuiltingSteps,
  'outer-binding': outerBindingSteps,
  'center-cut': centerCutSteps,
  'inner-binding': innerBindingSteps,
  'hand-finish': handFinishSteps,
  other: (grounds) => ownSteps(savedNames(grounds), grounds),
};

/** How a stage is done, step by step, with the project's numbers. Empty for a stage of the maker's own without answers. */
export function stageSteps(grounds: StepGrounds): readonly StepGroup[] {
  return STEPS[grounds.stage.kind](grounds);
}
