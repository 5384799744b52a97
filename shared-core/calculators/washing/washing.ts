import { type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { LengthQuantity, Note, Step, Table } from '../explanation';
import { givenLength, lengthQuantity, percentQuantity, sizeQuantity, wordsQuantity } from '../quantities';
import { type WashingInput, washingInput, washingInputFromProject } from './input';

/** Sizes in 1/320 mm before rounding; percentages of shrinkage, negative where the fabric grew. */
export interface WashingDetails {
  readonly acrossPercent: number;
  readonly alongPercent: number;
  readonly washedWidth: number;
  readonly washedLength: number;
  readonly makeWidth: Length;
  readonly makeLength: Length;
  readonly topWidth: Length;
  readonly topLength: Length;
}

/** What a finished piece measures after its first wash, and how large to make it to end at a size. */
export const washing: Calculator<WashingInput, WashingDetails> = {
  name: 'washing',
  version: 1,
  title: 'Size after washing',
  question: 'How large is it after the first wash, and how large must it be made?',
  stageKinds: ['piecing', 'longarm', 'home-quilting'],
  input: washingInput,
  fromProject: washingInputFromProject,
  calculate: calculateWashing,
};

function calculateWashing(input: WashingInput): Result<Calculation<WashingDetails>, Refusal> {
  const across = sideSizes(input, input.width, shrinkagePercent(input, 'across'));
  const along = sideSizes(input, input.length, shrinkagePercent(input, 'along'));
  return success({
    figures: [
      { label: 'To end at this size, make it', quantity: sizeQuantity(across.make, along.make) },
      { label: 'For that, piece the top', quantity: sizeQuantity(across.top, along.top) },
      { label: 'Made at this size, it washes to', quantity: sizeQuantity(across.washed, along.washed) },
    ],
    tables: [sizesTable(input, across, along)],
    explanation: [
      ...sampleSteps(input),
      ...sideSteps('width', across, input),
      ...sideSteps('length', along, input),
    ],
    notes: NOTES,
    diagram: null,
    details: {
      acrossPercent: across.percent,
      alongPercent: along.percent,
      washedWidth: across.washed.exact,
      washedLength: along.washed.exact,
      makeWidth: across.make.rounded,
      makeLength: along.make.rounded,
      topWidth: across.top.rounded,
      topLength: along.top.rounded,
    },
  });
}

interface SideSizes {
  readonly percent: number;
  readonly wanted: Length;
  readonly washed: LengthQuantity;
  readonly make: LengthQuantity;
  readonly top: LengthQuantity;
}

/** Percent lost: 100 × (before − after) ÷ before, the sign turned from the standard's dimensional change. */
function shrinkagePercent(input: WashingInput, direction: 'across' | 'along'): number {
  if (input.sample === null) return direction === 'across' ? input.acrossPercent : input.alongPercent;
  return (100 * (input.sample.marked - input.sample[direction])) / input.sample.marked;
}

function sideSizes({ quiltingPercent, cutStep }: WashingInput, wanted: Length, percent: number): SideSizes {
  const up = (exact: number) => lengthQuantity(exact, { step: cutStep, direction: 'up' });
  const make = up(wanted / (1 - percent / 100));
  const washed = lengthQuantity(wanted * (1 - percent / 100), { step: cutStep, direction: 'nearest' });
  return { percent, wanted, washed, make, top: up(make.rounded / (1 - quiltingPercent / 100)) };
}

function sizesTable({ width, length }: WashingInput, across: SideSizes, along: SideSizes): Table {
  const row = (stage: string, one: LengthQuantity, other: LengthQuantity) => [
    wordsQuantity(stage),
    one,
    other,
  ];
  return {
    title: 'Sizes on the way',
    columns: ['When', 'Width', 'Length'],
    rows: [
      row('Pieced top', across.top, along.top),
      row('Quilted and bound', across.make, along.make),
      row('After the first wash', givenLength(width), givenLength(length)),
    ],
  };
}

function sampleSteps(input: WashingInput): readonly Step[] {
  const { sample } = input;
  if (sample === null) return [];
  return (['across', 'along'] as const).map((direction) => ({
    label: `Shrinkage ${direction}`,
    formula: '100 × (before − after) ÷ before',
    terms: [
      { symbol: 'before', means: 'as marked', quantity: givenLength(sample.marked) },
      { symbol: 'after', means: 'after washing', quantity: givenLength(sample[direction]) },
    ],
    result: percentQuantity(shrinkagePercent(input, direction)),
    rule: {
      kind: 'published',
      says: 'AATCC TM135 (ISO 5077 alike) gives 100 × (after − before) ÷ before, length and width apart; here a loss is positive.',
    },
  }));
}

function sideSteps(name: string, sizes: SideSizes, { quiltingPercent }: WashingInput): readonly Step[] {
  const lost = { symbol: 'p', means: 'shrinkage', quantity: percentQuantity(sizes.percent) };
  const wanted = { symbol: 'F', means: `the ${name}`, quantity: givenLength(sizes.wanted) };
  return [
    {
      label: `To end at this ${name}`,
      formula: 'F ÷ (1 − p)',
      terms: [wanted, lost],
      result: sizes.make,
      rule: {
        kind: 'derived',
        says: 'The wash takes its part of the larger size, so adding p of F is not quite enough.',
      },
    },
    {
      label: `The top’s ${name}`,
      formula: 'M ÷ (1 − q)',
      terms: [
        { symbol: 'M', means: 'made, as above', quantity: givenLength(sizes.make.rounded) },
        { symbol: 'q', means: 'drawn in by quilting', quantity: percentQuantity(quiltingPercent) },
      ],
      result: sizes.top,
      rule: { kind: 'derived', says: 'Quilting draws the top in before it is bound.' },
    },
    {
      label: `Made at this ${name}`,
      formula: 'F × (1 − p)',
      terms: [wanted, lost],
      result: sizes.washed,
      rule: { kind: 'derived', says: 'What is left after the first wash.' },
    },
  ];
}

const NOTES: readonly Note[] = [
  {
    kind: 'tip',
    says: 'Fabric, batting, density of quilting and heat of the wash all matter: quilt, measure and wash a sample to know.',
    values: {},
  },
  {
    kind: 'warning',
    says: 'A hole shrinks with the piece round it: where it has to clear a pole or a stand, reckon it with the same percentage.',
    values: {},
  },
];
