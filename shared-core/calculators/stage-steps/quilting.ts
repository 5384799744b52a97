import type { Sentence } from '../explanation';
import { backing } from '../backing/backing';
import { chosenWays } from '../backing/work';
import { batting } from '../batting/batting';
import { outlineBounds, outlineSlit } from '../outline/outline-measures';
import { countQuantity, givenLength, lengthUp, sizeQuantity } from '../quantities';
import { about, answerNow, step, type StepGrounds, type StepGroup } from './step-group';

/** What goes to the longarm quilter, in the order it is made ready. */
export function packingSteps(grounds: StepGrounds): readonly StepGroup[] {
  return [
    {
      title: 'Packing for the quilter',
      steps: [
        topStep(grounds),
        ...backingSteps(grounds),
        ...battingSteps(grounds, 'Cut the batting to at least {size}, or ask for the quilter’s own.'),
        step('Mark the upper edge of top and backing with a safety pin or a note.'),
        ...holeSteps(grounds),
        step('Fold each layer by itself. Put a sheet with pattern, thread, your name and address inside.'),
      ],
    },
  ];
}

/** Common practice: the layers are basted from the middle out, and quilted in the same order. */
export function homeQuiltingSteps(grounds: StepGrounds): readonly StepGroup[] {
  const answer = answerNow(backing, grounds);
  const overhang: readonly Sentence[] =
    answer === null
      ? []
      : [
          step('Center the top on them: {overhang} of backing and batting shows on every side.', {
            overhang: givenLength(answer.input.overhang),
          }),
        ];
  return [
    {
      title: 'Layering and quilting',
      steps: [
        ...backingSteps(grounds),
        ...battingSteps(grounds, 'Cut the batting to at least {size}.'),
        step('Tape the backing flat, wrong side up, without stretching it. Smooth the batting onto it.'),
        ...overhang,
        step('Baste from the middle out, about a hand apart, and clear of the lines to quilt.'),
        step('Quilt from the middle out. Bury or backstitch the thread ends.'),
      ],
    },
  ];
}

function topStep(grounds: StepGrounds): Sentence {
  const { width, length } = outlineBounds(grounds.measurements.outline);
  return step('Press the top, clip its threads, and measure it through the middle both ways: about {size}.', {
    size: sizeQuantity(about(width, grounds), about(length, grounds)),
  });
}

function backingSteps(grounds: StepGrounds): readonly Sentence[] {
  const answer = answerNow(backing, grounds);
  if (answer === null) return [];
  const { width, length } = answer.calculation.details;
  const { best } = chosenWays(answer.calculation.details, answer.input);
  const panels: readonly Sentence[] =
    best === undefined || best.panels === 1
      ? []
      : [
          step(
            'Cut the selvages off and join the backing from {panels}, each {each} long, with a seam of {seam}. Press the seams open.',
            {
              panels: countQuantity(best.panels, ['panel', 'panels']),
              each: givenLength(best.panelLength),
              seam: givenLength(answer.input.seam),
            },
          ),
        ];
  return [
    ...panels,
    step(
      'Square the backing to at least {size}. It is square when both diagonals are alike, about {diagonal}.',
      {
        size: sizeQuantity(givenLength(width), givenLength(length)),
        diagonal: about(Math.hypot(width, length), grounds),
      },
    ),
  ];
}

function battingSteps(grounds: StepGrounds, says: string): readonly Sentence[] {
  const answer = answerNow(batting, grounds);
  if (answer === null) return [];
  const { width, length } = answer.calculation.details;
  return [step(says, { size: sizeQuantity(lengthUp(width), lengthUp(length)) })];
}

/** Common practice: the quilter keeps motifs away from a cut that comes after the quilting. */
function holeSteps(grounds: StepGrounds): readonly Sentence[] {
  const { outline, hole, hasSlit } = grounds.measurements;
  if (hole === null) return [];
  const { width, length } = outlineBounds(outline);
  const values = {
    hole: givenLength(hole.diameter),
    across: about(width / 2, grounds),
    down: about(length / 2, grounds),
  };
  const place =
    'Draw for the quilter where the hole of {hole} is cut later: its middle is about {across} from the sides and {down} from top and bottom';
  const slit = outlineSlit(outline, hole);
  if (!hasSlit || slit <= 0) return [step(`${place}.`, values)];
  return [
    step(`${place}. Draw the slit too, about {slit} long from the edge to the hole.`, {
      ...values,
      slit: about(slit, grounds),
    }),
  ];
}
