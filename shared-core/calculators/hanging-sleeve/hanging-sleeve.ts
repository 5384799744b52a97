import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import { lengthFromInches } from '#core/units/length';
import type { Calculator } from '../calculator';
import { cautionNotes } from '../caution-notes';
import type { Figure, Note } from '../explanation';
import { fabricNeed } from '../needs';
import { outlineBounds } from '../outline/outline-measures';
import { countQuantity, givenLength, lengthDown, sizeQuantity } from '../quantities';
import { hangingSleeveDiagram } from './diagram';
import { type HangingSleeveInput, hangingSleeveFromProject, hangingSleeveInput, WIDE } from './input';
import { hangingSleeveSteps } from './steps';
import { type HangingSleeveDetails, planHangingSleeve, seamsOf } from './work';

/** A tube on the back for a rod: what to cut, where to sew it, and how long the rod is. */
export const hangingSleeve: Calculator<HangingSleeveInput, HangingSleeveDetails> = {
  name: 'hanging-sleeve',
  version: 1,
  title: 'Hanging sleeve',
  question: 'What do I cut for a hanging sleeve, and how long is the rod?',
  stageKinds: ['outer-binding', 'hand-finish'],
  isOccasional: true,
  input: hangingSleeveInput,
  fromProject: hangingSleeveFromProject,
  calculate(input) {
    const plan = planHangingSleeve(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [],
      explanation: hangingSleeveSteps(input, details),
      notes: notesOf(input, details),
      diagram: hangingSleeveDiagram(input, details),
      details,
    });
  },
  needs(input, { cutDepth, needed }) {
    const cost = seamsOf(input);
    const width = { fabricWidth: input.fabricWidth, extraPercent: input.safetyExtra };
    const strips = { strip: cutDepth, needed, cost: needed > cost ? cost : 0 };
    return [{ ...fabricNeed('Hanging sleeve', [], width), amount: { measure: 'strips', ...strips } }];
  },
  cuts: ({ fabricWidth, sleeves }, { cutDepth, cutLength, strips }) => {
    const fabric = { fabric: 'Hanging sleeve', length: cutDepth, mayTurn: true } as const;
    return strips === 1
      ? [{ ...fabric, width: cutLength, count: sleeves }]
      : [{ ...fabric, width: fabricWidth, count: strips }];
  },
  isCutLater: true,
};

function figuresOf(input: HangingSleeveInput, details: HangingSleeveDetails): readonly Figure[] {
  return [
    {
      label: input.sleeves === 1 ? 'Cut the sleeve' : 'Cut each sleeve',
      quantity: sizeQuantity(givenLength(details.cutDepth), givenLength(details.cutLength)),
    },
    { label: 'Finished length', quantity: lengthDown(details.length) },
    { label: 'Sew its long edges this far apart', quantity: lengthDown(details.sewnApart) },
    { label: 'Rod', quantity: lengthDown(details.rod) },
    { label: 'Strips across the fabric', quantity: countQuantity(details.strips, ['strip', 'strips']) },
    { label: 'Fabric to buy', quantity: fabricToBuy(input, details.fabric) },
  ];
}

function notesOf(input: HangingSleeveInput, details: HangingSleeveDetails): readonly Note[] {
  return [
    ...widthNotes(input, details),
    ...shapeNotes(input),
    tip(
      'Sewn in with the binding, the top of the sleeve needs no hand sewing. Otherwise sew both long edges down by hand, through the backing and batting only.',
    ),
    tip(
      'Hem both ends before you sew the tube. Let the front layer stand a little away from the back, so that the rod doesn’t show from the front.',
    ),
    ...cautionNotes('rotaryBlade', 'iron', 'handNeedle', 'pins'),
  ];
}

function widthNotes(input: HangingSleeveInput, { rod, width }: HangingSleeveDetails): readonly Note[] {
  const rodNote: Note = {
    kind: 'warning',
    says: 'A rod of {rod} sticks out past the quilt, which is {width} wide there.',
    values: { rod: lengthDown(rod), width: lengthDown(width) },
  };
  const wideNote: Note = {
    kind: 'tip',
    says: 'Over {wide} wide, shows ask for two sleeves, so that the rod can be held in the middle too.',
    values: { wide: givenLength(WIDE) },
  };
  const drop = outlineBounds(input.outline).length - input.down;
  const longNote: Note = {
    kind: 'tip',
    says: 'From the top of the sleeve to the lower edge it hangs {drop}. Ask the show: some hang nothing longer than {most}.',
    values: { drop: lengthDown(drop), most: givenLength(LONGEST_DROP) },
  };
  return [
    ...(rod > width ? [rodNote] : []),
    ...(width > WIDE && input.sleeves === 1 ? [wideNote] : []),
    ...(drop > LONGEST_DROP ? [longNote] : []),
  ];
}

const LONGEST_DROP = lengthFromInches(96);

function shapeNotes({ outline }: HangingSleeveInput): readonly Note[] {
  if (outline.shape === 'sides') {
    return [
      {
        kind: 'warning',
        says: 'Your list of sides doesn’t say how wide the quilt is at this height, so its full width is used. Measure there, and make the gaps wider to fit.',
        values: {},
      },
    ];
  }
  const isRound = outline.shape === 'circle' || outline.shape === 'ellipse';
  return isRound
    ? [
        tip(
          'The part above the sleeve can fold forward. Sew a small ring to the back at the top edge and hang it from a pin, or hang the quilt from three rings and no rod.',
        ),
      ]
    : [];
}

function tip(says: string): Note {
  return { kind: 'tip', says, values: {} };
}
