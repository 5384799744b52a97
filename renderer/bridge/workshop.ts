import type { Opening } from '#core/contract/workshop';
import { STARTING_BENCH_TIME } from '#core/domain/bench-time';
import { STARTING_LABEL_SHEET } from '#core/domain/label-sheet';
import { STARTING_HABITS, type Workshop } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { useRead } from './query';

const unread: Workshop = {
  name: '',
  currency: currencyFromCode('USD'),
  theme: 'system',
  settings: STARTING_HABITS,
  benchTime: STARTING_BENCH_TIME,
  labelSheet: STARTING_LABEL_SHEET,
};

/** What the notebook knew when it opened, or as it has been changed since; undefined for the first moments. */
export function useOpening(): Opening | undefined {
  return useRead('workshop:opening', {}).value;
}

/** The workshop's own facts, and its settings as they are in use: with what was learned. The starting ones for the first moments. */
export function useWorkshop(): Workshop {
  const opening = useOpening();
  return opening === undefined ? unread : { ...opening.workshop, settings: opening.settingsInUse };
}
