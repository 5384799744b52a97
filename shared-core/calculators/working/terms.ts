import type { Length } from '#core/units/length';
import type { Quantity, Rule, Term } from '../explanation';
import { givenLength } from '../quantities';

/** Short makers for the parts of a step of the working, shared by all calculators. */

/** A rule that follows from geometry or arithmetic. */
export function derived(says: string): Rule {
  return { kind: 'derived', says };
}

/** A rule that makers follow by custom. */
export function commonPractice(says: string): Rule {
  return { kind: 'common practice', says };
}

export function term(symbol: string, means: string, quantity: Quantity): Term {
  return { symbol, means, quantity };
}

/** A small length from the input, shown to 1/64 in or 0.1 mm. */
export function fineTerm(symbol: string, means: string, length: Length): Term {
  return term(symbol, means, givenLength(length, 'fine'));
}

/** A length from the input, shown as it was entered. */
export function givenTerm(symbol: string, means: string, length: Length): Term {
  return term(symbol, means, givenLength(length));
}
