import type { Note } from '../explanation';

export const HANDLE_BIAS_TIP: Note = {
  kind: 'tip',
  says: 'Bias stretches as you handle it: lift the iron instead of sliding it, and don’t let a strip hang by its own weight.',
  values: {},
};
