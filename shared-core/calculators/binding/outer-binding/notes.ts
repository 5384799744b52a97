import { cautionNotes } from '#core/calculators/caution-notes';
import type { Note } from '#core/calculators/explanation';
import { outlineCornerAngles } from '#core/calculators/outline/outline-measures';
import {
  degreesQuantity,
  fineLength,
  givenLength,
  lengthDown,
  lengthUp,
  percentQuantity,
} from '#core/calculators/quantities';
import { lengthFromInches } from '#core/units/length';
import { HANDLE_BIAS_TIP, ONE_LAYER_TIP } from '../bench-notes';
import type { OuterBindingInput } from './input';
import type { OuterBindingDetails } from './work';

export function outerBindingNotes(input: OuterBindingInput, details: OuterBindingDetails): readonly Note[] {
  const isSlitElsewhere = input.hasSlit && input.slitBoundWith === 'hole';
  return [
    coverNote(input, details),
    ...biasNotes(details),
    ...cornerNotes(input),
    ...BEFORE_AND_START,
    ...(input.hasSlit && input.slitBoundWith !== 'outside-and-hole' ? [ALL_IN_ONE] : []),
    ...(isSlitElsewhere ? [SLIT_NOT_COUNTED] : []),
    ...cautionNotes('rotaryBlade', 'iron', 'pins'),
  ];
}

/** Finer than this no seam can be set. */
const LEAST_DIFFERENCE = lengthFromInches(1 / 64);

/** Common practice in the trade. */
const BEFORE_AND_START: readonly Note[] = [
  {
    kind: 'tip',
    says: 'Common practice: square up the corners, measure through the middle and along both diagonals, then baste {least} to {most} inside the edge all around before you bind.',
    values: {
      least: givenLength(lengthFromInches(1 / 8)),
      most: givenLength(lengthFromInches(3 / 16), 'fine'),
    },
  },
  {
    kind: 'tip',
    says: 'Common practice: start in the middle of a side. Lay the strip all around first, so that no join meets a corner.',
    values: {},
  },
];

const ALL_IN_ONE: Note = {
  kind: 'tip',
  says: 'Outside, slit and hole can be bound in one: cut slit and hole first, and bind the slit with the outside and the hole.',
  values: {},
};

const SLIT_NOT_COUNTED: Note = {
  kind: 'tip',
  says: 'The slit is not counted here, because it is bound with the hole.',
  values: {},
};

const AROUND_HOLE: Note = {
  kind: 'tip',
  says: 'That bend is the hole. “Binding around a curve” says whether a strip this wide goes around it.',
  values: {},
};

function biasNotes({ bend }: OuterBindingDetails): readonly Note[] {
  if (bend === null) return [];
  return [
    {
      kind: 'tip',
      says: 'A curved edge takes bias, whatever its size. At the tightest bend, the turned strip stretches or eases by {strain}.',
      values: { strain: percentQuantity(100 * bend.strain) },
    },
    ...(bend.side === 'inside' ? [AROUND_HOLE] : []),
    HANDLE_BIAS_TIP,
    ONE_LAYER_TIP,
  ];
}

/** The angles of a hexagon and an octagon, through the quilt. */
function cornerNotes(input: OuterBindingInput): readonly Note[] {
  const [angle] = outlineCornerAngles(input.outline);
  if (angle === undefined || Math.abs(angle - 90) < 1) return [];
  return [
    {
      kind: 'tip',
      says: 'Common practice: at a corner of {angle}, stop where the two seam lines cross and fold the strip in line with the next edge, not at 45°.',
      values: { angle: degreesQuantity(angle) },
    },
  ];
}

function coverNote(input: OuterBindingInput, { cover, frontWidth, stripForSeam }: OuterBindingDetails): Note {
  const seam = givenLength(input.seamAllowance);
  if (cover < 0) {
    return {
      kind: 'warning',
      says: 'With a seam allowance of {seam}, the fold stops {short} before the stitching on the back. Use a narrower seam or a strip of {strip}.',
      values: { seam, short: lengthUp(-cover), strip: lengthUp(stripForSeam, input.cutStep) },
    };
  }
  const values = { seam, cover: lengthDown(cover) };
  const reach = 'With a seam allowance of {seam}, the fold passes the stitching on the back by {cover}';
  if (frontWidth - input.seamAllowance > LEAST_DIFFERENCE) {
    return {
      kind: 'tip',
      says: `${reach}. This strip would fill a seam of {front}; a strip of {strip} fits your seam.`,
      values: {
        ...values,
        front: fineLength(frontWidth, 'down'),
        strip: lengthUp(stripForSeam, input.cutStep),
      },
    };
  }
  if (frontWidth < input.seamAllowance) {
    return { kind: 'tip', says: `${reach}, which is less cover than you asked for.`, values };
  }
  return { kind: 'tip', says: `${reach}: this strip fits this seam.`, values };
}
