import type { CalendarDate } from '#core/units/calendar-date';
import { daysWords, weekdayWords } from '#renderer/text/dates';
import type { Effect, ProjectRow } from './calendar-rows';

interface When {
  readonly locale: string;
  readonly on: CalendarDate;
}

/** Each moved day of a row: `Harvest round: due Sat 5 Dec instead of Tue 1 Dec`. */
export function moveWords(
  { name, due, back }: Pick<ProjectRow, 'name' | 'due' | 'back'>,
  when: When,
): readonly string[] {
  const day = (date: CalendarDate) => weekdayWords(date, when.locale, when.on);
  const marks = [
    ['due', due],
    ['back', back],
  ] as const;
  return marks.flatMap(([what, mark]) =>
    mark === null || mark.on === mark.savedOn
      ? []
      : [`${name}: ${what} ${day(mark.on)} instead of ${day(mark.savedOn)}`],
  );
}

/** What the moves change for a project: `Harvest round: done Sat 5 Dec instead of Tue 1 Dec, 4 days late`. */
export function effectWords(effect: Effect, name: string, when: When): string {
  const { lateBefore, lateAfter } = effect;
  const late = lateAfter > 0 ? `, ${daysWords(lateAfter)} late` : lateBefore > 0 ? ', now on time' : '';
  return `${name}: ${finishWords(effect, when)}${late}`;
}

function finishWords({ finishedBefore: before, finishedAfter: after }: Effect, { locale, on }: When): string {
  if (after === null) return 'won’t get done (no sewing time)';
  const done = weekdayWords(after, locale, on);
  if (before === after) return `still done ${done}`;
  return before === null ? `done ${done}` : `done ${done} instead of ${weekdayWords(before, locale, on)}`;
}
