import { failure, type Result, success } from '#core/result';
import { fractionAdd, fractionFromDecimal, fractionTimes, fractionToNearest } from './exact-fraction';
import { MAX_MINUTES, type Minutes, minutesFromWhole } from './minutes';
import { readTypedNumber } from './typed-number';
import { clipRead, MAX_TYPED_CHARACTERS, normaliseTyped } from './typed-text';

export interface MinutesProblem {
  readonly code: 'empty' | 'not-a-duration' | 'ambiguous' | 'out-of-range';
  readonly read: string;
  /** Texts that would have been taken. */
  readonly expected: readonly string[];
}

const EXPECTED: readonly string[] = ['90', '1:30', '1 h 30', '1.5 h'];
const HOUR_WORD = String.raw`(?:hours?|hrs?|h)\.?`;
const MINUTE_WORD = String.raw`(?:minutes?|mins?|m)\.?`;
const CLOCK = new RegExp(String.raw`^(\d+):([0-5]\d)(?: ?${HOUR_WORD})?$`);
const HOUR = new RegExp(`^ ?${HOUR_WORD} ?`);
const MINUTE = new RegExp(`^ ?${MINUTE_WORD}$`);
const MINUTES_AFTER_HOURS = new RegExp(String.raw`^([0-5]?\d)(?: ?${MINUTE_WORD})?$`);

/**
 * Reads `90` and `45 min` as minutes, `1:30`, `1 h 30` and `2 h 20 min` as hours and minutes, `1.5 h`, `1½ h` and `1,5 h` as
 * hours; to the nearest minute. A number with a fraction but no unit is ambiguous.
 */
export function parseMinutes(text: string): Result<Minutes, MinutesProblem> {
  const problem = (code: MinutesProblem['code'], expected = EXPECTED) =>
    failure({ code, read: clipRead(text), expected });
  if (text.length > MAX_TYPED_CHARACTERS) return problem('not-a-duration');
  const typed = normaliseTyped(text);
  if (typed === '') return problem('empty');
  const minutes = readMinutes(typed);
  if (typeof minutes === 'string')
    return problem(minutes, minutes === 'ambiguous' ? [`${typed} h`, `${typed} min`] : EXPECTED);
  return minutes > BigInt(MAX_MINUTES) ? problem('out-of-range') : success(minutesFromWhole(Number(minutes)));
}

function readMinutes(typed: string): bigint | 'ambiguous' | 'not-a-duration' {
  const [clock, clockHours = '', clockMinutes = ''] = CLOCK.exec(typed) ?? [];
  if (clock !== undefined) return 60n * BigInt(clockHours) + BigInt(clockMinutes);
  const number = readTypedNumber(typed);
  if (!number.ok) return 'not-a-duration';
  const { amount, rest } = number.value;
  if (rest === '' && amount.numerator % amount.denominator !== 0n) return 'ambiguous';
  if (rest === '' || MINUTE.test(rest)) return fractionToNearest(amount);
  const hours = HOUR.exec(rest)?.[0];
  if (hours === undefined) return 'not-a-duration';
  const more = rest.slice(hours.length);
  if (more === '') return fractionToNearest(fractionTimes(amount, 60));
  const after = MINUTES_AFTER_HOURS.exec(more)?.[1];
  if (after === undefined || amount.numerator % amount.denominator !== 0n) return 'not-a-duration';
  return fractionToNearest(fractionAdd(fractionTimes(amount, 60), fractionFromDecimal(after, '')));
}
