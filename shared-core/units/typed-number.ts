import { failure, type Result, success } from '#core/result';
import { type ExactFraction, fractionAdd, fractionFromDecimal } from './exact-fraction';

/** A number at the start of some text, and what follows it. */
export interface TypedNumber {
  readonly amount: ExactFraction;
  readonly rest: string;
}

export interface TypedNumberProblem {
  readonly code: 'not-a-number' | 'ambiguous' | 'zero-denominator' | 'improper-fraction';
  /** For an ambiguous comma: the text in its two plain readings. */
  readonly readings: readonly string[];
}

const WHOLE_AND_FRACTION = /^(\d+)(?: |-)(\d+) ?\/ ?(\d+)/;
const FRACTION = /^(\d+) ?\/ ?(\d+)/;
const DECIMAL = /^(?=[.,]?\d)(\d*)(?:([.,])(\d*))?/;

/**
 * Reads `9`, `9.5`, `9,5`, `1/2`, `9 1/2` and `9-1/2` from text made plain by `normaliseTyped`, exactly. A point is always a
 * decimal mark. A comma is one too, unless it could set off thousands (`1,250`): that is ambiguous.
 */
export function readTypedNumber(text: string): Result<TypedNumber, TypedNumberProblem> {
  const mixed = WHOLE_AND_FRACTION.exec(text);
  if (mixed !== null) {
    const [read, whole = '', over = '', under = ''] = mixed;
    if (BigInt(under) > 0n && BigInt(over) >= BigInt(under)) return problem('improper-fraction');
    return readFraction(fractionFromDecimal(whole, ''), over, under, text.slice(read.length));
  }
  const fraction = FRACTION.exec(text);
  if (fraction !== null) {
    const [read, over = '', under = ''] = fraction;
    return readFraction(fractionFromDecimal('', ''), over, under, text.slice(read.length));
  }
  return readDecimal(text);
}

function readFraction(
  whole: ExactFraction,
  over: string,
  under: string,
  rest: string,
): Result<TypedNumber, TypedNumberProblem> {
  const denominator = BigInt(under);
  if (denominator === 0n) return problem('zero-denominator');
  return success({ amount: fractionAdd(whole, { numerator: BigInt(over), denominator }), rest });
}

function readDecimal(text: string): Result<TypedNumber, TypedNumberProblem> {
  const [read, digits = '', mark, decimals = ''] = DECIMAL.exec(text) ?? [];
  if (read === undefined || (mark === ',' && decimals === '')) return problem('not-a-number');
  const rest = text.slice(read.length);
  const couldSetOffThousands = mark === ',' && /^[1-9]\d{0,2}$/.test(digits) && decimals.length === 3;
  if (couldSetOffThousands && !/^[.,]/.test(rest)) {
    return problem('ambiguous', [`${digits}${decimals}${rest}`, `${digits}.${decimals}${rest}`]);
  }
  return success({ amount: fractionFromDecimal(digits, decimals), rest });
}

function problem(code: TypedNumberProblem['code'], readings: readonly string[] = []) {
  return failure({ code, readings });
}
