/* oxlint-disable typescript/no-unsafe-assignment, typescript/no-unsafe-call -- the refused lines have no type */
/**
 * Checked by tsc, never run: the compiler must refuse every line after an expect-error mark, so that a length, an
 * amount of money, a duration, a date and a plain number cannot be mixed up.
 */
import { addDays, type CalendarDate } from '#core/units/calendar-date';
import { type Length, lengthAdd, lengthFromInches } from '#core/units/length';
import { formatMinutes, type Minutes, minutesFromWhole } from '#core/units/minutes';
import { currencyFromCode, type Money, moneyFromMinor } from '#core/units/money';
import type { LengthUnit } from '#core/units/length-unit';
import { parseLength } from '#core/units/parse-length';
import type { InchStep } from '#core/units/unit-system';

declare const length: Length;
declare const minutes: Minutes;
declare const date: CalendarDate;
declare const money: Money;

// @ts-expect-error a plain number is not a length
export const lengthFromNumber: Length = 8128;
// @ts-expect-error minutes are not a length
export const lengthFromMinutes: Length = minutes;
// @ts-expect-error the sum of two lengths by + is a plain number
export const lengthFromSum: Length = length + length;
// @ts-expect-error a plain number is not a duration
export const minutesFromNumber: Minutes = 90;
// @ts-expect-error plain text is not a date
export const dateFromText: CalendarDate = '2027-02-28';
// @ts-expect-error a plain number is not money
export const moneyFromNumber: Money = 1250;
// @ts-expect-error plain text is not a currency
export const moneyFromText: Money = { minor: 1250, currency: 'USD' };

// @ts-expect-error a plain number cannot be added to a length
lengthAdd(length, 3);
// @ts-expect-error minutes cannot be added to a length
lengthAdd(length, minutes);
// @ts-expect-error currencyFromCode makes the currency of an amount
moneyFromMinor(5, 'USD');
// @ts-expect-error days can only be added to a date
addDays('2027-02-28', 1);
// @ts-expect-error a duration is a number, not text
formatMinutes('90');
// @ts-expect-error a field takes no miles
parseLength('9', 'mi');
// @ts-expect-error an inch ruler has no tenths
export const tenth: InchStep = 10;

const parsed = parseLength('9', 'in');
// @ts-expect-error the problem must be checked before the value is used
export const unchecked: Length = parsed.value;

function lock(value: { readonly sides: readonly Length[]; readonly money: Money }): void {
  // @ts-expect-error an amount is read-only
  value.money.minor = 0;
  // @ts-expect-error a list of lengths is read-only
  value.sides.push(length);
}
lock({ sides: [length], money });

// The compiler must accept these, which shows that it does not refuse everything above for another reason.
export const good: readonly [Length, Minutes, CalendarDate, Money, LengthUnit] = [
  lengthAdd(length, lengthFromInches(9)),
  minutesFromWhole(90),
  addDays(date, 1),
  moneyFromMinor(5, currencyFromCode('USD')),
  'in',
];
export const asNumber: number = length;
