import type { Habits } from '#core/domain/workshop';
import { habitsWithOwnRates } from '#core/learned/rates';
import type { ReadableStore } from '../base/handles';
import { readOwnRates } from './work-rows';
import { readWorkshop } from './workshop';

/** The workshop's habits as calculators are given them: with the maker's own rates where they are learned. */
export function habitsInUse(store: ReadableStore): Habits {
  return habitsWithOwnRates(readWorkshop(store).habits, readOwnRates(store));
}
