import type { Table } from '#core/calculators/explanation';
import { outlineCornerAngles } from '#core/calculators/outline/outline-measures';
import {
  countQuantity,
  givenLength,
  lengthNearest,
  lengthUp,
  sizeQuantity,
} from '#core/calculators/quantities';
import { lengthFromExact, lengthFromInches } from '#core/units/length';
import { howToTable, type HowToStep, NO_MEASURE } from '#core/calculators/how-to';
import { stitchStopBefore } from './corner-miters';
import type { OuterBindingInput } from './input';
import type { OuterBindingDetails } from './work';

/** Common practice, with this project's numbers: straight strips with mitered corners, or bias around a curve. */
export function outerBindingHowTo(input: OuterBindingInput, details: OuterBindingDetails): Table {
  return howToTable([
    ['Square up the edge. Baste around it, this far inside.', givenLength(lengthFromInches(1 / 8))],
    ...(details.biasWay === null ? straightStrips(input, details) : biasStrip(details)),
    ['Width of the strip.', givenLength(input.stripWidth)],
    ['It has to be at least this long.', lengthUp(details.needed, input.cutStep)],
    ...(input.fold === 'double' ? [['Fold the strip in half and press it.', NO_MEASURE] as const] : []),
    [
      'Lay the strip all around. Move the start along the middle of a side until no join meets a corner.',
      NO_MEASURE,
    ],
    [
      details.isBiasNeeded
        ? 'Sew it to the front with this seam. Feed the strip in generously around the curve, and never stretch it.'
        : 'Sew it to the front with this seam, raw edges together.',
      givenLength(input.seamAllowance),
    ],
    ...cornerSteps(input),
    ...(details.hole > 0 ? [AROUND_HOLE] : []),
    ['Leave the first and last part open, and join the ends in this overlap.', givenLength(input.overlap)],
    [
      'Press the seam, turn the strip to the back, and sew the fold down past the machine stitching.',
      NO_MEASURE,
    ],
  ]);
}

const AROUND_HOLE: HowToStep = [
  'Go down the slit, around the hole and up the slit again. Around the hole, keep the strip just taut and never pull it hard.',
  NO_MEASURE,
];

function straightStrips(input: OuterBindingInput, details: OuterBindingDetails): readonly HowToStep[] {
  const join =
    input.join === 'diagonal'
      ? 'Join them on the diagonal and press the seams open.'
      : 'Join them straight and press the seams open.';
  return [
    ['Cut strips across the fabric.', countQuantity(details.strips, ['strip', 'strips'])],
    ...(details.strips > 1 ? [[join, NO_MEASURE] as const] : []),
  ];
}

function biasStrip({ biasWay }: OuterBindingDetails): readonly HowToStep[] {
  if (biasWay === null) return [];
  const { way, width, length } = biasWay;
  const says =
    way === 'continuous-bias'
      ? 'Cut each square and make continuous bias of it.'
      : 'Cut this fabric into strips at 45° and join them.';
  const piece = sizeQuantity(
    givenLength(lengthFromExact(width, 'up')),
    givenLength(lengthFromExact(length, 'up')),
  );
  return [[says, piece]];
}

function cornerSteps(input: OuterBindingInput): readonly HowToStep[] {
  const [angle] = outlineCornerAngles(input.outline);
  if (angle === undefined) return [];
  return [
    [
      'Stop this far before each corner, where the two seam lines cross.',
      lengthNearest(stitchStopBefore(angle, input.seamAllowance)),
    ],
    ['Fold the strip up and back, in line with the next edge, and sew on from there.', NO_MEASURE],
  ];
}
