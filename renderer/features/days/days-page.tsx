import { useMemo, useState } from 'react';
import type { DayMoves } from '#core/contract/dates';
import { NO_MOVES, useDateFixes, usePlannedDates } from '#renderer/bridge/dates';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useOpening } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { dateFixWords, scheduleWords } from '#renderer/text/schedule-words';
import { Button } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import { useDisplay } from '#renderer/ui/base/display';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ScheduleVerdict } from '#renderer/ui/answers/schedule-verdict';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { DaysTable } from './days-table';
import { OtherCalendars } from './other-calendars';
import { MovedDays } from './moved-days';
import { TimeLine } from './time-line';
import { rowsOf, scaleOf } from './calendar-rows';

const WIDTHS = [
  { value: 'near', words: 'Days' },
  { value: 'middle', words: 'Weeks' },
  { value: 'far', words: 'Months' },
] as const;
type Width = (typeof WIDTHS)[number]['value'];
const DAY_WIDTH: Readonly<Record<Width, number>> = { near: 28, middle: 13, far: 5 };

/** All open projects on one calendar: when each stage is worked on, what is at the quilter and what is due. Moving a day shows what it would change. */
export function DaysPage() {
  const on = today();
  const { locale } = useDisplay();
  const [moves, setMoves] = useState<DayMoves>(NO_MOVES);
  const [width, setWidth] = useState<Width>('middle');
  const { value: list, problem } = useRead('project:list', { archived: false });
  const { value: saved, problem: planProblem } = usePlannedDates(on);
  const { value: trial = saved, problem: trialProblem } = usePlannedDates(on, moves);
  const daysOff = useOpening()?.workshop.benchTime.daysOff ?? [];
  const moving = useWrite('dates:move');
  const isLate = (trial?.plan.largestLateDays ?? 0) > 0;
  const fixes = useDateFixes(on, moves, isLate);
  const glances = list?.items;
  const rows = useMemo(
    () => (glances === undefined || trial === undefined ? [] : rowsOf(glances, trial, moves)),
    [glances, trial, moves],
  );
  if (glances === undefined || saved === undefined || trial === undefined) {
    return (
      <Page title="Days">
        <ProblemNotice problem={problem ?? planProblem} />
      </Page>
    );
  }
  if (rows.length === 0) return <NoProjects />;
  const nameOf = (id: string) => rows.find((row) => row.id === id)?.name ?? '';
  const isMoved = moves.dues.length + moves.promises.length > 0;
  const save = async () => {
    const answer = await moving.write({ moves });
    if (answer.ok) setMoves(NO_MOVES);
  };
  const verdict = (
    <ScheduleVerdict
      words={`${isMoved ? 'With that change: ' : ''}${scheduleWords(trial, nameOf)}`}
      isLate={isLate}
      fixes={fixes === undefined ? [] : dateFixWords(fixes, nameOf, { locale, on })}
    />
  );
  return (
    <Page
      title="Days"
      under="Drag a flag, or select it and press an arrow key, to see what another day would change. Nothing is saved until you press Save."
      aside={<Choice label="Scale" value={width} options={WIDTHS} onChange={setWidth} />}
      action={
        isMoved && (
          <Button look="main" disabled={moving.isWriting} onClick={() => void save()}>
            {moves.dues.length + moves.promises.length === 1 ? 'Save the new day' : 'Save the new days'}
          </Button>
        )
      }
    >
      {verdict}
      <ProblemNotice problem={moving.problem ?? trialProblem} />
      <TimeLine
        rows={rows}
        weeks={trial.weeks}
        scale={scaleOf(rows, trial.weeks, on)}
        daysOff={daysOff}
        dayWidth={DAY_WIDTH[width]}
        on={on}
        moves={moves}
        onMove={setMoves}
      />
      {isMoved && (
        <MovedDays rows={rows} saved={saved} trial={trial} on={on} onUndo={() => setMoves(NO_MOVES)} />
      )}
      <DaysTable rows={rows} weeks={trial.weeks} on={on} />
      <OtherCalendars on={on} />
    </Page>
  );
}

function NoProjects() {
  return (
    <Page title="Days">
      <EmptyState title="No open projects">
        <p>
          Projects with something left to do appear here on a calendar: when to work on each stage, what is at
          the quilter, and what is due.
        </p>
        <p>Set how long you sew on each weekday, and your days off, on the Workshop page.</p>
      </EmptyState>
    </Page>
  );
}
