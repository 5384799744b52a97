import type { Sentence } from '../explanation';
import { handFinish } from '../hand-finish/hand-finish';
import { PART_NAMES } from '../hand-finish/steps';
import { countQuantity, givenLength, minutesQuantity } from '../quantities';
import { ownSteps, savedNames } from './own-steps';
import { answerNow, atLeast, step, type StepGrounds, type StepGroup } from './step-group';

/** The binding sewn down, then everything up to the wrapping. */
export function handFinishSteps(grounds: StepGrounds): readonly StepGroup[] {
  return [
    ...ownSteps(savedNames(grounds), grounds),
    {
      title: 'Finishing by hand',
      steps: [
        ...sewingSteps(grounds),
        step('Sew on the label, and the sleeve if it did not go in with the binding.'),
        step('Take the marks out as the pen says, and let the project dry before any iron.'),
        step('Count the needles and pins.'),
      ],
    },
  ];
}

function sewingSteps(grounds: StepGrounds): readonly Sentence[] {
  const answer = answerNow(handFinish, grounds);
  if (answer === null) return [];
  const { input, calculation } = answer;
  const { parts, length, minutes, threads } = calculation.details;
  return [
    step('Thread the needle with {thread}. It takes about {lengths} of that.', {
      thread: givenLength(input.threadLength),
      lengths: countQuantity(threads, ['length', 'lengths']),
    }),
    step(
      'Sew the fold down {cover} past the seam on the back, with a stitch every {stitch}, through backing and batting only.',
      { cover: givenLength(input.backCover), stitch: givenLength(input.stitchLength) },
    ),
    ...parts.map((part) =>
      step(`${PART_NAMES[part.part]}: about {length}.`, { length: atLeast(part.length, grounds) }),
    ),
    step('That is about {length} in all, and {time} at your speed.', {
      length: atLeast(length, grounds),
      time: minutesQuantity(minutes),
    }),
  ];
}
