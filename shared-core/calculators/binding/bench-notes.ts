import type { Note } from '../explanation';

/** Cautions and settings of the bench that several calculators show beside their answer. */
export const ROTARY_CAUTION: Note = {
  kind: 'caution',
  says: 'A rotary blade cuts fingers as it cuts fabric: close it whenever you put it down, cut away from yourself, keep your hand flat on the ruler and clear of its edge.',
  values: {},
};

export const IRON_CAUTION: Note = {
  kind: 'caution',
  says: 'Iron and steam burn: press on a heat-safe place, keep fingers off the seam you press, and switch the iron off when you leave it.',
  values: {},
};

export const HANDLE_BIAS_TIP: Note = {
  kind: 'tip',
  says: 'Bias stretches while you handle it: lift the iron instead of sliding it, and do not let a strip hang by its own weight.',
  values: {},
};
