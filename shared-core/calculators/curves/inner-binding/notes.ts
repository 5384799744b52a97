import { HANDLE_BIAS_TIP, IRON_CAUTION, ROTARY_CAUTION } from '#core/calculators/binding/bench-notes';
import type { Note } from '#core/calculators/explanation';
import { givenLength, lengthDown, lengthUp, percentQuantity } from '#core/calculators/quantities';
import { lengthFromInches } from '#core/units/length';
import type { InnerBindingInput } from './input';
import type { InnerBindingDetails } from './work';
import { greatestStrain } from '../strain';

export function innerBindingNotes(asked: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  return [
    ...fitNotes(asked, details),
    ...coverNotes(asked, details),
    ...jointNotes(asked, details),
    ...(asked.hasSlit ? [] : [CLOSING]),
    ...PRACTICE,
    ...CARE,
  ];
}

function fitNotes(asked: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  const strain = percentQuantity(100 * greatestStrain(details.strains));
  if (asked.grain === 'straight' && details.verdict !== 'comfortable') {
    return [
      {
        kind: 'warning',
        says: 'Straight grain does not go round this ring: the strip has to give by {strain} and straight grain gives about {limit}. Cut it on the bias.',
        values: { strain, limit: percentQuantity(asked.straightLimit) },
      },
    ];
  }
  if (details.verdict === 'comfortable' || details.verdict === 'with care') return [];
  const tooTight: Note = {
    kind: 'warning',
    says: 'The strip has to give by {strain}: {verdict}. With this seam the ring takes a strip of {widest} at most; this strip asks for a hole of {across} or more.',
    values: {
      strain,
      verdict: { kind: 'words', text: details.verdict },
      widest: lengthDown(details.widestStrip, asked.cutStep),
      across: lengthUp(2 * details.smallestRadius, asked.cutStep),
    },
  };
  return [tooTight, narrowerNote(details)];
}

function narrowerNote({ widestFront }: InnerBindingDetails): Note {
  if (widestFront <= 0) {
    return {
      kind: 'warning',
      says: 'No strip that wraps this thickness goes round a ring so small; make the hole larger or face its edge instead.',
      values: {},
    };
  }
  return {
    kind: 'tip',
    says: 'A narrower binding goes: sew a seam of {front} at most and cut the strip to wrap that. A single fold lies as far out as a double one but is one layer less to bend.',
    values: { front: lengthDown(widestFront) },
  };
}

function coverNotes(asked: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  if (details.cover >= 0) return [];
  return [
    {
      kind: 'warning',
      says: 'With a seam of {seam} this strip stops {short} before the stitching on the back. It wants a strip of {strip}, or a narrower seam.',
      values: {
        seam: givenLength(asked.seamAllowance),
        short: lengthUp(-details.cover),
        strip: lengthUp(details.stripForSeam, asked.cutStep),
      },
    },
  ];
}

function jointNotes(asked: InnerBindingInput, details: InnerBindingDetails): readonly Note[] {
  if (asked.hasSlit || details.hasRoomForDiagonal) return [];
  const values = { room: givenLength(asked.diagonalRoom) };
  return asked.joint === 'diagonal'
    ? [
        {
          kind: 'warning',
          says: 'A hole under {room} across leaves no room to sew a diagonal joint: fold the start, overlap and tuck the end in.',
          values,
        },
      ]
    : [{ kind: 'tip', says: 'Under {room} across, tuck and overlap is the joint that can be sewn.', values }];
}

/** A fact of the trade, all of them common practice. */
const CLOSING: Note = {
  kind: 'tip',
  says: 'Common practice: fold the start of the strip under by {half}, let the end overlap it by {half}, and let the last stitches cover the first by {half}.',
  values: { half: givenLength(lengthFromInches(1 / 2)) },
};

/** Stitch lengths and blades are sold in millimeters everywhere, so they are not turned into the reader's units. */
const PRACTICE: readonly Note[] = [
  {
    kind: 'tip',
    says: 'Common practice: a stitch 2 to 2.5 mm long for the ring, and a stay-stitch on the seam line before the hole is cut.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Common practice: a small rotary blade, 28 mm, follows a tight curve where a large one does not.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Common practice: bias for a tight ring, never straight grain; sew slowly with the needle down when you stop to turn.',
    values: {},
  },
];

const CARE: readonly Note[] = [
  {
    kind: 'warning',
    says: 'The hole cannot be put back: try diameter, strip and joint on a practice piece of the same thickness first.',
    values: {},
  },
  HANDLE_BIAS_TIP,
  ROTARY_CAUTION,
  IRON_CAUTION,
  {
    kind: 'caution',
    says: 'Pins and needles go astray in small rings: count them in and out, keep hands clear of the moving needle, and keep them from children and pets.',
    values: {},
  },
];
