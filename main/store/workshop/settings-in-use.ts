import type { Settings } from '#core/domain/workshop';
import { settingsWithOwnRates } from '#core/learned/rates';
import { settingsWithUsualSeams } from '#core/learned/usual-seams';
import type { ReadableStore } from '../base/handles';
import { readUsualSeams } from './seam-checks';
import { readOwnRates } from './work-rows';
import { readWorkshop } from './workshop';

/** The settings calculators get: the workshop's, with the maker's own rates and usual errors once they are learned. */
export function settingsInUse(store: ReadableStore): Settings {
  const withRates = settingsWithOwnRates(readWorkshop(store).settings, readOwnRates(store));
  return settingsWithUsualSeams(withRates, readUsualSeams(store));
}
