import { z } from 'zod';
import { flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { failure, type Result, success } from '#core/result';
import {
  type Length,
  MAX_LENGTH_UNITS,
  lengthFromUnits,
  lengthFromMeters,
  lengthFromInches,
} from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { LengthQuantity, Note, Step } from '../explanation';
import { givenLength, lengthQuantity, wordsQuantity } from '../quantities';
import { yardageStepField, yardageStepOfSettings } from '../shared-fields';
import { CHART_SPREAD_UNITS, chartLength } from './width-chart';

const inches = lengthFromInches;
const fabricWidthField = (title: string) => lengthField({ title, minimum: inches(4), maximum: inches(130) });

export const fabricWidthInput = z
  .object({
    length: lengthField({
      title: 'Fabric asked for',
      minimum: inches(1),
      maximum: lengthFromMeters(100),
    }),
    fromWidth: fabricWidthField('Its width'),
    toWidth: fabricWidthField('Width of the fabric you have'),
    isOneWay: flagField({
      title: 'One-way print or nap',
      help: 'A quarter of a yard is added, as the published chart advises for it and for large differences in width.',
    }),
    yardageStep: yardageStepField(),
  })
  .readonly();

export type FabricWidthInput = z.infer<typeof fabricWidthInput>;

export interface FabricWidthDetails {
  /** In 1/320 mm, by the published chart; null where it has no such cell. */
  readonly byChart: number | null;
  /** By area, before rounding. */
  readonly byArea: number;
  readonly toBuy: Length;
}

/** How much fabric of another width stands in for a length of one width. */
export const fabricWidth: Calculator<FabricWidthInput, FabricWidthDetails> = {
  name: 'fabric-width',
  version: 1,
  title: 'Another fabric width',
  question: 'How much do I need of fabric that is wider or narrower than asked for?',
  stageKinds: ['piecing', 'longarm', 'outer-binding'],
  input: fabricWidthInput,
  fromProject: fabricWidthInputFromProject,
  calculate: calculateFabricWidth,
};

function fabricWidthInputFromProject({ settings }: Measurements): FabricWidthInput {
  return {
    length: lengthFromUnits(2 * 36 * inches(1)),
    fromWidth: inches(44),
    toWidth: inches(60),
    isOneWay: false,
    yardageStep: yardageStepOfSettings(settings),
  };
}

function calculateFabricWidth(input: FabricWidthInput): Result<Calculation<FabricWidthDetails>, Refusal> {
  const byArea = (input.length * input.fromWidth) / input.toWidth;
  if (byArea + CHART_SPREAD_UNITS + input.yardageStep > MAX_LENGTH_UNITS) return failure(refuseNarrow(input));
  const byChart = chartLength(input.length, input.fromWidth, input.toWidth);
  const area = bought(input, byArea);
  const plain = byChart ?? byArea;
  const toBuy = bought(input, plain + (input.isOneWay ? CHART_SPREAD_UNITS : 0));
  return success({
    figures: [
      { label: 'Fabric to buy', quantity: toBuy },
      {
        label: 'Taken from',
        quantity: wordsQuantity(byChart === null ? 'the area rule' : 'the published chart'),
      },
      { label: 'By area', quantity: area },
    ],
    tables: [],
    explanation: [areaStep(input, area), ...chartSteps(input, byChart), ...oneWaySteps(input, plain, toBuy)],
    notes: widthNotes(byChart),
    diagram: null,
    details: { byChart, byArea, toBuy: toBuy.rounded },
  });
}

function refuseNarrow({ length, fromWidth, toWidth }: FabricWidthInput): Refusal {
  return {
    code: 'too-long',
    field: ['toWidth'],
    says: '{length} of fabric {from} wide would take more than a kilometer of fabric {to} wide.',
    values: {
      length: givenLength(length, 'yardage'),
      from: givenLength(fromWidth),
      to: givenLength(toWidth),
    },
  };
}

function bought({ yardageStep }: FabricWidthInput, exact: number): LengthQuantity {
  return lengthQuantity(exact, { step: yardageStep, direction: 'up', use: 'yardage' });
}

function areaStep(input: FabricWidthInput, result: LengthQuantity): Step {
  return {
    label: 'By area',
    formula: 'L × W₁ ÷ W₂',
    terms: [
      { symbol: 'L', means: 'fabric asked for', quantity: givenLength(input.length, 'yardage') },
      { symbol: 'W₁', means: 'its width', quantity: givenLength(input.fromWidth) },
      { symbol: 'W₂', means: 'width of the fabric you have', quantity: givenLength(input.toWidth) },
    ],
    result,
    rule: { kind: 'derived', says: 'The same area of fabric; it knows nothing of how the pieces lie.' },
  };
}

function chartSteps(input: FabricWidthInput, byChart: number | null): readonly Step[] {
  if (byChart === null) return [];
  return [
    {
      label: 'By the published chart',
      formula: 'looked up, never worked out',
      terms: [
        { symbol: 'L', means: 'fabric asked for', quantity: givenLength(input.length, 'yardage') },
        { symbol: 'W₁', means: 'its width', quantity: givenLength(input.fromWidth) },
        { symbol: 'W₂', means: 'width of the fabric you have', quantity: givenLength(input.toWidth) },
      ],
      result: bought(input, byChart),
      rule: {
        kind: 'published',
        says: 'Fabric width conversion chart, New Jersey Cooperative Extension Service, Rutgers (attribution from memory).',
      },
    },
  ];
}

function oneWaySteps(input: FabricWidthInput, plain: number, toBuy: LengthQuantity): readonly Step[] {
  if (!input.isOneWay) return [];
  return [
    {
      label: 'With a one-way print',
      formula: 'L + q',
      terms: [
        {
          symbol: 'L',
          means: 'as above',
          quantity: lengthQuantity(plain, { direction: 'up', use: 'yardage' }),
        },
        {
          symbol: 'q',
          means: 'for one-way fabric',
          quantity: lengthQuantity(CHART_SPREAD_UNITS, { direction: 'up', use: 'yardage' }),
        },
      ],
      result: toBuy,
      rule: { kind: 'published', says: 'The chart’s own note: add a quarter of a yard for one-way fabric.' },
    },
  ];
}

function widthNotes(byChart: number | null): readonly Note[] {
  const spread = lengthQuantity(CHART_SPREAD_UNITS, { direction: 'up', use: 'yardage' });
  const fit: Note = {
    kind: 'warning',
    says: 'Check that the widest piece fits the narrower fabric: no length makes up for that.',
    values: {},
  };
  const rough: Note = {
    kind: 'warning',
    says: 'The published chart has no such cell. Where it has one, it differs from the area rule by up to {spread} either way: lay the pieces out, or buy that much more.',
    values: { spread },
  };
  return byChart === null ? [fit, rough] : [fit];
}
