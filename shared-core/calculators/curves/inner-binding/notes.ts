import { HANDLE_BIAS_TIP } from '#core/calculators/binding/bench-notes';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Note } from '#core/calculators/explanation';
import { fineLength, givenLength, lengthDown, lengthUp, percentQuantity } from '#core/calculators/quantities';
import { lengthFromInches } from '#core/units/length';
import { frontWidthOf } from '#core/calculators/binding/strip-width';
import type { InnerBindingInput } from './input';
import type { InnerBindingDetails } from './work';
import { greatestStrain } from '../strain';

export function innerBindingNotes(input: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  return [
    ...fitNotes(input, details),
    ...coverNotes(input, details),
    ...joinNotes(input, details),
    ...(input.hasSlit ? [] : [CLOSING]),
    ...PRACTICE,
    ...CARE,
  ];
}

function fitNotes(input: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  const strain = percentQuantity(100 * greatestStrain(details.strains));
  if (input.grain === 'straight' && details.verdict !== 'comfortable') {
    return [
      {
        kind: 'warning',
        says: 'A straight-grain strip won’t go around this hole: it has to stretch or ease by {strain}, and straight grain gives about {limit}. Cut it on the bias.',
        values: { strain, limit: percentQuantity(input.straightLimit) },
      },
    ];
  }
  if (details.verdict === 'comfortable' || details.verdict === 'with care') return [];
  const tooTight: Note = {
    kind: 'warning',
    says: 'The strip has to stretch or ease by {strain}: {verdict}. With this seam allowance, use a strip {widest} wide or narrower, or a hole {across} or larger.',
    values: {
      strain,
      verdict: { kind: 'words', text: details.verdict },
      widest: lengthDown(details.widestStrip, input.cutStep),
      across: lengthUp(2 * details.smallestRadius, input.cutStep),
    },
  };
  return [tooTight, narrowerNote(details)];
}

function narrowerNote({ widestFront }: InnerBindingDetails): Note {
  if (widestFront <= 0) {
    return {
      kind: 'warning',
      says: 'No strip that wraps this thickness goes around such a small hole. Make the hole larger, or face its edge instead.',
      values: {},
    };
  }
  return {
    kind: 'tip',
    says: 'A narrower binding works: sew a seam of {front} or less and cut a strip to match. A single fold is one layer less to bend than a double fold.',
    values: { front: fineLength(widestFront, 'down') },
  };
}

/** A wider strip is only suggested if it goes around the hole. */
function coverNotes(input: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  if (details.cover >= 0) return [];
  const values = { seam: givenLength(input.seamAllowance), short: fineLength(-details.cover, 'up') };
  const tooShort = 'With a {seam} seam, this strip ends {short} short of the stitching on the back.';
  if (details.stripForSeam <= details.widestStrip) {
    const strip = lengthUp(details.stripForSeam, input.cutStep);
    const says = `${tooShort} Use a {strip} strip or a narrower seam.`;
    return [{ kind: 'warning', says, values: { ...values, strip } }];
  }
  const thickness = input.quiltThickness;
  const front = frontWidthOf(input.fold, input.stripWidth, { thickness, cover: input.backCover });
  const wider = 'A wider strip would not go around this hole.';
  return front > 0
    ? [
        {
          kind: 'warning',
          says: `${tooShort} ${wider} Sew a seam of {front} or less.`,
          values: { ...values, front: fineLength(front, 'down') },
        },
      ]
    : [{ kind: 'warning', says: `${tooShort} ${wider} Make the hole larger.`, values }];
}

function joinNotes(input: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  if (input.hasSlit || details.hasRoomForDiagonal) return [];
  const values = { room: givenLength(input.diagonalRoom) };
  return input.join === 'diagonal'
    ? [
        {
          kind: 'warning',
          says: 'A hole under {room} leaves no room to sew a diagonal join. Fold the start, overlap the ends and tuck the end in.',
          values,
        },
      ]
    : [{ kind: 'tip', says: 'In a hole under {room}, the ends can only be overlapped and tucked.', values }];
}

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
    says: 'Common practice: use bias for a tight curve, never straight grain. Sew slowly, and stop with the needle down when you turn.',
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
  ...cautionNotes('rotaryBlade', 'iron', 'pins', 'machineNeedle', 'usedBlades'),
];
