import type { ProjectSpread, StagePlan } from '#core/contract/projects';
import type { ProjectDetails } from '#core/domain/project';
import { NO_MOVES, useDateChances, useDateFixes, usePlannedDates } from '#renderer/bridge/dates';
import { useRead } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import {
  chanceWords,
  dateFixWords,
  inTimeWords,
  madeLaterWords,
  triedFixWords,
} from '#renderer/text/schedule-words';
import { ScheduleVerdict } from '#renderer/ui/answers/schedule-verdict';
import { useDisplay } from '#renderer/ui/base/display';

/** Whether an open project gets done in time, and what would help if not. Nothing for one that is done. */
export function InTime({ spread: { project, stages } }: { readonly spread: ProjectSpread }) {
  const { locale } = useDisplay();
  const on = today();
  const { value: planned } = usePlannedDates(on);
  const dates = planned?.plan.projects.find(({ id }) => id === project.id);
  const isLate = (dates?.lateDays ?? 0) > 0;
  const fixes = useDateFixes(on, NO_MOVES, isLate);
  const chance = useDateChances(on).find(({ id }) => id === project.id);
  const { value: projects } = useRead('project:list', { archived: false }, { isOn: isLate });
  if (dates === undefined) return null;
  const nameOf = (id: string) => projects?.items.find((one) => one.project.id === id)?.project.name ?? '';
  const help =
    fixes === undefined || projects === undefined ? [] : dateFixWords(fixes, nameOf, { locale, on });
  const doubtful = stages.find(({ id }) => id === chance?.doubtfulStage)?.name;
  return (
    <ScheduleVerdict
      words={inTimeWords(dates, { locale, on })}
      isLate={isLate}
      fixes={help}
      chances={chance === undefined ? [] : chanceWords(chance, doubtful, { locale, on })}
    />
  );
}

interface WouldBeInTimeProps {
  readonly details: ProjectDetails;
  readonly stagePlanId: StagePlan['id'];
}

/** The same for a project that is not started yet, and which other projects would then be late. */
export function WouldBeInTime({ details, stagePlanId }: WouldBeInTimeProps) {
  const { locale } = useDisplay();
  const on = today();
  const { value: tried } = useRead(
    'dates:try-project',
    { on, details, stagePlanId },
    { keepsPrevious: true },
  );
  if (tried === undefined) return null;
  const others = madeLaterWords(tried.madeLater);
  return (
    <ScheduleVerdict
      words={`${inTimeWords(tried.dates, { locale, on })} ${others}`.trim()}
      isLate={(tried.dates.lateDays ?? 0) > 0 || others !== ''}
      fixes={triedFixWords(tried, { locale, on })}
      chances={chanceWords(tried.chance, tried.doubtfulStageName ?? undefined, { locale, on })}
    />
  );
}
