import { failure, type Result, success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import type { Figure, Note } from '#core/calculators/explanation';
import {
  countQuantity,
  givenLength,
  lengthQuantity,
  percentQuantity,
  sizeQuantity,
} from '#core/calculators/quantities';
import { fabricNeed, squarePatch } from '#core/calculators/needs';
import { HANDLE_BIAS_TIP, IRON_CAUTION, ROTARY_CAUTION } from '../bench-notes';
import { bindingCuts } from '../binding-cuts';
import { continuousBiasDiagram } from './diagram';
import {
  type ContinuousBiasDetails,
  type ContinuousBiasInput,
  continuousBiasInputFromProject,
  continuousBiasInput,
} from './input';
import {
  areaRuleLength,
  type ContinuousBiasPlan,
  continuousBiasRows,
  planContinuousBias,
  squaredBiasLength,
} from './work';
import { continuousBiasSteps } from './steps';
import { linesTable, sourcesTable, workTable } from './tables';

export const continuousBias: Calculator<ContinuousBiasInput, ContinuousBiasDetails> = {
  name: 'continuous-bias',
  version: 1,
  title: 'Continuous bias',
  question: 'How small a square gives enough bias strip, cut round and round?',
  stageKinds: ['outer-binding', 'inner-binding'],
  input: continuousBiasInput,
  fromProject: continuousBiasInputFromProject,
  calculate,
  needs: ({ fabricWidth }, { side, squares }) => [
    fabricNeed('Bias binding', [squarePatch(side, squares)], { fabricWidth }),
  ],
  cuts: (_, { side, squares }) => bindingCuts(side, side, squares),
  isCutLater: true,
  wayTo: 'binding',
};

function calculate(input: ContinuousBiasInput): Result<Calculation<ContinuousBiasDetails>, Refusal> {
  const plan = planContinuousBias({
    needed: input.needed,
    strip: input.stripWidth,
    seam: input.seamAllowance,
    squareStep: input.squareStep,
    largest: input.fabricWidth,
  });
  if (plan === null) {
    return failure({
      code: 'fabric-too-narrow',
      field: ['fabricWidth'],
      says: 'No number of squares within {width} of fabric gives {needed} of strip {strip} wide.',
      values: {
        width: givenLength(input.fabricWidth),
        needed: givenLength(input.needed),
        strip: givenLength(input.stripWidth),
      },
    });
  }
  const details = detailsOf(input, plan);
  return success({
    figures: figuresOf(input, details),
    tables: [workTable(input, details), linesTable(input, details), sourcesTable(input, details)],
    explanation: continuousBiasSteps(input, details),
    notes: notesOf(input, details),
    diagram: continuousBiasDiagram(input, details),
    details,
  });
}

function detailsOf(input: ContinuousBiasInput, plan: ContinuousBiasPlan): ContinuousBiasDetails {
  const { stripWidth: strip, seamAllowance: seam } = input;
  const side = lengthFromExact(plan.side, 'nearest');
  const areaRule = areaRuleLength({ side, strip });
  const areaRuleSide = lengthFromExact(
    Math.sqrt((input.needed * strip) / plan.squares),
    'up',
    input.squareStep,
  );
  const pieceSide = Math.min(input.pieceWidth, input.pieceLength);
  return {
    ...plan,
    side,
    areaRule,
    areaRuleExcess: (areaRule * plan.squares) / plan.gives - 1,
    areaRuleSide,
    areaRuleSideGives: plan.squares * squaredBiasLength({ side: areaRuleSide, strip, seam }),
    pieceGives: squaredBiasLength({ side: pieceSide, strip, seam }),
  };
}

function figuresOf(input: ContinuousBiasInput, details: ContinuousBiasDetails): readonly Figure[] {
  const side = givenLength(details.side);
  const spare = details.gives - input.needed;
  return [
    {
      label: details.squares === 1 ? 'Square to cut' : 'Squares to cut, each',
      quantity: sizeQuantity(side, side),
    },
    ...(details.squares === 1
      ? []
      : [{ label: 'Number of squares', quantity: countQuantity(details.squares, ['square', 'squares']) }]),
    { label: 'It gives', quantity: lengthQuantity(details.gives, { direction: 'down' }) },
    { label: 'More than needed', quantity: lengthQuantity(spare, { direction: 'down' }) },
    { label: 'Rows in a square', quantity: countQuantity(details.rows, ['row', 'rows'], 'down') },
  ];
}

function notesOf(input: ContinuousBiasInput, details: ContinuousBiasDetails): readonly Note[] {
  const isRuleShort = details.areaRuleSideGives < input.needed;
  const ruleNote: Note = {
    kind: 'warning',
    says: 'The rule of area would have you cut {side}. After the seams that gives only {gives}: too little.',
    values: {
      side: givenLength(details.areaRuleSide),
      gives: lengthQuantity(details.areaRuleSideGives, { direction: 'down' }),
    },
  };
  const tip: Note = {
    kind: 'tip',
    says: 'Lay the two halves corner on corner for the first seam. If you move one along by the seam so that its point sticks out, every round is {less} shorter.',
    values: { less: lengthQuantity(input.seamAllowance * Math.SQRT2, { direction: 'up' }) },
  };
  return [
    ...(isRuleShort ? [ruleNote] : []),
    {
      kind: 'tip',
      says: 'The rule of area (side times side, divided by the strip) promises {excess} too much here: it forgets the seams and the last, incomplete row.',
      values: { excess: percentQuantity(100 * details.areaRuleExcess) },
    },
    tip,
    ...rowsNote(input, details),
    HANDLE_BIAS_TIP,
    ROTARY_CAUTION,
    IRON_CAUTION,
  ];
}

/** Where half a step less would lose a whole row, the maker wonders why the square is not cut a little smaller. */
function rowsNote(input: ContinuousBiasInput, { side, rows }: ContinuousBiasDetails): readonly Note[] {
  const smaller = side - input.squareStep;
  const rowsOfSmaller = continuousBiasRows({
    side: smaller,
    strip: input.stripWidth,
    seam: input.seamAllowance,
  });
  if (rowsOfSmaller === rows || smaller <= 0) return [];
  return [
    {
      kind: 'tip',
      says: 'Only whole rows count: a square of {smaller} would have {rows} less, so do not trim this one down.',
      values: {
        smaller: lengthQuantity(smaller, { direction: 'nearest' }),
        rows: countQuantity(rows - rowsOfSmaller, ['row', 'rows']),
      },
    },
  ];
}
