import { cautionNotes } from '../caution-notes';
import type { Note } from '../explanation';

/** What to know before you cut a hole in a finished project. */
export const CENTER_CUT_NOTES: readonly Note[] = [
  {
    kind: 'warning',
    says: 'A hole can’t be undone. Find the center by two methods, and try the diameter on a scrap first.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Cut a little inside the line first, then try the project where it will be used. A hole can be made larger, never smaller.',
    values: {},
  },
  {
    kind: 'tip',
    says: 'Before you cut, stay-stitch just inside the seam line, between it and the cut. Unfold the project and cut a single layer: folded layers shift.',
    values: {},
  },
  ...cautionNotes('rotaryBlade', 'scissors', 'pins', 'usedBlades'),
];
