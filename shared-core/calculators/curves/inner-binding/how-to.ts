import { howToTable, type HowToStep, NO_MEASURE } from '#core/calculators/how-to';
import type { Table } from '#core/calculators/explanation';
import { givenLength, lengthUp, sizeQuantity, wordsQuantity } from '#core/calculators/quantities';
import { lengthFromExact, lengthFromInches } from '#core/units/length';
import type { InnerBindingInput } from './input';
import type { InnerBindingDetails } from './work';

/** Common practice, with this project's numbers. Blades, needles and stitches have millimeters everywhere. */
export function innerBindingHowTo(input: InnerBindingInput, details: InnerBindingDetails): Table {
  return howToTable([
    ...cutSteps(input, details),
    ...sewSteps(input, details),
    [
      'Press the seam away from the hole before you turn the strip. Lift the iron instead of sliding it.',
      NO_MEASURE,
    ],
    [
      'Turn the strip to the back, clip it, and sew the fold down by hand with matching thread, on or just past the machine stitching. Go a few stitches past the start.',
      NO_MEASURE,
    ],
  ]);
}

function cutSteps(input: InnerBindingInput, details: InnerBindingDetails): readonly HowToStep[] {
  const { bias, legStrip } = details;
  const piece = sizeQuantity(
    givenLength(lengthFromExact(bias.width, 'up')),
    givenLength(lengthFromExact(bias.length, 'up')),
  );
  return [
    [
      'Make a practice piece of the same layers: mark, cut and bind this hole in it first.',
      givenLength(input.holeDiameter),
    ],
    ['Cut the fabric for the bias, then a strip this wide.', piece],
    ['Width of the strip.', givenLength(input.stripWidth)],
    ['Length of the bias strip.', lengthUp(details.biasLength, input.cutStep)],
    ...(legStrip > 0
      ? [
          [
            'Length of the straight strip for each side of the slit.',
            lengthUp(legStrip, input.cutStep),
          ] as const,
        ]
      : []),
    ...(input.fold === 'double' ? [['Fold the strip in half and press it.', NO_MEASURE] as const] : []),
    [
      'Draw the circle and keep the line. Try the pen on a scrap first: heat takes some marks away before the cut and sets others for good.',
      givenLength(input.holeDiameter),
    ],
    [
      'Cut with the smallest rotary blade, held at a slant, or with small scissors. Make several passes and turn the piece, not your hand.',
      wordsQuantity('28 mm'),
    ],
  ];
}

function sewSteps(input: InnerBindingInput, details: InnerBindingDetails): readonly HowToStep[] {
  const seam: HowToStep = [
    'Clip the strip to the front, raw edges together, and roll up the rest of the piece. Sew with this seam, a few stitches at a time, needle down when you turn.',
    givenLength(input.seamAllowance),
  ];
  const stitch: HowToStep = ['Stitch length.', wordsQuantity('2 to 2.5 mm')];
  if (input.hasSlit) {
    return [
      ['Fold the start of the strip under at the outer edge.', givenLength(input.startFold)],
      seam,
      stitch,
      ['Fold the other end under in the same way.', givenLength(input.startFold)],
    ];
  }
  if (input.join === 'diagonal') {
    return [
      [
        'Sew the strip into a loop with a diagonal join first. It is now as long as the seam line.',
        lengthUp(details.seamLine),
      ],
      seam,
      stitch,
    ];
  }
  return [
    ['Fold the start of the strip under, and begin to sew past this tail.', givenLength(input.startFold)],
    seam,
    stitch,
    [
      'Cut the end so that it overlaps the start and slips into the fold.',
      lengthUp(input.overlap + input.tuck),
    ],
    ['Sew over the first stitches.', givenLength(lengthFromInches(1 / 2))],
  ];
}
