import { useMemo, useState } from 'react';
import type { DayMoves } from '#core/contract/dates';
import { NO_MOVES, useMending, usePlannedDates } from '#renderer/bridge/dates';
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
import { rowsOf, scaleOf } from './view-model';

const WIDTHS = [
  { value: 'near', words: 'Days' },
  { value: 'middle', words: 'Weeks' },
  { value: 'far', words: 'Months' },
] as const;
type Width = (typeof WIDTHS)[number]['value'];
const DAY_WIDTH: Readonly<Record<Width, number>> = { near: 28, middle: 13, far: 5 };

/** All pieces on one calendar: what is worked when, what is away, what is due, and what would come of moving a day. */
export function DaysPage() {
  const on = today();
  const { locale } = useDisplay();
  const [moves, setMoves] = useState<DayMoves>(NO_MOVES);
  const [width, setWidth] = useState<Width>('middle');
  const { value: list, problem } = useRead('project:list', { archived: false });
  const { value: kept, problem: planProblem } = usePlannedDates(on);
  const { value: supposed = kept } = usePlannedDates(on, moves);
  const daysOff = useOpening()?.workshop.benchTime.daysOff ?? [];
  const moving = useWrite('dates:move');
  const isLate = (supposed?.plan.largestLateDays ?? 0) > 0;
  const mending = useMending(on, moves, isLate);
  const glances = list?.items;
  const rows = useMemo(
    () => (glances === undefined || supposed === undefined ? [] : rowsOf(glances, supposed, moves)),
    [glances, supposed, moves],
  );
  if (glances === undefined || kept === undefined || supposed === undefined) {
    return (
      <Page title="Days">
        <ProblemNotice problem={problem ?? planProblem} />
      </Page>
    );
  }
  if (rows.length === 0) return <NothingPlanned />;
  const nameOf = (id: string) => rows.find((row) => row.id === id)?.name ?? '';
  const isMoved = moves.dues.length + moves.promises.length > 0;
  const keep = async () => {
    const answer = await moving.write({ moves });
    if (answer.ok) setMoves(NO_MOVES);
  };
  const verdict = (
    <ScheduleVerdict
      says={`${isMoved ? 'As supposed: ' : ''}${scheduleWords(supposed, nameOf)}`}
      isLate={isLate}
      mending={mending === undefined ? [] : dateFixWords(mending, nameOf, { locale, on })}
    />
  );
  return (
    <Page
      title="Days"
      under="Drag a flag, or choose it and press the arrow keys, to see what another day would do. Nothing is kept until you say so."
      aside={<Choice label="Scale" value={width} options={WIDTHS} onChange={setWidth} />}
      action={
        isMoved && (
          <Button look="main" disabled={moving.isWriting} onClick={() => void keep()}>
            {moves.dues.length + moves.promises.length === 1 ? 'Keep the new day' : 'Keep the new days'}
          </Button>
        )
      }
    >
      {verdict}
      <ProblemNotice problem={moving.problem} />
      <TimeLine
        rows={rows}
        weeks={supposed.weeks}
        scale={scaleOf(rows, supposed.weeks, on)}
        daysOff={daysOff}
        dayWidth={DAY_WIDTH[width]}
        on={on}
        moves={moves}
        onMove={setMoves}
      />
      {isMoved && (
        <MovedDays rows={rows} kept={kept} supposed={supposed} on={on} onPutBack={() => setMoves(NO_MOVES)} />
      )}
      <DaysTable rows={rows} weeks={supposed.weeks} on={on} />
      <OtherCalendars on={on} />
    </Page>
  );
}

function NothingPlanned() {
  return (
    <Page title="Days">
      <EmptyState title="Nothing is planned">
        <p>
          Pieces with something left to do appear here on a calendar: when each stage is worked, what is away,
          and what is due.
        </p>
        <p>How long you sew on each weekday, and your days off, stand on the Workshop page.</p>
      </EmptyState>
    </Page>
  );
}
