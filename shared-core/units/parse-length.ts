import { failure, type Result, success } from '#core/result';
import {
  type ExactFraction,
  fractionAdd,
  fractionFromDecimal,
  fractionTimes,
  fractionToNearest,
} from './exact-fraction';
import { type Length, lengthFromUnits, MAX_LENGTH_UNITS } from './length';
import type { LengthProblem, LengthProblemCode } from './length-problem';
import { type LengthTerm, readLengthTerms } from './length-terms';
import { type LengthUnit, UNITS_PER } from './length-unit';
import { clipRead, MAX_TYPED_CHARACTERS, normaliseTyped } from './typed-text';

/**
 * Reads a length that is not negative; a number without a unit is in `bareUnit`. The value is the nearest 1/320 mm, so
 * sixty-fourths of an inch and tenths of a millimeter are exact and anything else (1/3 in) is off by at most 1/640 mm; a
 * value that would round away to nothing is a problem instead.
 */
export function parseLength(text: string, bareUnit: LengthUnit): Result<Length, LengthProblem> {
  const length = parseSignedLength(text, bareUnit);
  const sign = /^[+-]/.exec(normaliseTyped(text.slice(0, MAX_TYPED_CHARACTERS)))?.[0];
  if (!length.ok || sign === undefined) return length;
  const code = sign === '-' ? 'negative' : 'not-a-length';
  return failure({ code, read: clipRead(text), expected: EXAMPLES[bareUnit] });
}

/** The same, with a leading plus or minus sign allowed: for ease and corrections. */
export function parseSignedLength(text: string, bareUnit: LengthUnit): Result<Length, LengthProblem> {
  const problem = (code: LengthProblemCode, expected: readonly string[] = []) =>
    failure({ code, read: clipRead(text), expected: expected.length > 0 ? expected : EXAMPLES[bareUnit] });
  if (text.length > MAX_TYPED_CHARACTERS) return problem('too-long');
  const typed = normaliseTyped(text);
  if (typed === '') return problem('empty');
  const sign = /^[+-]/.exec(typed)?.[0] ?? '';
  const terms = readLengthTerms(typed.slice(sign.length).trimStart(), bareUnit);
  if (!terms.ok) {
    const isReadable = (reading: string) => parseSignedLength(sign + reading, bareUnit).ok;
    return problem(terms.error.code, terms.error.expected.filter(isReadable));
  }
  const exact = totalUnits(terms.value);
  const units = fractionToNearest(exact);
  if (units > BigInt(MAX_LENGTH_UNITS)) return problem('out-of-range', LARGEST);
  if (units === 0n && exact.numerator > 0n) return problem('too-fine', SMALLEST);
  return success(lengthFromUnits(sign === '-' ? -Number(units) : Number(units)));
}

const EXAMPLES: Readonly<Record<LengthUnit, readonly string[]>> = {
  in: ['9 1/2', '9.5 in', '24 cm'],
  ft: ['2 1/2', '2 ft 6 in', '75 cm'],
  yd: ['1 1/4', '1.25 yd', '1.15 m'],
  mm: ['240', '24 cm', '9 1/2 in'],
  cm: ['24', '24.5 cm', '9 1/2 in'],
  m: ['1.25', '125 cm', '1 1/4 yd'],
};
const LARGEST: readonly string[] = ['10000 m', '10936 yd'];
const SMALLEST: readonly string[] = ['1/64 in', '0.1 mm'];

function totalUnits(terms: readonly LengthTerm[]): ExactFraction {
  return terms.reduce(
    (sum, term) => fractionAdd(sum, fractionTimes(term.amount, UNITS_PER[term.unit])),
    fractionFromDecimal('', ''),
  );
}
