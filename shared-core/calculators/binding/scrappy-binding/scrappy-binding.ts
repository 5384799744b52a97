import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import type { Need } from '#core/domain/need';
import type { Calculator } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note, Quantity, Table } from '#core/calculators/explanation';
import { fabricNeed } from '#core/calculators/needs';
import { outlineTightestRadius } from '#core/calculators/outline/outline-measures';
import {
  countQuantity,
  givenLength,
  lengthDown,
  lengthNearest,
  lengthUp,
  wordsQuantity,
} from '#core/calculators/quantities';
import { bindingCuts } from '../binding-cuts';
import { joinCost } from '../strip-joins';
import { scrappyBindingDiagram } from './diagram';
import { type ScrappyBindingInput, scrappyBindingFromProject, scrappyBindingInput } from './input';
import { scrappyBindingSteps } from './steps';
import { givenWith, planScrappyBinding, type ScrappyBindingDetails } from './work';

/** Whether strips of given lengths reach around the edge, what is missing, and where their joins come. */
export const scrappyBinding: Calculator<ScrappyBindingInput, ScrappyBindingDetails> = {
  name: 'scrappy-binding',
  version: 1,
  title: 'Binding from strips you have',
  question: 'Do the strips you have reach around the edge, and where do their joins come?',
  stageKinds: ['outer-binding'],
  isOccasional: true,
  input: scrappyBindingInput,
  fromProject: scrappyBindingFromProject,
  calculate(input) {
    const plan = planScrappyBinding(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [joinsTable(input, details)],
      explanation: scrappyBindingSteps(input, details),
      notes: notesOf(input, details),
      diagram: scrappyBindingDiagram(input, details),
      details,
    });
  },
  needs: scrappyBindingNeeds,
  cuts: ({ fabricWidth, stripWidth }, { more }) =>
    more === 0 ? [] : bindingCuts('Binding', fabricWidth, stripWidth, more),
  isCutLater: true,
  wayTo: 'binding',
};

/** Only what is missing: the strips that are there are cut already. */
function scrappyBindingNeeds(
  input: ScrappyBindingInput,
  { missing }: ScrappyBindingDetails,
): readonly Need[] {
  if (missing === 0) return [];
  const cost = joinCost(input.join, input.stripWidth, input.seamAllowance);
  const width = { fabricWidth: input.fabricWidth, extraPercent: input.safetyExtra };
  const strips = { strip: input.stripWidth, needed: missing + cost, cost };
  return [{ ...fabricNeed('Binding', [], width), amount: { measure: 'strips', ...strips } }];
}

function figuresOf(input: ScrappyBindingInput, details: ScrappyBindingDetails): readonly Figure[] {
  const { missing, needed, given, used, more } = details;
  const lengths: readonly Figure[] = [
    { label: 'Strip needed', quantity: lengthUp(needed) },
    { label: 'Your strips give', quantity: lengthDown(given) },
  ];
  if (missing === 0) {
    return [
      { label: 'Your strips', quantity: wordsQuantity('reach around') },
      { label: 'Left over', quantity: lengthDown(details.spare) },
      ...lengths,
      { label: 'Strips used, in your order', quantity: countQuantity(used, ['strip', 'strips']) },
    ];
  }
  return [
    { label: 'Your strips', quantity: wordsQuantity('don’t reach') },
    { label: 'Missing', quantity: lengthUp(missing) },
    { label: 'More strips to cut', quantity: countQuantity(more, ['strip', 'strips']) },
    { label: 'Fabric to buy', quantity: fabricToBuy(input, details.fabric) },
    ...lengths,
  ];
}

function joinsTable(input: ScrappyBindingInput, { needed }: ScrappyBindingDetails): Table {
  return {
    title: 'Both ways to join them',
    columns: ['Join', 'Each join takes', 'All strips give', 'Left over', 'Missing'],
    rows: (['diagonal', 'straight'] as const).map((join): readonly Quantity[] => {
      const given = givenWith(input, join);
      return [
        wordsQuantity(join),
        lengthUp(joinCost(join, input.stripWidth, input.seamAllowance)),
        lengthDown(given),
        lengthDown(Math.max(0, given - needed)),
        lengthUp(Math.max(0, needed - given)),
      ];
    }),
  };
}

function notesOf(input: ScrappyBindingInput, details: ScrappyBindingDetails): readonly Note[] {
  return [
    ...startNotes(input, details),
    ...(outlineTightestRadius(input.outline) === null ? [] : [BIAS_ON_A_CURVE]),
    ...cautionNotes('rotaryBlade', 'iron', 'pins'),
  ];
}

const BIAS_ON_A_CURVE: Note = {
  kind: 'warning',
  says: 'This edge is curved. Use strips that are cut on the bias: strips on the straight grain don’t lie flat on it.',
  values: {},
};

/** A join is a strip width long when diagonal, so nearer than that it gets folded into the miter. */
function startNotes(input: ScrappyBindingInput, { start }: ScrappyBindingDetails): readonly Note[] {
  if (start === null) return [];
  const clearance = lengthDown(start.clearance);
  const begins = 'the strip begins {past} past a corner, on a side {side} long';
  const where = { past: lengthNearest(start.past), side: lengthNearest(start.side), clearance };
  if (start.clearance >= input.stripWidth) {
    return [
      {
        kind: 'tip',
        says: `No join comes nearer than {clearance} to a corner when ${begins}. Lay it around once before you sew.`,
        values: where,
      },
    ];
  }
  return [
    {
      kind: 'warning',
      says: `In this order a join comes within {clearance} of a corner, even when ${begins}. A miter needs {width} without a join: change the order.`,
      values: { ...where, width: givenLength(input.stripWidth) },
    },
  ];
}
