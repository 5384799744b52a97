import { innerBinding } from '../curves/inner-binding/inner-binding';
import { outerBinding } from '../binding/outer-binding/outer-binding';
import { ownSteps, savedNames } from './own-steps';
import { step, type StepGrounds, type StepGroup } from './step-group';

/** The calculators say how the binding is sewn, so the stage shows their steps: the binding first, then whatever else was answered. */
export function outerBindingSteps(grounds: StepGrounds): readonly StepGroup[] {
  return ownSteps([outerBinding.name, ...savedNames(grounds)], grounds);
}

export function innerBindingSteps(grounds: StepGrounds): readonly StepGroup[] {
  const own = ownSteps([innerBinding.name, ...savedNames(grounds)], grounds);
  const isCut = grounds.before.includes('center-cut');
  const order = isCut
    ? 'The hole is cut already: leave out the steps that draw and cut it.'
    : 'In this plan the cut comes later: sew the strip to the drawn lines of hole and slit, and leave out the steps that cut the hole.';
  return [{ title: isCut ? 'After the cut' : 'Before the cut', steps: [step(order)] }, ...own];
}
