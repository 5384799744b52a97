import type { Table } from '#core/calculators/explanation';
import { howToTable, type HowToStep, NO_MEASURE } from '#core/calculators/how-to';
import { givenLength, lengthNearest, sizeQuantity } from '#core/calculators/quantities';
import type { FacingInput } from './input';
import { type FacingDetails, sidesOf } from './work';

/** Common practice: a hole is sewn to its drawn line and cut only then, so that no cut edge stretches. */
export function facingHowTo(input: FacingInput, details: FacingDetails): Table {
  return howToTable([...cutSteps(input, details), ...sewSteps(input), ...turnSteps(input, details)]);
}

function cutSteps(input: FacingInput, { patch, strips }: FacingDetails): readonly HowToStep[] {
  if (patch !== null) {
    const cut: HowToStep = [
      'Cut the patch, on the same grain as the project.',
      sizeQuantity(givenLength(patch.width), givenLength(patch.length)),
    ];
    return input.around === 'hole'
      ? [cut, ['Press its outer edge under, or zigzag it.', givenLength(input.turnedEdge)]]
      : [cut];
  }
  return [
    [
      'Cut the strips, and join them on the diagonal where one is too short.',
      givenLength(strips?.strip ?? input.width),
    ],
    ['Press one long edge under.', givenLength(input.turnedEdge)],
  ];
}

function sewSteps({
  around,
  hole,
  seamAllowance,
  endExtra,
  way,
  outline,
}: FacingInput): readonly HowToStep[] {
  if (around === 'hole' && hole !== null)
    return [
      [
        'Draw the stitching line around the center on the front, this far across. Don’t cut yet.',
        lengthNearest(hole.diameter + 2 * seamAllowance),
      ],
      ['Lay the facing on the front, right sides together, and pin it outside the line.', NO_MEASURE],
      ['Sew on the line with short stitches, all the way around.', NO_MEASURE],
      ['Cut the hole through all layers, this far inside the stitching.', givenLength(seamAllowance)],
    ];
  const hasCorners = sidesOf({ outline }) > 0;
  return [
    ['Lay the facing on the front, right sides together, cut edges even.', NO_MEASURE],
    hasCorners && way === 'strips'
      ? [
          'Sew side by side; let each strip reach past both corners, and sew corners on a short slant.',
          givenLength(endExtra),
        ]
      : ['Sew it on at its natural length.', givenLength(seamAllowance)],
    ...(hasCorners
      ? [['Trim across the corners, not into the stitching.', NO_MEASURE] satisfies HowToStep]
      : []),
  ];
}

function turnSteps(input: FacingInput, { curve, patch }: FacingDetails): readonly HowToStep[] {
  const isHole = input.around === 'hole';
  const clip: readonly HowToStep[] =
    curve === null
      ? []
      : [
          [
            isHole
              ? 'Clip both seam allowances to just before the stitching, this far apart.'
              : 'Notch both seam allowances to just before the stitching, this far apart.',
            givenLength(input.clipEvery),
          ],
        ];
  const cutAway: readonly HowToStep[] =
    patch !== null && !isHole
      ? [
          [
            'Cut the inside of the patch away, this far from the stitching.',
            lengthNearest(input.width + input.turnedEdge),
          ],
        ]
      : [];
  return [
    ...clip,
    ...cutAway,
    ['Press the seam toward the facing and sew the facing to the allowances, close to the seam.', NO_MEASURE],
    ['Turn the facing to the back, roll the seam just out of sight and press.', NO_MEASURE],
    ['Sew it down by hand, this far from the edge.', givenLength(input.width)],
  ];
}
