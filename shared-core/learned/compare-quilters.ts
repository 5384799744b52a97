import { longarmPriceInputFromProject } from '#core/calculators/longarm-price/input';
import { longarmPrice } from '#core/calculators/longarm-price/longarm-price';
import type { ContactDetails } from '#core/domain/contact';
import type { ContactId } from '#core/domain/ids';
import type { Measurements } from '#core/domain/measurements';
import { addDays, type CalendarDate, compareDates } from '#core/units/calendar-date';
import { roundUpTo } from '#core/units/rounding';
import { type TripDays, type Turnaround, turnaroundOf } from './turnaround';

export interface Quilter {
  readonly id: ContactId;
  readonly details: Pick<ContactDetails, 'name' | 'rateMinor' | 'minimumMinor' | 'lines' | 'promisedDays'>;
  readonly trips: readonly TripDays[];
}

/** One quilter's price for a project, and the day it comes back if it is sent on `sentOn`. */
export interface QuilterOffer {
  readonly id: ContactId;
  readonly name: string;
  /** Null when no price can be worked out for this project. */
  readonly priceMinor: number | null;
  readonly isAtMinimum: boolean;
  /** Whether the price uses the quilter's own rate; without one it uses the workshop's setting. */
  readonly isOwnRate: boolean;
  readonly turnaround: Turnaround;
  readonly backOn: CalendarDate;
  /** The upper quartile of their past trips; the same as `backOn` until there are enough trips. */
  readonly lateBackOn: CalendarDate;
  /** Whether it is back by `wantedOn`; null when no day is asked for. */
  readonly isInTime: boolean | null;
}

export interface ComparisonQuestion {
  readonly measurements: Measurements;
  readonly sentOn: CalendarDate;
  readonly wantedOn: CalendarDate | null;
}

/** One offer per quilter, in the order given. */
export function compareQuilters(
  quilters: readonly Quilter[],
  ask: ComparisonQuestion,
): readonly QuilterOffer[] {
  return quilters.map((quilter) => offerOf(quilter, ask));
}

export type OfferOrder = 'price' | 'day';

/** Cheapest or earliest first. An unknown price comes last; the name decides between equals. */
export function orderOffers(offers: readonly QuilterOffer[], by: OfferOrder): readonly QuilterOffer[] {
  const price = ({ priceMinor }: QuilterOffer) => priceMinor ?? Number.MAX_SAFE_INTEGER;
  return offers.toSorted((first, second) => {
    const byPrice = price(first) - price(second);
    const byDay = compareDates(first.backOn, second.backOn);
    const name = first.name.localeCompare(second.name);
    return by === 'price' ? byPrice || byDay || name : byDay || byPrice || name;
  });
}

function offerOf({ id, details, trips }: Quilter, ask: ComparisonQuestion): QuilterOffer {
  const bill = billOf(details, ask.measurements);
  const turnaround = turnaroundOf(details, trips, ask.measurements.settings.turnaroundDays);
  const backOn = addDays(ask.sentOn, turnaround.days);
  const late = turnaround.from === 'learned' && turnaround.learned !== null ? turnaround.learned.high : 0;
  return {
    id,
    name: details.name,
    priceMinor: bill?.totalMinor ?? null,
    isAtMinimum: bill?.isAtMinimum ?? false,
    isOwnRate: details.rateMinor !== null,
    turnaround,
    backOn,
    lateBackOn: addDays(ask.sentOn, Math.max(turnaround.days, roundUpTo(late, 1))),
    isInTime: ask.wantedOn === null ? null : backOn <= ask.wantedOn,
  };
}

function billOf(details: Quilter['details'], measurements: Measurements) {
  const usual = longarmPriceInputFromProject(measurements);
  const answer = longarmPrice.calculate({
    ...usual,
    rate: details.rateMinor ?? usual.rate,
    minimum: details.minimumMinor ?? (details.rateMinor === null ? usual.minimum : 0),
    lines: details.lines,
  });
  return answer.ok ? answer.value.details : null;
}
