/* oxlint-disable typescript/no-unsafe-assignment, typescript/no-unsafe-call -- the refused lines have no type */
/**
 * Checked by tsc, never run: every line after an expect-error mark must be refused by the compiler, so that a length, an area,
 * an amount of money, a date and a bare number cannot be taken for one another.
 */
import { type Area, areaAdd, areaOfRectangle } from '#core/units/area';
import { addDays, type CalendarDate } from '#core/units/calendar-date';
import { type Length, lengthAdd, lengthFromInches } from '#core/units/length';
import { formatMinutes, type Minutes, minutesFromWhole } from '#core/units/minutes';
import { currencyFromCode, type Money, moneyAdd, moneyFromMinor } from '#core/units/money';
import type { LengthUnit } from '#core/units/length-unit';
import { parseLength } from '#core/units/parse-length';
import type { InchStep } from '#core/units/unit-system';

declare const length: Length;
declare const area: Area;
declare const minutes: Minutes;
declare const date: CalendarDate;
declare const money: Money;

// @ts-expect-error a bare number is no length
export const lengthFromNumber: Length = 8128;
// @ts-expect-error an area is no length
export const lengthFromArea: Length = area;
// @ts-expect-error minutes are no length
export const lengthFromMinutes: Length = minutes;
// @ts-expect-error the sum of two lengths by + is a bare number
export const lengthFromSum: Length = length + length;
// @ts-expect-error a bare number is no area
export const areaFromNumber: Area = 8128 * 8128;
// @ts-expect-error the product of two lengths by * is a bare number
export const areaFromProduct: Area = length * length;
// @ts-expect-error a length is no area
export const areaFromLength: Area = length;
// @ts-expect-error a bare number is no duration
export const minutesFromNumber: Minutes = 90;
// @ts-expect-error a bare text is no date
export const dateFromText: CalendarDate = '2027-02-28';
// @ts-expect-error a bare number is no money
export const moneyFromNumber: Money = 1250;
// @ts-expect-error a bare text is no currency
export const moneyFromText: Money = { minor: 1250, currency: 'USD' };

// @ts-expect-error an area cannot be added to a length
lengthAdd(length, area);
// @ts-expect-error a bare number cannot be added to a length
lengthAdd(length, 3);
// @ts-expect-error a length cannot be added to an area
areaAdd(area, length);
// @ts-expect-error the sides of a rectangle are lengths, not numbers
areaOfRectangle(9, length);
// @ts-expect-error money cannot be added to a number
moneyAdd(money, 5);
// @ts-expect-error the currency of an amount is made by currencyFromCode
moneyFromMinor(5, 'USD');
// @ts-expect-error only a date has days added
addDays('2027-02-28', 1);
// @ts-expect-error a duration is a number, not a text
formatMinutes('90');
// @ts-expect-error a mile is no unit of a field
parseLength('9', 'mi');
// @ts-expect-error a tenth is no step of an inch ruler
export const tenth: InchStep = 10;

const parsed = parseLength('9', 'in');
// @ts-expect-error a problem has to be looked at before there is a value
export const unchecked: Length = parsed.value;

function lock(value: { readonly sides: readonly Length[]; readonly money: Money }): void {
  // @ts-expect-error amounts do not change
  value.money.minor = 0;
  // @ts-expect-error lists of lengths do not grow
  value.sides.push(length);
}
lock({ sides: [length], money });

// What the compiler must accept, so that the refusals above are not refusals of everything.
export const good: readonly [Length, Area, Minutes, CalendarDate, Money, LengthUnit] = [
  lengthAdd(length, lengthFromInches(9)),
  areaAdd(area, areaOfRectangle(length, length)),
  minutesFromWhole(90),
  addDays(date, 1),
  moneyAdd(money, moneyFromMinor(5, currencyFromCode('USD'))),
  'in',
];
export const asNumber: number = length;
