import type { PlannedDates } from '#core/contract/dates';
import type { ProjectGlance } from '#core/contract/projects';
import type { CalendarDate } from '#core/units/calendar-date';
import { NO_MOVES, useDateFixes } from '#renderer/bridge/dates';
import { dateFixWords, scheduleWords } from '#renderer/text/schedule-words';
import { useDisplay } from '#renderer/ui/base/display';
import { ScheduleVerdict } from '#renderer/ui/answers/schedule-verdict';

interface BenchVerdictProps {
  readonly dates: PlannedDates;
  readonly glances: readonly ProjectGlance[];
  readonly on: CalendarDate;
}

/** Whether all open projects get done on time, and what would help if not. */
export function BenchVerdict({ dates, glances, on }: BenchVerdictProps) {
  const { locale } = useDisplay();
  const isLate = (dates.plan.largestLateDays ?? 0) > 0;
  const fixes = useDateFixes(on, NO_MOVES, isLate);
  const nameOf = (id: string) => glances.find(({ project }) => project.id === id)?.project.name ?? '';
  return (
    <ScheduleVerdict
      words={scheduleWords(dates, nameOf)}
      isLate={isLate}
      fixes={fixes === undefined ? [] : dateFixWords(fixes, nameOf, { locale, on })}
    />
  );
}
