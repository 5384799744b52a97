import { assertNever } from '#core/assert-never';
import type { PatchList } from '#core/domain/patch-list';
import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note, Table } from '#core/calculators/explanation';
import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { cordNeed, needsOfPatchList } from '#core/calculators/needs';
import {
  countQuantity,
  fineLength,
  givenLength,
  lengthNearest,
  lengthUp,
  sizeQuantity,
} from '#core/calculators/quantities';
import { slitClosureDiagram } from './diagram';
import { slitClosureHowTo } from './how-to';
import { type Closing, type SlitClosureInput, slitClosureFromProject, slitClosureInput } from './input';
import { slitClosureSteps } from './steps';
import { planSlitClosure, type SlitClosureDetails } from './work';

/** Ties, buttons or snaps along a slit: where each goes, what to cut for them, and when they are sewn. */
export const slitClosure: Calculator<SlitClosureInput, SlitClosureDetails> = {
  name: 'slit-closure',
  version: 1,
  title: 'Closing the slit',
  question: 'How do I close the slit: where do ties, buttons or snaps go?',
  stageKinds: ['outer-binding', 'inner-binding'],
  isOccasional: true,
  input: slitClosureInput,
  fromProject: slitClosureFromProject,
  calculate(input) {
    const plan = planSlitClosure(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [placesTable(input, details), slitClosureHowTo(input, details)],
      explanation: slitClosureSteps(input, details),
      notes: notesOf(input),
      diagram: slitClosureDiagram(input, details),
      details,
    });
  },
  needs: (input, details) => [
    ...needsOfPatchList(patchesOf(input, details), {
      fabricWidth: input.fabricWidth,
      safetyExtraPercent: input.safetyExtra,
    }),
    ...(details.parts.with === 'buttons-and-loops'
      ? [cordNeed('Cord for the loops', details.parts.cord)]
      : []),
  ],
  cuts: patchesOf,
  isCutLater: true,
};

/** Strips of a flap that are joined are cut across the whole fabric. */
function patchesOf({ fabricWidth }: SlitClosureInput, { parts, flap }: SlitClosureDetails): PatchList {
  const ties =
    parts.with === 'ties'
      ? [
          {
            fabric: 'Ties',
            width: parts.cutLength,
            length: parts.cutWidth,
            count: parts.ties,
            mayTurn: false,
          },
        ]
      : [];
  if (flap === null) return ties;
  const width = flap.strips === 1 ? flap.cutLength : fabricWidth;
  return [...ties, { fabric: 'Flap', width, length: flap.cutWidth, count: flap.strips, mayTurn: false }];
}

const NAMES: Readonly<Record<Closing['with'], readonly [string, string]>> = {
  ties: ['pair of ties', 'pairs of ties'],
  'buttons-and-loops': ['button', 'buttons'],
  'buttons-and-buttonholes': ['button', 'buttons'],
  snaps: ['snap', 'snaps'],
};

function figuresOf(input: SlitClosureInput, details: SlitClosureDetails): readonly Figure[] {
  const { places, pitch, flap } = details;
  return [
    { label: 'Along the slit', quantity: countQuantity(places, NAMES[input.closing.with]) },
    ...(places === 1 ? [] : [{ label: 'From one to the next', quantity: lengthNearest(pitch) }]),
    ...partFigures(input, details),
    ...(flap === null
      ? []
      : [
          {
            label: 'Cut the flap',
            quantity: sizeQuantity(givenLength(flap.cutWidth), givenLength(flap.cutLength)),
          },
          { label: 'Fabric for the flap, to buy', quantity: fabricToBuy(input, flap.fabric) },
        ]),
  ];
}

function partFigures(input: SlitClosureInput, { parts }: SlitClosureDetails): readonly Figure[] {
  switch (parts.with) {
    case 'ties':
      return [
        {
          label: 'Cut each tie',
          quantity: sizeQuantity(givenLength(parts.cutWidth), givenLength(parts.cutLength)),
        },
        { label: 'Ties to cut', quantity: countQuantity(parts.ties, ['tie', 'ties']) },
        { label: 'Fabric for the ties, to buy', quantity: fabricToBuy(input, parts.fabric) },
      ];
    case 'buttons-and-loops':
      return [
        { label: 'Cut each loop', quantity: givenLength(parts.cutLength) },
        { label: 'Sew each button this far from its edge', quantity: lengthNearest(parts.buttonIn) },
        { label: 'Cord or elastic for the loops', quantity: lengthUp(parts.cord) },
      ];
    case 'buttons-and-buttonholes':
      return [{ label: 'Buttonhole', quantity: fineLength(parts.buttonhole, 'up') }];
    case 'snaps':
      return [];
    default:
      return assertNever(parts);
  }
}

/** Each mark is rounded by itself, so the last is as close to its place as the first. */
function placesTable({ cutStep }: SlitClosureInput, { positions }: SlitClosureDetails): Table {
  return {
    title: 'Places along the slit',
    columns: ['Place', 'From the outer edge'],
    rows: positions.map((position, index) => [
      countQuantity(index + 1, ['', '']),
      lengthNearest(position, cutStep),
    ]),
  };
}

function notesOf({ closing }: SlitClosureInput): readonly Note[] {
  return [
    tip(
      'Decide this before you turn the binding: ties and loops are caught in its seam, buttons and snaps are sewn on later.',
    ),
    tip('Mark both sides with the same tape laid from the outer edge, so that each pair meets.'),
    ...(closing.with === 'ties'
      ? []
      : [tip('Small children put buttons and snaps in their mouths. Choose ties where a child can reach.')]),
    ...cautionNotes('rotaryBlade', 'iron', 'machineNeedle', 'handNeedle', 'pins'),
  ];
}

function tip(says: string): Note {
  return { kind: 'tip', says, values: {} };
}
