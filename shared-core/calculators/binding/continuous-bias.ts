import { failure, type Result, success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Note } from '../explanation';
import { countQuantity, givenLength, lengthQuantity, percentQuantity, sizeQuantity } from '../quantities';
import { fabricNeed, squarePatch } from '../needs';
import { HANDLE_BIAS_TIP, IRON_CAUTION, ROTARY_CAUTION } from './bench-notes';
import { bindingCuts } from './binding-cuts';
import { continuousBiasDiagram } from './continuous-bias-diagram';
import {
  type ContinuousBiasDetails,
  type ContinuousBiasInput,
  continuousBiasFromProject,
  continuousBiasInput,
} from './continuous-bias-input';
import {
  areaRuleLength,
  type ContinuousBiasPlan,
  continuousBiasRows,
  planContinuousBias,
  squaredBiasLength,
} from './continuous-bias-layout';
import { continuousBiasSteps } from './continuous-bias-steps';
import { linesTable, sourcesTable, workTable } from './continuous-bias-tables';

export const continuousBias: Calculator<ContinuousBiasInput, ContinuousBiasDetails> = {
  name: 'continuous-bias',
  version: 1,
  title: 'Continuous bias',
  question: 'How small a square gives enough bias strip, cut round and round?',
  stageKinds: ['outer-binding', 'inner-binding'],
  input: continuousBiasInput,
  fromProject: continuousBiasFromProject,
  calculate,
  needs: ({ fabricWidth }, { side, squares }) => [
    fabricNeed('Bias binding', [squarePatch(side, squares)], { fabricWidth }),
  ],
  cuts: (_, { side, squares }) => bindingCuts(side, side, squares),
  isCutLater: true,
  wayTo: 'binding',
};

function calculate(asked: ContinuousBiasInput): Result<Calculation<ContinuousBiasDetails>, Refusal> {
  const plan = planContinuousBias({
    needed: asked.needed,
    strip: asked.stripWidth,
    seam: asked.seamAllowance,
    squareStep: asked.squareStep,
    largest: asked.fabricWidth,
  });
  if (plan === null) {
    return failure({
      code: 'fabric-too-narrow',
      field: ['fabricWidth'],
      says: 'No number of squares within {width} of fabric gives {needed} of strip {strip} wide.',
      values: {
        width: givenLength(asked.fabricWidth),
        needed: givenLength(asked.needed),
        strip: givenLength(asked.stripWidth),
      },
    });
  }
  const details = detailsOf(asked, plan);
  return success({
    figures: figuresOf(asked, details),
    tables: [workTable(asked, details), linesTable(asked, details), sourcesTable(asked, details)],
    explanation: continuousBiasSteps(asked, details),
    notes: notesOf(asked, details),
    diagram: continuousBiasDiagram(asked, details),
    details,
  });
}

function detailsOf(asked: ContinuousBiasInput, plan: ContinuousBiasPlan): ContinuousBiasDetails {
  const { stripWidth: strip, seamAllowance: seam } = asked;
  const side = lengthFromExact(plan.side, 'nearest');
  const areaRule = areaRuleLength({ side, strip });
  const areaRuleSide = lengthFromExact(
    Math.sqrt((asked.needed * strip) / plan.squares),
    'up',
    asked.squareStep,
  );
  const pieceSide = Math.min(asked.pieceWidth, asked.pieceLength);
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

function figuresOf(asked: ContinuousBiasInput, details: ContinuousBiasDetails): readonly Figure[] {
  const side = givenLength(details.side);
  const spare = details.gives - asked.needed;
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

function notesOf(asked: ContinuousBiasInput, details: ContinuousBiasDetails): readonly Note[] {
  const isRuleShort = details.areaRuleSideGives < asked.needed;
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
    values: { less: lengthQuantity(asked.seamAllowance * Math.SQRT2, { direction: 'up' }) },
  };
  return [
    ...(isRuleShort ? [ruleNote] : []),
    {
      kind: 'tip',
      says: 'The rule of area (side times side, divided by the strip) promises {excess} too much here: it forgets the seams and the last, incomplete row.',
      values: { excess: percentQuantity(100 * details.areaRuleExcess) },
    },
    tip,
    ...rowsNote(asked, details),
    HANDLE_BIAS_TIP,
    ROTARY_CAUTION,
    IRON_CAUTION,
  ];
}

/** Where half a step less would lose a whole row, the maker wonders why the square is not cut a little smaller. */
function rowsNote(asked: ContinuousBiasInput, { side, rows }: ContinuousBiasDetails): readonly Note[] {
  const smaller = side - asked.squareStep;
  const rowsOfSmaller = continuousBiasRows({
    side: smaller,
    strip: asked.stripWidth,
    seam: asked.seamAllowance,
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
