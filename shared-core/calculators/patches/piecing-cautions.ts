import { cautionNotes } from '../caution-notes';
import type { Note } from '../explanation';

/** For every page about cutting and piecing patches. */
export const PIECING_CAUTIONS: readonly Note[] = cautionNotes(
  'rotaryBlade',
  'machineNeedle',
  'pins',
  'iron',
  'usedBlades',
);
