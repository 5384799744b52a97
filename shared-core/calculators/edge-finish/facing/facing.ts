import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import { HANDLE_BIAS_TIP } from '#core/calculators/binding/bench-notes';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note } from '#core/calculators/explanation';
import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { fabricNeed } from '#core/calculators/needs';
import {
  countQuantity,
  fineLength,
  givenLength,
  lengthDown,
  lengthUp,
  percentQuantity,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { edgeStripsCuts, edgeStripsNeed, stripsOf } from '../edge-strips';
import { facingDiagram } from './diagram';
import { facingHowTo } from './how-to';
import { type FacingInput, facingFromProject, facingInput } from './input';
import { facingSteps } from './steps';
import { type FacingDetails, patchAsLaid, planFacing } from './work';

const NAME = 'Facing';

/** An edge without binding: fabric sewn to it and turned wholly to the back. */
export const facing: Calculator<FacingInput, FacingDetails> = {
  name: 'facing',
  version: 1,
  title: 'Facing',
  question: 'How do I finish a hole or an edge with a facing instead of a binding?',
  stageKinds: ['inner-binding', 'outer-binding'],
  isOccasional: true,
  input: facingInput,
  fromProject: facingFromProject,
  calculate(input) {
    const plan = planFacing(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [facingHowTo(input, details)],
      explanation: facingSteps(input, details),
      notes: notesOf(input, details),
      diagram: facingDiagram(input, details),
      details,
    });
  },
  needs(input, { patch, strips, curve }) {
    if (strips !== null)
      return [edgeStripsNeed(NAME, { ...input, grain: curve === null ? 'straight' : 'bias' }, strips)];
    const from = { fabricWidth: input.fabricWidth, extraPercent: input.safetyExtra };
    if (patch === null) return [];
    return [fabricNeed(NAME, [{ ...patchAsLaid(patch, input.fabricWidth), count: 1, mayTurn: true }], from)];
  },
  cuts({ fabricWidth }, { patch, strips }) {
    if (strips !== null) return edgeStripsCuts(NAME, fabricWidth, strips);
    if (patch === null) return [];
    return [{ fabric: NAME, ...patchAsLaid(patch, fabricWidth), count: 1, mayTurn: true }];
  },
  isCutLater: true,
};

function figuresOf(input: FacingInput, details: FacingDetails): readonly Figure[] {
  const { patch, strips, curve, give } = details;
  const opening: readonly Figure[] =
    input.around === 'hole' && input.hole !== null
      ? [{ label: 'Opening, across', quantity: lengthUp(input.hole.diameter + 2 * input.seamAllowance) }]
      : [];
  const strip: readonly Figure[] =
    strips === null
      ? []
      : [
          { label: 'Strip width', quantity: givenLength(strips.strip) },
          { label: 'Strip, in all', quantity: lengthUp(strips.needed) },
          { label: 'Strips', quantity: countQuantity(stripsOf(strips), ['strip', 'strips']) },
        ];
  const turned: readonly Figure[] =
    give === null
      ? []
      : [
          { label: 'Verdict', quantity: wordsQuantity(give.verdict) },
          {
            label: 'The strip has to give, where it is sewn down',
            quantity: percentQuantity(100 * give.share),
          },
        ];
  const clips: readonly Figure[] =
    curve === null
      ? []
      : [
          {
            label: input.around === 'hole' ? 'Clips' : 'Notches',
            quantity: countQuantity(curve.clips, ['cut', 'cuts'], 'up'),
          },
          {
            label: input.around === 'hole' ? 'A clip opens by' : 'A notch is this wide',
            quantity: fineLength(curve.opening, 'up'),
          },
        ];
  return [
    ...(patch === null
      ? []
      : [
          {
            label: 'Patch to cut',
            quantity: sizeQuantity(givenLength(patch.width), givenLength(patch.length)),
          },
        ]),
    ...strip,
    ...turned,
    ...opening,
    { label: 'Fabric to buy', quantity: fabricToBuy(input, details.fabric) },
    { label: 'Fabric for the facing', quantity: lengthUp(details.fabric) },
    ...clips,
  ];
}

function notesOf(input: FacingInput, { give, curve, strips }: FacingDetails): readonly Note[] {
  return [
    ...(give !== null && curve !== null && give.share > input.hardLimit / 100
      ? [tooWide(input, curve.radius)]
      : []),
    ...(input.around === 'hole' && input.hole !== null ? [openingTip(input, input.hole.diameter)] : []),
    ...((strips?.bias ?? null) === null ? [] : [HANDLE_BIAS_TIP]),
    ...cautionNotes('rotaryBlade', 'scissors', 'iron', 'machineNeedle', 'handNeedle', 'pins'),
  ];
}

function tooWide({ hardLimit, around }: FacingInput, radius: number): Note {
  const does = around === 'hole' ? 'stretch' : 'be eased in';
  return {
    kind: 'warning',
    says: `A strip this wide has to ${does} more than bias gives. Make the facing at most {widest} wide, or cut it shaped.`,
    values: { widest: lengthDown((radius * hardLimit) / 100) },
  };
}

/** A bound hole keeps its cut size; a faced one grows by its seam. */
function openingTip({ seamAllowance }: FacingInput, diameter: number): Note {
  return {
    kind: 'tip',
    says: 'A faced hole opens {more} wider than it is cut. For the opening of a bound hole of {hole}, draw the stitching {hole} across and cut inside it.',
    values: { more: lengthUp(2 * seamAllowance), hole: lengthUp(diameter) },
  };
}
