import { success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure, Note, Quantity, Table } from '#core/calculators/explanation';
import { outlineCornerAngles } from '#core/calculators/outline/outline-measures';
import {
  areaQuantity,
  countQuantity,
  degreesQuantity,
  givenLength,
  lengthQuantity,
  percentQuantity,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { HANDLE_BIAS_TIP, IRON_CAUTION, ROTARY_CAUTION } from '../bench-notes';
import { cornerExtra, stitchStopBefore } from './corner-miters';
import { outerBindingDiagram } from './diagram';
import { outerBindingCuts, outerBindingNeeds, squaresForBias } from './fabric';
import { type OuterBindingInput, outerBindingInputFromProject, outerBindingInput } from './input';
import { type OuterBindingDetails, planOuterBinding } from './work';
import { outerBindingSteps } from './steps';
import type { BindingWay } from './ways';

export const outerBinding: Calculator<OuterBindingInput, OuterBindingDetails> = {
  name: 'outer-binding',
  version: 1,
  title: 'Outer binding',
  question: 'How much fabric does the outer binding take, and how is it best cut?',
  stageKinds: ['outer-binding'],
  input: outerBindingInput,
  fromProject: outerBindingInputFromProject,
  calculate(input) {
    const plan = planOuterBinding(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [waysTable(details), ...cornersTables(input)],
      explanation: outerBindingSteps(input, details),
      notes: notesOf(input, details),
      diagram: outerBindingDiagram(input),
      details,
    });
  },
  needs: outerBindingNeeds,
  cuts: outerBindingCuts,
  isCutLater: true,
  wayTo: 'binding',
};

function figuresOf(input: OuterBindingInput, details: OuterBindingDetails): readonly Figure[] {
  const needed: Figure = {
    label: 'Strip needed',
    quantity: lengthQuantity(details.needed, { direction: 'up', step: input.cutStep }),
  };
  const frontLabel = 'Front width this strip is right for';
  const front: readonly Figure[] =
    details.frontWidth > 0
      ? [{ label: frontLabel, quantity: lengthQuantity(details.frontWidth, { direction: 'down' }) }]
      : [];
  const continuous = squaresForBias(details);
  if (details.isBiasNeeded) {
    return [
      ...(continuous === undefined
        ? []
        : [{ label: 'Square for continuous bias', quantity: fabricOf(continuous) }]),
      needed,
      { label: 'Grain', quantity: wordsQuantity('bias needed') },
      ...front,
    ];
  }
  return [
    { label: 'Strips', quantity: countQuantity(details.strips, ['strip', 'strips'], 'up') },
    { label: 'Fabric to buy', quantity: givenLength(details.fabricToBuy, 'yardage') },
    {
      label: 'Fabric the strips take',
      quantity: lengthQuantity(details.fabric, { direction: 'up', step: input.cutStep }),
    },
    needed,
    { label: 'Grain', quantity: wordsQuantity('straight grain will do') },
    ...front,
  ];
}

const WAY_WORDS: Readonly<Record<BindingWay['way'], string>> = {
  'straight-strips': 'straight strips',
  'bias-strips': 'bias strips from the width of the fabric',
  'bias-strips-of-square': 'bias strips from a square',
  'continuous-bias': 'continuous bias',
};

function waysTable(details: OuterBindingDetails): Table {
  return {
    title: 'Ways to cut it',
    columns: [
      'Way',
      'Fabric',
      'Cuts',
      'Seams',
      'Gives',
      'Spare strip',
      'Fabric that is not strip',
      'Round this edge',
    ],
    rows: details.ways.map((way): readonly Quantity[] => [
      wordsQuantity(way.pieces === 1 ? WAY_WORDS[way.way] : `${WAY_WORDS[way.way]}, ${way.pieces} squares`),
      fabricOf(way),
      countQuantity(way.cuts, ['cut', 'cuts']),
      countQuantity(way.seams, ['seam', 'seams']),
      lengthQuantity(way.gives, { direction: 'down' }),
      lengthQuantity(way.spare, { direction: 'down' }),
      areaQuantity(way.scraps),
      wordsQuantity(way.way === 'straight-strips' && details.isBiasNeeded ? 'too stiff' : 'goes'),
    ]),
  };
}

function fabricOf({ width, length }: BindingWay): Quantity {
  return sizeQuantity(givenLength(lengthFromExact(width, 'up')), givenLength(lengthFromExact(length, 'up')));
}

function cornersTables(input: OuterBindingInput): readonly Table[] {
  const outer = outlineCornerAngles(input.outline);
  const [angle] = outer;
  const { innerCorners, innerCornerAngle, seamAllowance: seam } = input;
  const row = (count: number, degrees: number): readonly Quantity[] => [
    countQuantity(count, ['corner', 'corners']),
    degreesQuantity(degrees),
    lengthQuantity(stitchStopBefore(degrees, seam), { direction: 'nearest' }),
    lengthQuantity(cornerExtra(degrees, seam), { direction: 'up' }),
  ];
  const rows = [
    ...(angle === undefined ? [] : [row(outer.length, angle)]),
    ...(innerCorners === 0 ? [] : [row(innerCorners, innerCornerAngle)]),
  ];
  if (rows.length === 0) return [];
  return [
    { title: 'Corners', columns: ['Corners', 'Angle', 'Stop stitching before', 'Extra strip each'], rows },
  ];
}

function notesOf(input: OuterBindingInput, details: OuterBindingDetails): readonly Note[] {
  const { bend, cover, frontWidth } = details;
  const needsBias: readonly Note[] =
    bend !== null && details.isBiasNeeded
      ? [
          {
            kind: 'warning',
            says: 'Straight grain does not go round this edge: the strip has to give by {strain} and straight grain gives about {limit}. Cut it on the bias.',
            values: {
              strain: percentQuantity(100 * bend.strain),
              limit: percentQuantity(input.straightGrainGive),
            },
          },
          HANDLE_BIAS_TIP,
        ]
      : [];
  const reach: readonly Note[] =
    cover < 0
      ? [
          {
            kind: 'warning',
            says: 'With a seam of {seam} the fold stops {short} before the stitching on the back. Take a narrower seam or a strip of {strip}.',
            values: {
              seam: givenLength(input.seamAllowance),
              short: lengthQuantity(-cover, { direction: 'up' }),
              strip: lengthQuantity(details.stripForSeam, { direction: 'up', step: input.cutStep }),
            },
          },
        ]
      : [
          {
            kind: 'tip',
            says: 'With a seam of {seam} the fold passes the stitching on the back by {cover}; the strip is just right for a front of {front}.',
            values: {
              seam: givenLength(input.seamAllowance),
              cover: lengthQuantity(cover, { direction: 'down' }),
              front: lengthQuantity(frontWidth, { direction: 'down' }),
            },
          },
        ];
  const slit: readonly Note[] =
    input.hasSlit && input.slitBoundWith === 'hole'
      ? [{ kind: 'tip', says: 'The slit is not counted here: it is bound with the hole.', values: {} }]
      : [];
  return [...needsBias, ...reach, ...slit, ROTARY_CAUTION, IRON_CAUTION];
}
