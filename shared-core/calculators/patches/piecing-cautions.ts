import type { Note } from '../explanation';

/** For every page that sends somebody to the cutting mat and the iron. */
export const PIECING_CAUTIONS: readonly Note[] = [
  {
    kind: 'caution',
    says:
      'Rotary cutter: close the blade every time you put it down, cut away from yourself, ' +
      'keep the ruler hand flat and clear of the edge, and change a blunt blade. No pins on the mat.',
    values: {},
  },
  {
    kind: 'caution',
    says:
      'Iron: press on a heat-safe place with dry hands, stand it on its heel, keep the cord out of reach of children, ' +
      'and switch it off and pull the plug when you leave.',
    values: {},
  },
];
