import fc from 'fast-check';
import type { Point } from '#core/geometry/point';
import type { Polygon } from '#core/geometry/polygon';
import { type CalendarDate, addDays, calendarDate, daysBetween } from '#core/units/calendar-date';
import {
  type Length,
  lengthFromUnits,
  MAX_LENGTH_UNITS,
  UNITS_PER_INCH,
  UNITS_PER_METER,
} from '#core/units/length';
import type { LengthUnit } from '#core/units/length-unit';
import { type Minutes, MAX_MINUTES, minutesFromWhole } from '#core/units/minutes';
import { type Money, currencyFromCode, moneyFromMinor } from '#core/units/money';
import type { RoundingDirection } from '#core/units/rounding';
import { INCH_STEPS, type InchStep, type LengthDisplay } from '#core/units/unit-system';

/** Any length that is not negative, from nothing to ten kilometers. */
export const anyLength: fc.Arbitrary<Length> = fc
  .integer({ min: 0, max: MAX_LENGTH_UNITS })
  .map(lengthFromUnits);

export const anySignedLength: fc.Arbitrary<Length> = fc
  .integer({ min: -MAX_LENGTH_UNITS, max: MAX_LENGTH_UNITS })
  .map(lengthFromUnits);

/** A length such as makers sew: up to `most` (4 m if not said) and at least one unit long. */
export function benchLength(most: Length = lengthFromUnits(4 * UNITS_PER_METER)): fc.Arbitrary<Length> {
  return fc.integer({ min: 1, max: most }).map(lengthFromUnits);
}

/** A length on the ruler: whole steps of an inch fraction, at least one and at most `inches`. */
export function rulerLength(inches = 120, step: InchStep = 8): fc.Arbitrary<Length> {
  return fc
    .integer({ min: 1, max: inches * step })
    .map((steps) => lengthFromUnits(steps * (UNITS_PER_INCH / step)));
}

export const anyDisplay: fc.Arbitrary<LengthDisplay> = fc.record({
  system: fc.constantFrom('inch', 'metric'),
  inchStep: fc.constantFrom(...INCH_STEPS),
});

export const anyLengthUnit: fc.Arbitrary<LengthUnit> = fc.constantFrom('in', 'ft', 'yd', 'mm', 'cm', 'm');

export const anyRounding: fc.Arbitrary<RoundingDirection> = fc.constantFrom('up', 'down', 'nearest');

/** Currencies with two, none and three digits of minor unit. */
const anyCurrency = fc.constantFrom('USD', 'EUR', 'JPY', 'KWD').map(currencyFromCode);

export const anyMoney: fc.Arbitrary<Money> = fc
  .tuple(fc.maxSafeInteger(), anyCurrency)
  .map(([minor, currency]) => moneyFromMinor(minor, currency));

const FIRST_DAY = calendarDate('0001-01-01');
const LAST_DAY = daysBetween(FIRST_DAY, calendarDate('9999-12-31'));

export const anyDate: fc.Arbitrary<CalendarDate> = fc
  .integer({ min: 0, max: LAST_DAY })
  .map((days) => addDays(FIRST_DAY, days));

/** A date between 2020 and 2050, for plans. */
export const planDate: fc.Arbitrary<CalendarDate> = fc
  .integer({ min: 0, max: 30 * 365 })
  .map((days) => addDays(calendarDate('2020-01-01'), days));

export const anyMinutes: fc.Arbitrary<Minutes> = fc
  .integer({ min: 0, max: MAX_MINUTES })
  .map(minutesFromWhole);

/** A simple polygon around the origin, counterclockwise: corners at rising angles and free distances, often not convex. */
export const starShapedPolygon: fc.Arbitrary<Polygon> = fc
  .array(
    fc.record({ gap: fc.integer({ min: 20, max: 100 }), radius: fc.integer({ min: 50_000, max: 400_000 }) }),
    { minLength: 5, maxLength: 12 },
  )
  .map((spokes) => {
    const turn = spokes.reduce((sum, { gap }) => sum + gap, 0);
    let angle = 0;
    return spokes.map(({ gap, radius }): Point => {
      angle += (2 * Math.PI * gap) / turn;
      return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
    });
  });

/** A convex polygon: corners at rising angles on an ellipse. */
export const convexPolygon: fc.Arbitrary<Polygon> = fc
  .record({
    gaps: fc.array(fc.integer({ min: 20, max: 100 }), { minLength: 3, maxLength: 12 }),
    width: fc.integer({ min: 50_000, max: 400_000 }),
    height: fc.integer({ min: 50_000, max: 400_000 }),
  })
  .map(({ gaps, width, height }) => {
    const turn = gaps.reduce((sum, gap) => sum + gap, 0);
    let angle = 0;
    return gaps.map((gap): Point => {
      angle += (2 * Math.PI * gap) / turn;
      return { x: width * Math.cos(angle), y: height * Math.sin(angle) };
    });
  });
