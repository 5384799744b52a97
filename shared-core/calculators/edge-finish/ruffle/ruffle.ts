import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note } from '#core/calculators/explanation';
import { fabricNeed } from '#core/calculators/needs';
import {
  countQuantity,
  givenLength,
  lengthNearest,
  lengthUp,
  numberQuantity,
} from '#core/calculators/quantities';
import { ruffleDiagram } from './diagram';
import { type RuffleInput, ruffleFromProject, ruffleInput } from './input';
import { ruffleSteps } from './steps';
import { joinOf, planRuffle, type RuffleDetails } from './work';

const NAME = 'Ruffle';

/** A gathered or pleated strip along an edge: how long it is flat, how wide to cut it, and the fabric. */
export const ruffle: Calculator<RuffleInput, RuffleDetails> = {
  name: 'ruffle',
  version: 1,
  title: 'Ruffle',
  question: 'How much strip and fabric does a gathered or pleated ruffle take?',
  stageKinds: ['outer-binding'],
  isOccasional: true,
  input: ruffleInput,
  fromProject: ruffleFromProject,
  calculate(input) {
    const plan = planRuffle(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [],
      explanation: ruffleSteps(input, details),
      notes: notesOf(input, details),
      diagram: ruffleDiagram(input, details),
      details,
    });
  },
  needs(input, { cutWidth, needed }) {
    const cost = joinOf(input);
    const width = { fabricWidth: input.fabricWidth, extraPercent: input.safetyExtra };
    const strips = { strip: cutWidth, needed, cost: needed > cost ? cost : 0 };
    return [{ ...fabricNeed(NAME, [], width), amount: { measure: 'strips', ...strips } }];
  },
  cuts: ({ fabricWidth }, { cutWidth, strips }) => [
    { fabric: NAME, width: fabricWidth, length: cutWidth, count: strips, mayTurn: true },
  ],
  isCutLater: true,
};

function figuresOf(input: RuffleInput, details: RuffleDetails): readonly Figure[] {
  const { pleats, fullnessAtFreeEdge } = details;
  const pleatFigures: readonly Figure[] =
    pleats === null
      ? []
      : [
          { label: 'Pleats', quantity: countQuantity(pleats.count, ['pleat', 'pleats']) },
          { label: 'From pleat to pleat', quantity: lengthNearest(pleats.pitch) },
        ];
  return [
    { label: 'Strips to cut', quantity: countQuantity(details.strips, ['strip', 'strips']) },
    { label: 'Cut width', quantity: givenLength(details.cutWidth) },
    { label: 'Fabric to buy', quantity: fabricToBuy(input, details.fabric) },
    { label: 'Fabric for the strips', quantity: lengthUp(details.fabric) },
    { label: 'Flat strip', quantity: lengthUp(details.flat) },
    ...pleatFigures,
    { label: 'Fullness at the seam', quantity: numberQuantity(details.fullness) },
    ...(fullnessAtFreeEdge === null
      ? []
      : [{ label: 'Fullness at the free edge', quantity: numberQuantity(fullnessAtFreeEdge) }]),
  ];
}

function notesOf(input: RuffleInput, details: RuffleDetails): readonly Note[] {
  return [
    ...fullnessNotes(details),
    input.ruffle.style === 'gathers' ? GATHER : PLEAT,
    ...(input.around === 'all-around' ? [CORNERS] : []),
    ...cautionNotes('rotaryBlade', 'iron', 'machineNeedle', 'pins'),
  ];
}

/** Pleats that take more than 3 to 1 lie over each other. */
function fullnessNotes({ fullnessAtFreeEdge, pleats }: RuffleDetails): readonly Note[] {
  const tight: Note = {
    kind: 'warning',
    says: 'At the free edge the strip is shorter than the edge it has to reach around, so it cups. Make it fuller or narrower.',
    values: {},
  };
  if (fullnessAtFreeEdge !== null && fullnessAtFreeEdge < 1) return [tight];
  if (pleats === null || pleats.pitch >= (pleats.folds / 2) * pleats.depth) return [];
  return [
    {
      kind: 'warning',
      says: 'Pleats {depth} deep and {pitch} apart lie over each other, which is thick in the seam.',
      values: { depth: givenLength(pleats.depth), pitch: lengthNearest(pleats.pitch) },
    },
  ];
}

const GATHER: Note = {
  kind: 'tip',
  says: 'Mark quarters on strip and edge. Sew two rows of long stitches, one on each side of the seam line, and draw both up quarter by quarter.',
  values: {},
};

const PLEAT: Note = {
  kind: 'tip',
  says: 'Mark the folds on the flat strip and pleat a test length first: a thread’s width in each fold adds up over many.',
  values: {},
};

const CORNERS: Note = {
  kind: 'tip',
  says: 'Put more fullness into each corner and less along the sides, so that the free edge lies flat around it.',
  values: {},
};
