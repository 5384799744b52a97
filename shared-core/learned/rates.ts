import type { WorkDetails, WorkMeasure } from '#core/domain/clock';
import type { Settings } from '#core/domain/workshop';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import { isWellLearned, type Learned, learnedFrom } from './learned';

/** Minutes per block, per inch sewn by hand and per cut, from the maker's time log; null while nothing is counted. */
export type OwnRates = Readonly<Record<WorkMeasure, Learned | null>>;

export type CountedWork = Pick<WorkDetails, 'minutes' | 'done'>;

/** Each log entry with a count is one case. */
export function ownRates(work: readonly CountedWork[]): OwnRates {
  const of = (what: WorkMeasure) =>
    learnedFrom(work.flatMap(({ minutes, done }) => (done?.what === what ? [minutes / unitsOf(done)] : [])));
  return { blocks: of('blocks'), hand: of('hand'), cuts: of('cuts') };
}

/** The learned rate, or null while the default is still in use. */
export function rateInUse(rates: OwnRates, what: WorkMeasure): Learned | null {
  const rate = rates[what];
  return isWellLearned(rate) ? rate : null;
}

function unitsOf({ what, amount }: NonNullable<WorkDetails['done']>): number {
  return what === 'hand' ? amount / UNITS_PER_INCH : amount;
}

/** The settings with the maker's own hand-sewing rate in place of the default, once it is learned. Rounded to the nearest 1/8 in per hour. */
export function settingsWithOwnRates(settings: Settings, rates: OwnRates): Settings {
  const hand = rateInUse(rates, 'hand');
  if (hand === null) return settings;
  const inchesPerHour = Math.min(1_000, Math.max(1, roundNearest(60 / hand.median, 1 / 8)));
  return { ...settings, handStitchPerHour: lengthFromInches(inchesPerHour) };
}

/** Whole minutes for `amount` at the maker's own rate, rounded to the nearest; null until that rate is in use. */
export function minutesByOwnRate(rates: OwnRates, what: WorkMeasure, amount: number): number | null {
  const rate = rateInUse(rates, what);
  return rate === null ? null : roundNearest(rate.median * amount, 1);
}
