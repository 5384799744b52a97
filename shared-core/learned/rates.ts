import type { WorkDetails, WorkMeasure } from '#core/domain/clock';
import type { Settings } from '#core/domain/workshop';
import { lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import { isWellLearned, type Learned, learnedFrom } from './learned';

/** Minutes a block, an inch sewn by hand, or a cut, as the maker's own clock tells; null where nothing was counted yet. */
export type OwnRates = Readonly<Record<WorkMeasure, Learned | null>>;

export type CountedWork = Pick<WorkDetails, 'minutes' | 'done'>;

/** Every stretch of work in which something was counted is one case. */
export function ownRates(work: readonly CountedWork[]): OwnRates {
  const of = (what: WorkMeasure) =>
    learnedFrom(work.flatMap(({ minutes, done }) => (done?.what === what ? [minutes / unitsOf(done)] : [])));
  return { blocks: of('blocks'), hand: of('hand'), cuts: of('cuts') };
}

/** The rate that is reckoned with in place of a default; null as long as the default stands. */
export function rateInUse(rates: OwnRates, what: WorkMeasure): Learned | null {
  const rate = rates[what];
  return isWellLearned(rate) ? rate : null;
}

function unitsOf({ what, amount }: NonNullable<WorkDetails['done']>): number {
  return what === 'hand' ? amount / UNITS_PER_INCH : amount;
}

/** The settings with the maker's own rate by hand in place of the default, once it is learned; to the nearest eighth of an inch an hour. */
export function settingsWithOwnRates(settings: Settings, rates: OwnRates): Settings {
  const hand = rateInUse(rates, 'hand');
  if (hand === null) return settings;
  const inchesAnHour = Math.min(1_000, Math.max(1, roundNearest(60 / hand.median, 1 / 8)));
  return { ...settings, handStitchPerHour: lengthFromUnits(inchesAnHour * UNITS_PER_INCH) };
}

/** Whole minutes for so many blocks, inches by hand or cuts by the own rate; null until it is in use. */
export function minutesByOwnRate(rates: OwnRates, what: WorkMeasure, amount: number): number | null {
  const rate = rateInUse(rates, what);
  return rate === null ? null : roundNearest(rate.median * amount, 1);
}
