import { longarmPriceInputFromProject } from '#core/calculators/longarm-price/input';
import { longarmPrice } from '#core/calculators/longarm-price/longarm-price';
import type { ContactDetails } from '#core/domain/contact';
import type { ContactId } from '#core/domain/ids';
import type { Measurements } from '#core/domain/measurements';
import { addDays, type CalendarDate, compareDates } from '#core/units/calendar-date';
import { roundUpTo } from '#core/units/rounding';
import { type Journey, type Turnaround, turnaroundOf } from './turnaround';

export interface Quilter {
  readonly id: ContactId;
  readonly details: Pick<ContactDetails, 'name' | 'rateMinor' | 'minimumMinor' | 'lines' | 'promisedDays'>;
  readonly journeys: readonly Journey[];
}

/** What one quilter would mean for a piece: its price, and the day it comes back if it goes on `sentOn`. */
export interface QuilterOffer {
  readonly id: ContactId;
  readonly name: string;
  /** Null where the price cannot be worked out for this piece. */
  readonly priceMinor: number | null;
  readonly isAtMinimum: boolean;
  /** Their own rate; without one the workshop's setting stands in. */
  readonly isOwnRate: boolean;
  readonly turnaround: Turnaround;
  readonly backOn: CalendarDate;
  /** The later end of the middle half of their past trips; where too little is known, the same as `backOn`. */
  readonly lateBackOn: CalendarDate;
  /** Whether it is back by the day it is wanted; null where no day is wanted. */
  readonly isInTime: boolean | null;
}

export interface ComparisonAsk {
  readonly measurements: Measurements;
  readonly sentOn: CalendarDate;
  readonly wantedOn: CalendarDate | null;
}

/** One offer a quilter, in the order they were given. */
export function compareQuilters(quilters: readonly Quilter[], ask: ComparisonAsk): readonly QuilterOffer[] {
  return quilters.map((quilter) => offerOf(quilter, ask));
}

export type OfferOrder = 'price' | 'day';

/** The cheapest or the earliest first; a price that is not known comes last, and the name decides between equals. */
export function orderOffers(offers: readonly QuilterOffer[], by: OfferOrder): readonly QuilterOffer[] {
  const price = ({ priceMinor }: QuilterOffer) => priceMinor ?? Number.MAX_SAFE_INTEGER;
  return offers.toSorted((first, second) => {
    const byPrice = price(first) - price(second);
    const byDay = compareDates(first.backOn, second.backOn);
    const name = first.name.localeCompare(second.name);
    return by === 'price' ? byPrice || byDay || name : byDay || byPrice || name;
  });
}

function offerOf({ id, details, journeys }: Quilter, ask: ComparisonAsk): QuilterOffer {
  const bill = billOf(details, ask.measurements);
  const turnaround = turnaroundOf(details, journeys, ask.measurements.settings.turnaroundDays);
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
