import { lengthFromInches as inches } from '#core/units/length';
import type { Note } from '#core/calculators/explanation';
import { givenLength } from '#core/calculators/quantities';

/** The errors and the piece for which it was counted, by simulated readings, how many a check misses. */
const COUNTED = {
  least: givenLength(inches(1 / 2), 'fine'),
  most: givenLength(inches(1)),
  size: givenLength(inches(48)),
};

const FIRST = 'On a piece {size} across, of 100 single errors of {least} to {most}, this check misses';

/** What the check of a way cannot see: how many it misses, as the end of a sentence. */
export function unseenNote(misses: string): Note {
  return { kind: 'tip', says: `${FIRST} ${misses}`, values: COUNTED };
}

/** The same where a long, narrow piece is worse off: how many it misses there, and what to do about it. */
export function unseenWhereNarrow(misses: string, narrow: string): Note {
  return {
    kind: 'tip',
    says: `${FIRST} ${misses} If it is long and narrow, {from} to {to} by {size}, it misses about ${narrow}`,
    values: { ...COUNTED, from: givenLength(inches(6)), to: givenLength(inches(12)) },
  };
}
