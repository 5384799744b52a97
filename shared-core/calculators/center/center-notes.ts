import { ROTARY_CAUTION } from '../binding/bench-notes';
import type { Note } from '../explanation';

/** What to know before a hole is cut in a finished piece. */
export const CENTER_CUT_NOTES: readonly Note[] = [
  {
    kind: 'warning',
    says: 'A hole in a finished piece cannot be put back: measure the center twice, in two ways, and try the diameter on a practice piece first.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Cut a little inside the line first and lay the piece in its place: a hole can be made larger, never smaller.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Stay-stitch on the seam line before you cut, and cut one layer of a folded piece at a time: folded layers shift.',
    values: {},
  },
  ROTARY_CAUTION,
];
