import { failure, type Result, success } from '#core/result';
import type { ExactFraction } from './exact-fraction';
import type { LengthProblemCode } from './length-problem';
import { type LengthUnit, lengthUnitFromText } from './length-unit';
import { readTypedNumber, type TypedNumberProblem } from './typed-number';

/** One amount with its unit: `2 yd 9 in` has two. */
export interface LengthTerm {
  readonly amount: ExactFraction;
  readonly unit: LengthUnit;
}

export interface LengthTermProblem {
  readonly code: LengthProblemCode;
  /** Texts that would do, where the problem suggests any. */
  readonly expected: readonly string[];
}

const UNIT = /^ ?(?:[a-z]+\.?|''|["'])/;
const UNIT_EXAMPLES: readonly string[] = ['9 in', '9 yd', '9 ft', '9 mm', '9 cm', '9 m'];
const FAMILIES: readonly (readonly LengthUnit[])[] = [
  ['yd', 'ft', 'in'],
  ['m', 'cm', 'mm'],
];

/**
 * Reads text made plain by `normaliseTyped`: one amount, where a missing unit is `bareUnit`, or several that each say their
 * unit, going down in one family (yd, ft, in or m, cm, mm). Anything else on the line is a problem.
 */
export function readLengthTerms(
  typed: string,
  bareUnit: LengthUnit,
): Result<readonly LengthTerm[], LengthTermProblem> {
  const terms: LengthTerm[] = [];
  let rest = typed;
  do {
    const number = readTypedNumber(rest);
    if (!number.ok) return failure(lengthProblemOf(number.error));
    const word = UNIT.exec(number.value.rest)?.[0] ?? '';
    rest = number.value.rest.slice(word.length).trimStart();
    const unit = word === '' ? bareUnit : lengthUnitFromText(word.trimStart());
    if (unit === undefined) return failure({ code: 'unknown-unit', expected: UNIT_EXAMPLES });
    if (word === '' && (terms.length > 0 || rest !== '')) return failure(NOT_A_LENGTH);
    terms.push({ amount: number.value.amount, unit });
  } while (rest !== '');
  return isOneOrFalling(terms) ? success(terms) : failure(NOT_A_LENGTH);
}

const NOT_A_LENGTH: LengthTermProblem = { code: 'not-a-length', expected: [] };

function lengthProblemOf({ code, readings }: TypedNumberProblem): LengthTermProblem {
  return code === 'not-a-number' ? NOT_A_LENGTH : { code, expected: readings };
}

function isOneOrFalling(terms: readonly LengthTerm[]): boolean {
  if (terms.length === 1) return true;
  return FAMILIES.some((family) => {
    const ranks = terms.map((term) => family.indexOf(term.unit));
    return ranks.every((rank, index) => rank > (ranks[index - 1] ?? -1));
  });
}
