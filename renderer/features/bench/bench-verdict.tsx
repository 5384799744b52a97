import type { PlannedDates } from '#core/contract/dates';
import type { ProjectGlance } from '#core/contract/projects';
import type { CalendarDate } from '#core/units/calendar-date';
import { NO_MOVES, useMending } from '#renderer/bridge/dates';
import { dateFixWords, scheduleWords } from '#renderer/text/schedule-words';
import { useDisplay } from '#renderer/ui/base/display';
import { ScheduleVerdict } from '#renderer/ui/answers/schedule-verdict';

interface BenchVerdictProps {
  readonly dates: PlannedDates;
  readonly glances: readonly ProjectGlance[];
  readonly on: CalendarDate;
}

/** Whether all pieces on the bench will be done in time, and what would mend it. */
export function BenchVerdict({ dates, glances, on }: BenchVerdictProps) {
  const { locale } = useDisplay();
  const isLate = (dates.plan.largestLateDays ?? 0) > 0;
  const mending = useMending(on, NO_MOVES, isLate);
  const nameOf = (id: string) => glances.find(({ project }) => project.id === id)?.project.name ?? '';
  return (
    <ScheduleVerdict
      says={scheduleWords(dates, nameOf)}
      isLate={isLate}
      mending={mending === undefined ? [] : dateFixWords(mending, nameOf, { locale, on })}
    />
  );
}
