import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import { HANDLE_BIAS_TIP } from '#core/calculators/binding/bench-notes';
import type { Calculator } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note } from '#core/calculators/explanation';
import { cordNeed } from '#core/calculators/needs';
import { outlineCornerAngles } from '#core/calculators/outline/outline-measures';
import { countQuantity, fineLength, givenLength, lengthUp, yardageUp } from '#core/calculators/quantities';
import { edgeStripsCuts, edgeStripsNeed, stripsOf } from '../edge-strips';
import { pipingDiagram } from './diagram';
import { type PipingInput, pipingFromProject, pipingInput } from './input';
import { pipingSteps } from './steps';
import { type PipingDetails, planPiping } from './work';

const NAME = 'Piping';

/** A covered cord in the seam of an edge: the strip to cut, the cord, the fabric and the clips. */
export const piping: Calculator<PipingInput, PipingDetails> = {
  name: 'piping',
  version: 2,
  title: 'Piping',
  question: 'How wide is the strip for a cord, and how much cord and fabric goes around the edge?',
  stageKinds: ['outer-binding', 'inner-binding'],
  isOccasional: true,
  input: pipingInput,
  fromProject: pipingFromProject,
  calculate(input) {
    const plan = planPiping(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [],
      explanation: pipingSteps(input, details),
      notes: notesOf(input, details),
      diagram: pipingDiagram(input),
      details,
    });
  },
  needs: (input, details) => [
    edgeStripsNeed(NAME, input, details),
    cordNeed('Cord for the piping', details.needed),
  ],
  cuts: ({ fabricWidth }, details) => edgeStripsCuts(NAME, fabricWidth, details),
  isCutLater: true,
};

function figuresOf(input: PipingInput, details: PipingDetails): readonly Figure[] {
  const { bend } = details;
  const clips: readonly Figure[] =
    bend === null ? [] : [{ label: 'Clips', quantity: countQuantity(bend.clips, ['clip', 'clips'], 'up') }];
  return [
    { label: 'Strip width', quantity: givenLength(details.strip) },
    { label: 'Cord, and strip', quantity: lengthUp(details.needed) },
    { label: 'Fabric to buy', quantity: fabricToBuy(input, details.fabric) },
    { label: 'Cord to buy', quantity: yardageUp(details.needed, input.yardageStep) },
    { label: 'Fabric for the strips', quantity: lengthUp(details.fabric) },
    { label: 'Strips', quantity: countQuantity(stripsOf(details), ['strip', 'strips']) },
    ...clips,
  ];
}

function notesOf(input: PipingInput, details: PipingDetails): readonly Note[] {
  return [
    clipNote(input, details),
    {
      kind: 'tip',
      says: 'Wash the cord first if the piece will be washed. Sew the strip around it with the foot close to the cord, then the piping to the edge a little closer still.',
      values: {},
    },
    ...(details.bias === null ? [] : [HANDLE_BIAS_TIP]),
    ...cautionNotes('rotaryBlade', 'scissors', 'iron', 'machineNeedle', 'pins'),
  ];
}

function clipNote({ outline, around, clipEvery }: PipingInput, { bend }: PipingDetails): Note {
  if (bend === null) {
    const corners = outlineCornerAngles(outline).length;
    return corners === 0
      ? { kind: 'tip', says: 'Clip the seam allowance of the piping once at every corner.', values: {} }
      : {
          kind: 'tip',
          says: 'Clip the seam allowance of the piping once at each of the {corners}.',
          values: { corners: countQuantity(corners, ['corner', 'corners']) },
        };
  }
  const values = { every: givenLength(clipEvery), opening: fineLength(bend.opening, 'up') };
  return around === 'hole'
    ? {
        kind: 'tip',
        says: 'Around the hole the cut edges are too long: notch the seam allowance of the piping every {every}, {opening} wide, to just before the stitching.',
        values,
      }
    : {
        kind: 'tip',
        says: 'On the bend, clip the seam allowance of the piping every {every} to just before the stitching. Each clip opens by {opening} at the tightest place.',
        values,
      };
}
