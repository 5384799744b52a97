import type { Note } from '../explanation';

export const HANDLE_BIAS_TIP: Note = {
  kind: 'tip',
  says: 'Bias stretches as you handle it: lift the iron instead of sliding it, and don’t let a strip hang by its own weight.',
  values: {},
};

/** Common practice: a folded piece gives strips in two directions. */
export const ONE_LAYER_TIP: Note = {
  kind: 'tip',
  says: 'Stripes and one-way prints: cut bias strips from a single layer. Folded fabric gives strips that slant in two directions.',
  values: {},
};
