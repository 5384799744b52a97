import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note, Quantity, Table } from '#core/calculators/explanation';
import { countQuantity, givenLength, lengthDown, lengthUp } from '#core/calculators/quantities';
import { fabricNeed } from '#core/calculators/needs';
import { HANDLE_BIAS_TIP } from '../bench-notes';
import {
  type BiasStripsDetails,
  type BiasStripsInput,
  biasStripsInputFromProject,
  biasStripsInput,
} from './input';
import { type BiasFabric, biasFabricLength, layBiasStrips, squaredStripsLength } from './work';
import { biasStripsDiagram } from './diagram';
import { biasStripsSteps } from './steps';
import { bindingCuts } from '../binding-cuts';
import { LONGEST_BIAS_FABRIC, LONGEST_BINDING } from '../binding-fields';

export const biasStrips: Calculator<BiasStripsInput, BiasStripsDetails> = {
  name: 'bias-strips',
  version: 2,
  title: 'Bias strips from a piece of fabric',
  question: 'How much bias strip does this piece of fabric give, cut as single strips?',
  stageKinds: ['outer-binding', 'inner-binding'],
  input: biasStripsInput,
  fromProject: biasStripsInputFromProject,
  startsFromProject: ['pieceWidth'],
  calculate,
  needs: ({ pieceWidth: width }, { leastFabricLength: length }) =>
    length === null
      ? []
      : [fabricNeed('Bias binding', [{ width, length, count: 1, mayTurn: false }], { fabricWidth: width })],
  cuts: ({ pieceWidth }, { leastFabricLength }) =>
    leastFabricLength === null ? [] : bindingCuts('Bias binding', pieceWidth, leastFabricLength),
  isCutLater: true,
  wayTo: 'binding',
};

function calculate(input: BiasStripsInput): Result<Calculation<BiasStripsDetails>, Refusal> {
  const fabric = {
    width: input.pieceWidth,
    strip: input.stripWidth,
    seam: input.seamAllowance,
    shortest: input.shortestStrip,
  };
  const layout = layBiasStrips({ ...fabric, length: input.pieceLength });
  if (layout.strips.length === 0) {
    return failure({
      code: 'fabric-too-small',
      field: ['pieceLength'],
      says: 'No bias strip {strip} wide and at least {shortest} long fits this piece of fabric.',
      values: { strip: givenLength(input.stripWidth), shortest: givenLength(input.shortestStrip) },
    });
  }
  const gives = squaredStripsLength(layout, input.stripWidth);
  if (gives > LONGEST_BINDING) return failure(MORE_THAN_ANY_BINDING);
  const isEnough = gives >= input.needed;
  const leastFabricLength = leastLength(input, fabric, isEnough);
  const details: BiasStripsDetails = { ...layout, gives, isEnough, leastFabricLength };
  return success({
    figures: figuresOf(input, details),
    tables: [stripsTable(details)],
    explanation: biasStripsSteps(input, details),
    notes: notesOf(details),
    diagram: biasStripsDiagram(input, details),
    details,
  });
}

/** In whole steps, but never longer than a piece that is enough: the shopping list and the cutting plan ask for the same. */
function leastLength(
  { needed, lengthStep: step, pieceLength }: BiasStripsInput,
  fabric: Omit<BiasFabric, 'length'>,
  isEnough: boolean,
): Length | null {
  const least = biasFabricLength(fabric, { needed, step, longest: LONGEST_BIAS_FABRIC });
  const inSteps = least === null ? null : lengthFromExact(least, 'up');
  return isEnough && (inSteps === null || inSteps > pieceLength) ? pieceLength : inSteps;
}

const MORE_THAN_ANY_BINDING: Refusal = {
  code: 'too-much-strip',
  field: ['pieceLength'],
  says: 'That is {longest} of strip or more, longer than any binding. Enter a shorter piece of fabric.',
  values: { longest: givenLength(LONGEST_BINDING) },
};

function figuresOf(input: BiasStripsInput, details: BiasStripsDetails): readonly Figure[] {
  const { gives, isEnough, leastFabricLength } = details;
  return [
    { label: 'Strip it gives', quantity: lengthDown(gives) },
    { label: 'Strips', quantity: countQuantity(details.strips.length, ['strip', 'strips']) },
    isEnough
      ? { label: 'Left over', quantity: lengthDown(gives - input.needed) }
      : { label: 'Short by', quantity: lengthUp(input.needed - gives) },
    ...(leastFabricLength === null
      ? []
      : [
          { label: 'Shortest length of this width that is enough', quantity: givenLength(leastFabricLength) },
        ]),
  ];
}

/** Strips of one length in one row, the longest first. */
function stripsTable({ strips }: BiasStripsDetails): Table {
  const counts = new Map<number, number>();
  for (const { middle } of strips) {
    const whole = lengthFromExact(middle, 'down');
    counts.set(whole, (counts.get(whole) ?? 0) + 1);
  }
  const rows = [...counts].sort(([one], [other]) => other - one);
  return {
    title: 'Strips',
    columns: ['Strips', 'Length along the middle'],
    rows: rows.map(([length, count]): readonly Quantity[] => [
      countQuantity(count, ['strip', 'strips']),
      lengthDown(length),
    ]),
  };
}

function notesOf(details: BiasStripsDetails): readonly Note[] {
  return [
    {
      kind: 'tip',
      says: 'Make the first cut at 45° from a corner and cut strips on both sides of it. Keep all strips right side up and facing the same way so their ends match.',
      values: {},
    },
    ...(details.strips.length > 8
      ? [
          {
            kind: 'tip',
            says: 'That is {joins} to sew. Cut as continuous bias, it would be two seams.',
            values: { joins: countQuantity(details.strips.length - 1, ['join', 'joins']) },
          } as const,
        ]
      : []),
    HANDLE_BIAS_TIP,
    ...cautionNotes('rotaryBlade', 'iron'),
  ];
}
