import type { Settings } from '#core/domain/workshop';
import { settingsWithOwnRates } from '#core/learned/rates';
import type { ReadableStore } from '../base/handles';
import { readOwnRates } from './work-rows';
import { readWorkshop } from './workshop';

/** The settings calculators get: the workshop's, with the maker's own rates once they are learned. */
export function settingsInUse(store: ReadableStore): Settings {
  return settingsWithOwnRates(readWorkshop(store).settings, readOwnRates(store));
}
