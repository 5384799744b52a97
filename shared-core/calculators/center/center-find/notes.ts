import type { Length } from '#core/units/length';
import type { Note } from '#core/calculators/explanation';
import { cautionNotes } from '#core/calculators/caution-notes';
import { countQuantity, fineLength, givenLength, wordsQuantity } from '#core/calculators/quantities';
import type { SoleChange } from './closure';
import { apartOf, type Found } from './found';

/** What to do if the lengths or the methods disagree, how to measure, and the cautions of cutting. */
export function centerFindNotes(found: Found, accuracy: Length): readonly Note[] {
  return [
    ...closureNotes(found, accuracy),
    ...apartNotes(found, accuracy),
    ...found.notes,
    {
      kind: 'warning',
      says: 'A hole can’t be undone. Find the center in two ways before you cut.',
      values: {},
    },
    ...cautionNotes('rotaryBlade', 'scissors', 'pins', 'usedBlades'),
  ];
}

function closureNotes(found: Found, accuracy: Length): readonly Note[] {
  const { error, limit } = found.closure;
  if (error === null || error <= limit) return [];
  const again: Note = {
    kind: 'warning',
    says: 'Your lengths do not fit together: one of them alone would have to change by at least {misfit}. Reading a tape to the nearest {accuracy} seldom adds up to more than {limit}. One is wrong, or several are a little off. Measure again before you cut.',
    values: {
      misfit: fineLength(error, 'nearest'),
      accuracy: givenLength(accuracy, 'fine'),
      limit: fineLength(limit, 'nearest'),
    },
  };
  return [again, suspectNote(found)];
}

/** Any single length can be the wrong one; this names those that leave the best shape. */
function suspectNote({ closure: { suspects }, lengths }: Found): Note {
  const [first, second, third] = suspects;
  if (first === undefined || suspects.length > MOST_NAMED) {
    return {
      kind: 'tip',
      says: 'No length stands out: {count} are equally suspect.',
      values: { count: countQuantity(suspects.length, ['length', 'lengths']) },
    };
  }
  const wordsOf = ({ index }: SoleChange) => wordsQuantity(lengths[index]?.words ?? '');
  const one = { first: wordsOf(first), fits: fineLength(first.fits, 'nearest') };
  if (second === undefined) {
    return {
      kind: 'tip',
      says: 'Measure this one first: {first}. At {fits} it would fit the others best. If it was right, measure the others again.',
      values: one,
    };
  }
  const two = { ...one, second: wordsOf(second), other: fineLength(second.fits, 'nearest') };
  if (third === undefined) {
    return {
      kind: 'tip',
      says: 'Two lengths are equally suspect: {first}, which would fit at {fits}, and {second}, which would fit at {other}. Measure these two first.',
      values: two,
    };
  }
  return {
    kind: 'tip',
    says: 'Three lengths are equally suspect: {first}, {second} and {third}. Measure these three first.',
    values: { first: two.first, second: two.second, third: wordsOf(third) },
  };
}

/** More lengths than these are no help to name. */
const MOST_NAMED = 3;

function apartNotes(found: Found, accuracy: Length): readonly Note[] {
  const apart = apartOf(found);
  if (apart <= accuracy) return [];
  return [
    {
      kind: 'warning',
      says: 'The methods give centers that are {apart} apart. Decide which one the eye will follow, and mark only that one.',
      values: { apart: fineLength(apart, 'up') },
    },
  ];
}
