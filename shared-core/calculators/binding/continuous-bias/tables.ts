import { lengthFromExact } from '#core/units/length';
import type { Quantity, Table } from '#core/calculators/explanation';
import {
  countQuantity,
  givenLength,
  lengthQuantity,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { fabricSources, largestSquare } from './fabric-sources';
import type { ContinuousBiasDetails, ContinuousBiasInput } from './input';
import { seamedSide, squaredBiasLength } from './work';

/** What the square may be cut from, what the largest square of each gives, and whether that is enough. */
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
      lengthQuantity(gives, { direction: 'down' }),
      wordsQuantity(squares >= details.squares || gives >= input.needed ? 'enough' : 'too little'),
    ];
  });
  return {
    title: 'From what it can be cut',
    columns: ['Fabric', 'Size', 'Largest square', 'That square gives', 'For this binding'],
    rows,
  };
}

function squaresFrom(source: { readonly width: number; readonly length: number }, side: number): number {
  const along = (size: number) => lengthFromExact(size / side, 'down');
  return along(source.width) * along(source.length);
}

/** Every line to draw on the parallelogram, the last of them the end of the last whole row. */
export function linesTable(input: ContinuousBiasInput, { rows }: ContinuousBiasDetails): Table {
  return {
    title: 'Lines to draw',
    columns: ['Line', 'From the slanted edge', 'Along the straight edge'],
    rows: Array.from({ length: rows }, (_, index) => [
      countQuantity(index + 1, ['', '']),
      lengthQuantity((index + 1) * input.stripWidth, { direction: 'nearest' }),
      lengthQuantity((index + 1) * input.stripWidth * Math.SQRT2, { direction: 'nearest' }),
    ]),
  };
}

/** The work in order, each step with the one measure it needs. */
export function workTable(input: ContinuousBiasInput, details: ContinuousBiasDetails): Table {
  const { side, rows } = details;
  const { stripWidth: strip, seamAllowance: seam } = input;
  const left = seamedSide({ side, seam }) / Math.SQRT2 - rows * strip;
  const square = sizeQuantity(givenLength(side), givenLength(side));
  const steps: readonly (readonly [string, Quantity])[] = [
    ['Cut the square on the straight grain, all corners true.', square],
    ['Cut it once from corner to corner.', lengthQuantity(side * Math.SQRT2, { direction: 'nearest' })],
    [
      'Lay the top edge of one half on the bottom edge of the other, right sides together, corner on corner, and sew with this allowance.',
      givenLength(seam),
    ],
    [
      'Press the seam open, lifting the iron. The halves now make a slanted four-sided piece.',
      wordsQuantity(''),
    ],
    ['On the wrong side draw lines alongside the slanted edge, this far apart.', givenLength(strip)],
    [
      left < 1
        ? 'The last line falls on the other slanted edge: nothing is left over.'
        : 'Cut off what is left past the last line; it is too narrow for a row.',
      lengthQuantity(Math.max(0, left), { direction: 'down' }),
    ],
    ...tubeSteps(input, details),
    ...(details.squares === 1
      ? []
      : [
          [
            'Do the same with the other squares and join the strips on the diagonal.',
            givenLength(strip),
          ] as const,
        ]),
  ];
  return {
    title: 'How to do it',
    columns: ['Step', 'Do', 'Measure'],
    rows: steps.map(([words, measure], index) => [
      countQuantity(index + 1, ['', '']),
      wordsQuantity(words),
      measure,
    ]),
  };
}

/** One row alone goes from edge to edge and needs no tube. */
function tubeSteps(
  { seamAllowance: seam }: ContinuousBiasInput,
  { rows, gives }: ContinuousBiasDetails,
): readonly (readonly [string, Quantity])[] {
  const given = lengthQuantity(gives, { direction: 'down' });
  if (rows === 1)
    return [['There is one row: cut along the line and square the ends. It gives this much.', given]];
  return [
    [
      'Bring the two straight edges together, right sides in, moved on by one line: the first line on one side meets the edge of the fabric on the other. Let the lines meet where you will sew, not at the cut edges. Sew with this allowance and press open.',
      givenLength(seam),
    ],
    [
      'Begin at the edge that sticks out and cut along the line, round and round, with scissors. It gives this much.',
      given,
    ],
  ];
}
