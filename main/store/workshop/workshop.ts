import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { STARTING_BENCH_TIME } from '#core/domain/bench-time';
import { STARTING_LABEL_SHEET } from '#core/domain/label-sheet';
import { STARTING_SETTINGS, type Workshop, workshopSchema as workshopSchema } from '#core/domain/workshop';
import type { Result } from '#core/result';
import { success } from '#core/result';
import { currencyFromCode } from '#core/units/money';
import { recordChange } from '../history/changes';
import { oneRow, type ReadableStore, write } from '../base/handles';
import { jsonOf, readBy } from '../base/rows';

/** The workshop until the maker changes it. */
const STARTING_WORKSHOP: Workshop = {
  name: '',
  currency: currencyFromCode('USD'),
  theme: 'system',
  settings: STARTING_SETTINGS,
  benchTime: STARTING_BENCH_TIME,
  labelSheet: STARTING_LABEL_SHEET,
};

export function readWorkshop(store: ReadableStore): Workshop {
  const row = oneRow(store, 'SELECT * FROM workshop');
  if (row === undefined) return STARTING_WORKSHOP;
  // A setting added to the program since this row was written has its starting value.
  const settings = { ...STARTING_SETTINGS, ...(jsonOf(row, 'habits_json') as object) };
  const read = {
    name: row['name'],
    currency: row['currency'],
    theme: row['theme'],
    settings,
    benchTime: jsonOf(row, 'bench_time_json'),
    labelSheet: jsonOf(row, 'label_sheet_json'),
  };
  return readBy(workshopSchema, read, 'workshop');
}

export function changeWorkshop(
  store: ReadableStore,
  { workshop }: ChannelInput<'workshop:change'>,
): Result<Changed, Problem> {
  const isFirst = oneRow(store, 'SELECT 1 FROM workshop') === undefined;
  const words = isFirst ? 'Started the notebook' : changeWords(readWorkshop(store), workshop);
  return recordChange(store, words, (writable) => {
    write(
      writable,
      `INSERT INTO workshop (id, name, currency, theme, habits_json, bench_time_json, label_sheet_json)
      VALUES ('workshop', ?, ?, ?, ?, ?, ?)
      ON CONFLICT (id) DO UPDATE SET name = excluded.name, currency = excluded.currency, theme = excluded.theme,
        habits_json = excluded.habits_json, bench_time_json = excluded.bench_time_json,
        label_sheet_json = excluded.label_sheet_json`,
      workshop.name,
      workshop.currency,
      workshop.theme,
      JSON.stringify(workshop.settings),
      JSON.stringify(workshop.benchTime),
      JSON.stringify(workshop.labelSheet),
    );
    return success({});
  });
}

function changeWords(before: Workshop, after: Workshop): string {
  const isOther = (part: 'benchTime' | 'labelSheet') =>
    JSON.stringify(before[part]) !== JSON.stringify(after[part]);
  if (isOther('benchTime')) return 'Changed your bench hours';
  return isOther('labelSheet') ? 'Changed the label sheet' : 'Changed the workshop settings';
}
