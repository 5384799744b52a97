import type { Outline } from '#core/domain/outline';
import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromMeters, lengthMaximum } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { LengthQuantity, Note, Table } from '../explanation';
import { givenLength, sizeQuantity, wordsQuantity } from '../quantities';
import { type WashingInput, washingInput, washingInputFromProject } from './input';
import { washingSteps } from './steps';
import { outlineToMake, settingPercent, type SideSizes, washedSizes } from './work';

/** Sizes in 1/320 mm, those after the wash before rounding. Percentages are shrinkage, negative when the fabric grew. */
interface WashingDetails {
  readonly acrossPercent: number;
  readonly alongPercent: number;
  readonly washedWidth: number;
  readonly washedLength: number;
  readonly makeWidth: Length;
  readonly makeLength: Length;
  readonly topWidth: Length;
  readonly topLength: Length;
  /** The outline that washes to the wished size; null without a wish. */
  readonly makeOutline: Outline | null;
  /** Whether the shrinkage comes from a sample, not from the two percentages. */
  readonly isSampled: boolean;
}

/** The size of a finished quilt after its first wash, and the size to make it so that it ends at a given size. */
export const washing: Calculator<WashingInput, WashingDetails> = {
  name: 'washing',
  version: 1,
  title: 'Size after washing',
  question: 'What size is it after the first wash, and what size should I make it?',
  stageKinds: ['piecing', 'longarm', 'home-quilting'],
  input: washingInput,
  fromProject: washingInputFromProject,
  calculate: calculateWashing,
  decides: ({ makeOutline, isSampled, acrossPercent, alongPercent }) => ({
    ...(makeOutline === null ? {} : { outline: makeOutline }),
    ...(isSampled
      ? {
          washAcrossPercent: settingPercent(acrossPercent),
          washAlongPercent: settingPercent(alongPercent),
        }
      : {}),
  }),
};

function calculateWashing(input: WashingInput): Result<Calculation<WashingDetails>, Refusal> {
  const sizes = washedSizes(input);
  const { width, length } = sizes;
  if (input.wish !== null && lengthMaximum(width.make.rounded, length.make.rounded) > LARGEST_PROJECT) {
    return failure(TOO_LARGE);
  }
  return success({
    figures: [
      { label: 'To end at this size, make it', quantity: sizeQuantity(width.make, length.make) },
      { label: 'For that, piece the top', quantity: sizeQuantity(width.top, length.top) },
      { label: 'Made at this size, it washes to', quantity: sizeQuantity(width.washed, length.washed) },
    ],
    tables: [sizesTable(width, length)],
    explanation: washingSteps(input, sizes),
    notes: NOTES,
    diagram: null,
    details: {
      acrossPercent: width.percent,
      alongPercent: length.percent,
      washedWidth: width.washed.exact,
      washedLength: length.washed.exact,
      makeWidth: width.make.rounded,
      makeLength: length.make.rounded,
      topWidth: width.top.rounded,
      topLength: length.top.rounded,
      makeOutline: outlineToMake(input, width.make.rounded, length.make.rounded),
      isSampled: input.sample !== null,
    },
  });
}

/** A project's sides go up to 10 m. */
const LARGEST_PROJECT = lengthFromMeters(10);

const TOO_LARGE: Refusal = {
  code: 'too-large',
  field: ['wish', 'width'],
  says: 'To wash to this size, it would have to be made larger than a project can be: {most}.',
  values: { most: givenLength(LARGEST_PROJECT) },
};

function sizesTable(width: SideSizes, length: SideSizes): Table {
  const row = (stage: string, across: LengthQuantity, along: LengthQuantity) => [
    wordsQuantity(stage),
    across,
    along,
  ];
  return {
    title: 'Sizes along the way',
    columns: ['When', 'Width', 'Length'],
    rows: [
      row('Pieced top', width.top, length.top),
      row('Quilted and bound', width.make, length.make),
      row('After the first wash', givenLength(width.wanted), givenLength(length.wanted)),
    ],
  };
}

const NOTES: readonly Note[] = [
  {
    kind: 'tip',
    says: 'Fabric, batting, the density of the quilting and the heat of the wash all matter. To be sure, quilt a sample, measure it, wash it and measure again.',
    values: {},
  },
  {
    kind: 'warning',
    says: 'A hole shrinks with the quilt around it. The question about the size of the hole starts with the larger of the project’s two percentages.',
    values: {},
  },
];
