import { assertNever } from '#core/assert-never';
import type { Table } from '#core/calculators/explanation';
import { howToTable, type HowToStep, NO_MEASURE } from '#core/calculators/how-to';
import {
  countQuantity,
  fineLength,
  givenLength,
  lengthNearest,
  sizeQuantity,
} from '#core/calculators/quantities';
import type { SlitClosureInput } from './input';
import type { SlitClosureDetails } from './work';

/** Common practice: what is caught in the binding comes before it is turned, what is sewn through it comes after. */
export function slitClosureHowTo(input: SlitClosureInput, details: SlitClosureDetails): Table {
  return howToTable([
    ...flapSteps(details),
    [
      'Sew the binding to the front along both sides of the slit, and don’t turn it yet.',
      givenLength(input.seamAllowance),
    ],
    [
      'Mark the places on both sides of the slit, each measured from the outer edge. The first is here.',
      lengthNearest(input.first, input.cutStep),
    ],
    ...closingSteps(details),
  ]);
}

function flapSteps({ flap }: SlitClosureDetails): readonly HowToStep[] {
  if (flap === null) return [];
  return [
    ['Cut the flap.', sizeQuantity(givenLength(flap.cutWidth), givenLength(flap.cutLength))],
    [
      'Fold it along its length, right sides together, sew both short ends, turn it and press it.',
      NO_MEASURE,
    ],
    ['Baste its cut edges to the back of one side of the slit.', NO_MEASURE],
  ];
}

function closingSteps({ parts, places }: SlitClosureDetails): readonly HowToStep[] {
  switch (parts.with) {
    case 'ties':
      return [
        ['Cut the ties.', sizeQuantity(givenLength(parts.cutWidth), givenLength(parts.cutLength))],
        [
          'Fold in one short end, press both long edges to the middle, fold the tie in half along its length and sew it shut.',
          NO_MEASURE,
        ],
        [
          'Sew the raw end of each tie to the seam of the binding, on the back, with the tie lying on the project.',
          countQuantity(parts.ties, ['tie', 'ties']),
        ],
        [
          'Turn the binding over the ends and sew it down. Fold each tie out over the binding and hold it there with a few stitches.',
          NO_MEASURE,
        ],
      ];
    case 'buttons-and-loops':
      return [
        ['Cut the loops.', givenLength(parts.cutLength)],
        [
          'Sew both ends of each loop, side by side, to the seam of the binding on one side, on the back, and let the loop lie on the project.',
          countQuantity(places, ['loop', 'loops']),
        ],
        ['Turn the binding and sew it down. Fold the loops out over it and hold them there.', NO_MEASURE],
        [
          'Sew the buttons on last, on the other side, this far from its edge.',
          lengthNearest(parts.buttonIn),
        ],
      ];
    case 'buttons-and-buttonholes':
      return [
        ['Turn the binding and sew it down on both sides.', NO_MEASURE],
        ['Sew the buttonholes in the side without the flap.', fineLength(parts.buttonhole, 'up')],
        [
          'Lay that side over the flap, mark through the buttonholes and sew the buttons to the flap.',
          NO_MEASURE,
        ],
      ];
    case 'snaps':
      return [
        ['Turn the binding and sew it down on both sides.', NO_MEASURE],
        [
          'Lay the other side over the flap and sew one half of each snap to the flap, one to the back of that side.',
          NO_MEASURE,
        ],
      ];
    default:
      return assertNever(parts);
  }
}
