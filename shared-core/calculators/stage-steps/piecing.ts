import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import type { Calculation } from '../calculator';
import type { Quantity, Sentence } from '../explanation';
import { outlineBounds } from '../outline/outline-measures';
import { patchSize } from '../patches/patch-size/patch-size';
import { givenLength, lengthDown, lengthNearest, sizeQuantity, wordsQuantity } from '../quantities';
import { top } from '../top/top';
import { cuttingSteps } from './cutting';
import { ownSteps, savedNames } from './own-steps';
import { answerNow, atLeast, step, type StepGrounds, type StepGroup } from './step-group';

export function piecingSteps(grounds: StepGrounds): readonly StepGroup[] {
  return [
    { title: 'Cutting', steps: cuttingSteps(grounds) },
    ...ownSteps(savedNames(grounds), grounds),
    {
      title: 'Piecing',
      steps: [
        ...seamTest(grounds),
        ...blockSteps(grounds),
        ...topSteps(grounds),
        sizeStep(grounds),
        stayStitch(grounds),
      ],
    },
  ];
}

/** Common practice: three strips 1 1/2 in wide, because the middle one shows what two seams take. */
function seamTest({ measurements: { settings } }: StepGrounds): readonly Sentence[] {
  const { seamAllowance: seam, unitSystem } = settings;
  const strip = unitSystem === 'inch' ? lengthFromInches(1.5) : lengthFromMillimeters(40);
  if (strip <= 2 * seam) return [];
  return [
    step(
      'Test your seam: sew three strips {strip} wide side by side with a seam of {seam}, and press. The three measure {total} across, the middle one {middle}. If not, move the guide.',
      {
        strip: givenLength(strip),
        seam: givenLength(seam),
        total: lengthNearest(3 * strip - 4 * seam),
        middle: lengthNearest(strip - 2 * seam),
      },
    ),
  ];
}

/** The first block is measured before the rest is sewn, so its size until it is sewn in is what counts. */
function blockSteps(grounds: StepGrounds): readonly Sentence[] {
  if (!savedNames(grounds).includes(patchSize.name)) return [];
  const answer = answerNow(patchSize, grounds);
  const unfinished = answer === null ? undefined : figureNamed(answer.calculation, 'Unfinished size');
  if (unfinished === undefined) return [];
  return [
    step('Sew one unit and measure it before you sew the rest: {unfinished}. Trim each one to that.', {
      unfinished,
    }),
  ];
}

function topSteps(grounds: StepGrounds): readonly Sentence[] {
  if (!savedNames(grounds).includes(top.name)) return [];
  const answer = answerNow(top, grounds);
  const sewn = answer === null ? undefined : figureNamed(answer.calculation, 'Top before quilting');
  if (answer === null || sewn === undefined) return [];
  const rounds = answer.calculation.details.steps.map(({ label, width, length }) =>
    step('{part}: it finishes at {size}.', {
      part: wordsQuantity(label),
      size: sizeQuantity(lengthNearest(width), lengthNearest(length)),
    }),
  );
  return [
    ...(rounds.length > 1 ? rounds : []),
    step('Measure the pressed top before it is quilted: {sewn} with its outer seam allowance.', { sewn }),
  ];
}

function sizeStep(grounds: StepGrounds): Sentence {
  const { width, length } = outlineBounds(grounds.measurements.outline);
  return step('The finished project needs {size}: the pressed top is no smaller.', {
    size: sizeQuantity(atLeast(width, grounds), atLeast(length, grounds)),
  });
}

/** Common practice: about the middle of the allowance, 1/8 in from the edge for a seam of 1/4 in. */
function stayStitch({ measurements: { settings } }: StepGrounds): Sentence {
  return step('Stay-stitch around the top, {half} from its edge, so that the binding hides the stitches.', {
    half: lengthDown(settings.seamAllowance / 2),
  });
}

function figureNamed({ figures }: Calculation, label: string): Quantity | undefined {
  return figures.find((figure) => figure.label === label)?.quantity;
}
