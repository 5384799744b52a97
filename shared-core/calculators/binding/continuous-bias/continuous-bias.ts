import { failure, type Result, success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note } from '#core/calculators/explanation';
import {
  countQuantity,
  givenLength,
  lengthDown,
  lengthNearest,
  lengthUp,
  percentQuantity,
  sizeQuantity,
} from '#core/calculators/quantities';
import { fabricNeed, squarePatch } from '#core/calculators/needs';
import { HANDLE_BIAS_TIP } from '../bench-notes';
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
  question: 'What size square gives enough continuous bias?',
  stageKinds: ['outer-binding', 'inner-binding'],
  input: continuousBiasInput,
  fromProject: continuousBiasInputFromProject,
  startsFromProject: ['pieceWidth'],
  calculate,
  needs: ({ fabricWidth }, { side, squares }) => [
    fabricNeed('Bias binding', [squarePatch(side, squares)], { fabricWidth }),
  ],
  cuts: (_, { side, squares }) => bindingCuts('Bias binding', side, side, squares),
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
      says: 'Even many squares from fabric {width} wide do not give {needed} of strip {strip} wide.',
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
      label: details.squares === 1 ? 'Square to cut' : 'Each square to cut',
      quantity: sizeQuantity(side, side),
    },
    ...(details.squares === 1
      ? []
      : [{ label: 'Number of squares', quantity: countQuantity(details.squares, ['square', 'squares']) }]),
    { label: 'Strip it gives', quantity: lengthDown(details.gives) },
    { label: 'Left over', quantity: lengthDown(spare) },
    { label: 'Rows in a square', quantity: countQuantity(details.rows, ['row', 'rows'], 'down') },
  ];
}

function notesOf(input: ContinuousBiasInput, details: ContinuousBiasDetails): readonly Note[] {
  const isRuleShort = details.areaRuleSideGives < input.needed;
  const ruleNote: Note = {
    kind: 'warning',
    says: 'The rule of area asks for a square of {side}. After the seams, that gives only {gives}, which is too little.',
    values: {
      side: givenLength(details.areaRuleSide),
      gives: lengthDown(details.areaRuleSideGives),
    },
  };
  const tip: Note = {
    kind: 'tip',
    says: 'Match the corners of the two halves for the first seam. If you shift one by the seam allowance so that its point sticks out, every round is {less} shorter.',
    values: { less: lengthUp(input.seamAllowance * Math.SQRT2) },
  };
  return [
    ...(isRuleShort ? [ruleNote] : []),
    {
      kind: 'tip',
      says: 'The rule of area (side times side, divided by the strip width) promises {excess} too much here. It ignores the seams and the last, incomplete row.',
      values: { excess: percentQuantity(100 * details.areaRuleExcess) },
    },
    tip,
    ...rowsNote(input, details),
    HANDLE_BIAS_TIP,
    ...cautionNotes('rotaryBlade', 'scissors', 'iron'),
  ];
}

/** Tells a maker who thinks of a slightly smaller square that it would lose a whole row. */
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
      says: 'Only whole rows count: a square of {smaller} has {rows} less, so don’t trim this one down.',
      values: {
        smaller: lengthNearest(smaller),
        rows: countQuantity(rows - rowsOfSmaller, ['row', 'rows']),
      },
    },
  ];
}
