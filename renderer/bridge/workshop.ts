import type { Opening } from '#core/contract/workshop';
import { STARTING_BENCH_TIME } from '#core/domain/bench-time';
import { STARTING_LABEL_SHEET } from '#core/domain/label-sheet';
import { STARTING_SETTINGS, type Workshop } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { useRead } from './query';

const unread: Workshop = {
  name: '',
  currency: currencyFromCode('USD'),
  theme: 'system',
  settings: STARTING_SETTINGS,
  benchTime: STARTING_BENCH_TIME,
  labelSheet: STARTING_LABEL_SHEET,
};

/** The workshop and what opening it found; undefined until it is read. */
export function useOpening(): Opening | undefined {
  return useRead('workshop:opening', {}).value;
}

/** The workshop with the settings in use, learned rates included. Until it is read, the starting settings. */
export function useWorkshop(): Workshop {
  const opening = useOpening();
  return opening === undefined ? unread : { ...opening.workshop, settings: opening.settingsInUse };
}
