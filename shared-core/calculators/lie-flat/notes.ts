import type { Note } from '../explanation';
import { PIECING_CAUTIONS } from '../patches/piecing-cautions';
import { countQuantity, degreesQuantity } from '../quantities';
import type { LieFlatInput } from './input';
import { type LieFlatWork, wedgesThatFit } from './work';

export function lieFlatNotes(input: LieFlatInput, work: LieFlatWork): readonly Note[] {
  return [
    ...PIECING_CAUTIONS,
    ...countNote(input, work),
    ...agreementNote(work),
    testNote(input, work),
    ...TIPS,
  ];
}

const TIPS: readonly Note[] = [
  {
    kind: 'tip',
    says: 'A seam that is off by the same amount from end to end makes the ring smaller or larger, and the ring still lies flat. A seam that widens toward one end makes it cup or ruffle.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'The legs of wedges are partly bias. Press them without steam and without pushing the iron: a leg that stretches ruffles too.',
    values: {},
  },
];

function wedgesQuantity(count: number) {
  return countQuantity(count, ['wedge', 'wedges']);
}

/** When another number of the same wedges comes nearer to a full circle. */
function countNote({ wedges }: LieFlatInput, { missing }: LieFlatWork): readonly Note[] {
  const fit = wedgesThatFit(wedges, missing);
  if (fit === wedges) return [];
  const change = missing < 0 ? 'Leave out {change}' : 'Add {change}';
  return [
    {
      kind: 'warning',
      says: `{wedges} like these make {sum} in all. ${change}: {fit} come nearest to 360°.`,
      values: {
        wedges: wedgesQuantity(wedges),
        sum: degreesQuantity(360 - (missing * 180) / Math.PI),
        change: wedgesQuantity(Math.abs(fit - wedges)),
        fit: wedgesQuantity(fit),
      },
    },
  ];
}

/** When the test and what was measured on seams and wedges point in opposite directions. */
function agreementNote({ halfMeasured, halfExpected }: LieFlatWork): readonly Note[] {
  if (halfMeasured === null || halfMeasured * halfExpected >= 0) return [];
  return [
    {
      kind: 'warning',
      says: 'By the test the half is off to one side, and by its seams and its cut to the other. Measure both again before you change anything.',
      values: {},
    },
  ];
}

function testNote({ wedges }: LieFlatInput, { halfWedges }: LieFlatWork): Note {
  const half = wedgesQuantity(halfWedges);
  if (2 * halfWedges === wedges)
    return {
      kind: 'tip',
      says: 'Test both halves of {half} before the last two seams: lay the cut edge of one open leg along a straight line. The cut edge of the other must lie on the same line.',
      values: { half },
    };
  return {
    kind: 'tip',
    says: 'Test the half of {half} before the last two seams: draw two lines that meet at {angle}, and lay the cut edge of one open leg along the first. The cut edge of the other must lie on the second. The other half has one wedge more.',
    values: { half, angle: degreesQuantity((360 * halfWedges) / wedges) },
  };
}
