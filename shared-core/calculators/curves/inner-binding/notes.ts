import { HANDLE_BIAS_TIP, ONE_LAYER_TIP } from '#core/calculators/binding/bench-notes';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Note } from '#core/calculators/explanation';
import { givenLength } from '#core/calculators/quantities';
import { lengthFromInches } from '#core/units/length';
import type { InnerBindingInput } from './input';
import { curveOf, type InnerBindingDetails } from './work';
import { limitsFromInputs } from '../curve-fields';
import { changeNotes, INSIDE_HANDLING, standsUpNote, wanderNote } from '../curve-notes';

export function innerBindingNotes(input: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  return [
    ...changeNotes({
      curve: curveOf(input),
      cover: input.backCover,
      limits: limitsFromInputs(input),
      cutStep: input.cutStep,
    }),
    standsUpNote(details.strains),
    INSIDE_HANDLING,
    ...joinNotes(input, details),
    wanderNote(input.seamAllowance),
    ...(details.legs > 0 && details.legStrip === 0 ? [LEGS_MAY_BE_STRAIGHT] : []),
    ...(input.hasSlit ? [] : [CLOSING]),
    ...PRACTICE,
    ...CARE,
  ];
}

/** Small rounds are closed with a diagonal join too, sewn to a loop first (common practice). */
function joinNotes(input: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  if (input.hasSlit || details.hasRoomForDiagonal) return [];
  const values = { room: givenLength(input.diagonalRoom) };
  return [
    {
      kind: 'tip',
      says:
        input.join === 'diagonal'
          ? 'In a hole under {room}, a diagonal join is hard to sew in place. Sew the strip into a loop of the seam line’s length first, or fold the start, overlap the ends and tuck the end in.'
          : 'In a hole under {room}, overlapping and tucking the ends is the easy way. A diagonal join goes if you sew the strip into a loop of the seam line’s length first.',
      values,
    },
  ];
}

/** Common practice. */
const LEGS_MAY_BE_STRAIGHT: Note = {
  kind: 'tip',
  says: 'The sides of the slit are straight, so their strips may be cut on the straight grain. Only the hole takes bias.',
  values: {},
};

/** Common practice in the trade. */
const CLOSING: Note = {
  kind: 'tip',
  says: 'Common practice: fold the start of the strip under by {half}, overlap it with the end by {half}, and sew the last {half} over the first stitches.',
  values: { half: givenLength(lengthFromInches(1 / 2)) },
};

/** Stitch lengths and blades are given in millimeters everywhere, so these are not converted to the reader's units. */
const PRACTICE: readonly Note[] = [
  {
    kind: 'tip',
    says: 'Common practice: use a 2 to 2.5 mm stitch around the hole, and stay-stitch just inside the seam line, between it and the cut, before you cut it.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Common practice: a small 28 mm rotary blade follows a tight curve better than a large one.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Common practice: press the strip into a curve with steam before you sew it on, and zigzag the seam allowance flat before you turn it.',
    values: {},
  },
];

const CARE: readonly Note[] = [
  {
    kind: 'warning',
    says: 'A hole can’t be undone. Try the diameter, strip and join on a scrap of the same thickness first.',
    values: {},
  },
  HANDLE_BIAS_TIP,
  ONE_LAYER_TIP,
  ...cautionNotes('rotaryBlade', 'iron', 'pins', 'machineNeedle', 'usedBlades'),
];
