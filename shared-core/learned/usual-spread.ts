import { NO_SPREAD, type Spread } from '#core/domain/spread';
import type { DaysAway } from './days-away';
import { isWellLearned, type Learned } from './learned';
import type { StageEstimate } from './stage-estimate';

/** Until there are cases of the maker's own: a quarter of trips takes 15% less, a quarter 30% more than expected (from memory). */
const USUAL_TRIPS: Spread = { low: 0.85, high: 1.3, isLearned: false };
/** The same for hours at the bench: work is more often longer than thought than shorter (from memory). */
const USUAL_HOURS: Spread = { low: 0.85, high: 1.35, isLearned: false };
/** No case teaches that something never varies, or that it may take no time at all. */
const LEAST = 0.2;

/** How far a trip may be from the days it is planned with. */
export function tripSpread({ days, learned }: DaysAway): Spread {
  if (days === 0) return NO_SPREAD;
  return isWellLearned(learned) ? spreadAround(days, learned) : USUAL_TRIPS;
}

/** How far the hours of a stage may be from their estimate. Only the maker's own rates have a spread of their own. */
export function hoursSpread({ minutes, from, parts }: StageEstimate): Spread {
  if (minutes === 0) return NO_SPREAD;
  const rates = parts.flatMap(({ learned }) => (isWellLearned(learned) ? [learned] : []));
  const widest = rates.toSorted((one, other) => widthOf(other) - widthOf(one))[0];
  return from === 'rates' && widest !== undefined ? spreadAround(widest.median, widest) : USUAL_HOURS;
}

function spreadAround(planned: number, { low, high }: Learned): Spread {
  return {
    low: Math.min(1, Math.max(LEAST, low / planned)),
    high: Math.max(1, high / planned),
    isLearned: true,
  };
}

function widthOf({ low, high, median }: Learned): number {
  return (high - low) / median;
}
