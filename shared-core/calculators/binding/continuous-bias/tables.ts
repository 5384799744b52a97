import { roundDownTo } from '#core/units/rounding';
import type { Quantity, Table } from '#core/calculators/explanation';
import {
  countQuantity,
  givenLength,
  lengthDown,
  lengthNearest,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { howToTable, type HowToStep, NO_MEASURE } from '#core/calculators/how-to';
import { fabricSources, largestSquare } from './fabric-sources';
import type { ContinuousBiasDetails, ContinuousBiasInput } from './input';
import { seamedSide, squaredBiasLength } from './work';

/** Fabric to cut the square from, what the largest square of each gives, and whether that is enough. */
export function sourcesTable(input: ContinuousBiasInput, details: ContinuousBiasDetails): Table {
  const own = { name: 'the piece you have', width: input.pieceWidth, length: input.pieceLength };
  const rows = [...fabricSources(input.fabricWidth), own].map((source): readonly Quantity[] => {
    const side = largestSquare(source);
    const gives = squaredBiasLength({ side, strip: input.stripWidth, seam: input.seamAllowance });
    const squares = squaresFrom(source, details.side);
    return [
      wordsQuantity(source.name),
      sizeQuantity(givenLength(source.width), givenLength(source.length)),
      givenLength(side),
      lengthDown(gives),
      wordsQuantity(squares >= details.squares || gives >= input.needed ? 'enough' : 'too little'),
    ];
  });
  return {
    title: 'What to cut it from',
    columns: ['Fabric', 'Size', 'Largest square', 'Strip it gives', 'For this binding'],
    rows,
  };
}

function squaresFrom(source: { readonly width: number; readonly length: number }, side: number): number {
  return roundDownTo(source.width / side, 1) * roundDownTo(source.length / side, 1);
}

/** Every line to draw on the parallelogram. The last one is the end of the last whole row. */
export function linesTable(input: ContinuousBiasInput, { rows }: ContinuousBiasDetails): Table {
  return {
    title: 'Lines to draw',
    columns: ['Line', 'From the slanted edge', 'Along the straight edge'],
    rows: Array.from({ length: rows }, (_, index) => [
      countQuantity(index + 1, ['', '']),
      lengthNearest((index + 1) * input.stripWidth),
      lengthNearest((index + 1) * input.stripWidth * Math.SQRT2),
    ]),
  };
}

/** The work in order, each step with the measure it needs. */
export function workTable(input: ContinuousBiasInput, details: ContinuousBiasDetails): Table {
  const { side, rows } = details;
  const { stripWidth: strip, seamAllowance: seam } = input;
  const left = seamedSide({ side, seam }) / Math.SQRT2 - rows * strip;
  const square = sizeQuantity(givenLength(side), givenLength(side));
  const steps: readonly HowToStep[] = [
    ['Cut the square on the straight grain, with true corners.', square],
    ['Cut it once, corner to corner.', lengthNearest(side * Math.SQRT2)],
    [
      'Place the top edge of one half on the bottom edge of the other, right sides together, corners matched, and sew with this seam allowance.',
      givenLength(seam),
    ],
    ['Press the seam open, lifting the iron. The halves now make a parallelogram.', NO_MEASURE],
    ['On the wrong side, draw lines parallel to the slanted edge, this far apart.', givenLength(strip)],
    [
      left < 1
        ? 'The last line falls on the other slanted edge, so nothing is left over.'
        : 'Trim off the fabric past the last line. It is too narrow for a row.',
      lengthDown(Math.max(0, left)),
    ],
    ...tubeSteps(input, details),
    ...(details.squares === 1
      ? []
      : [
          [
            'Do the same with the other squares and join the strips with diagonal seams.',
            givenLength(strip),
          ] as const,
        ]),
  ];
  return howToTable(steps);
}

/** A single row runs from edge to edge and needs no tube. */
function tubeSteps(
  { seamAllowance: seam }: ContinuousBiasInput,
  { rows, gives }: ContinuousBiasDetails,
): readonly HowToStep[] {
  const given = lengthDown(gives);
  if (rows === 1)
    return [['There is only one row: cut along the line and square the ends. It gives this much.', given]];
  return [
    [
      'Bring the two straight edges together, right sides in, shifted by one line: the first line on one side meets the edge of the fabric on the other. Match the lines where you will sew, not at the cut edges. Sew with this seam allowance and press open.',
      givenLength(seam),
    ],
    [
      'Start at the edge that sticks out and cut along the line, round and round, with scissors. It gives this much.',
      given,
    ],
  ];
}
