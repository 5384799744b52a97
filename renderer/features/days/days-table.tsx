import { Link } from 'react-router';
import type { PlannedDates } from '#core/contract/dates';
import type { CalendarDate } from '#core/units/calendar-date';
import { dateWords, daysWords, weekdayWords } from '#renderer/text/dates';
import { daysAwayWords } from '#renderer/text/trip-words';
import { useDisplay } from '#renderer/ui/base/display';
import { weekWords } from './scale-head';
import type { ProjectRow } from './calendar-rows';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './words.module.css';

interface DaysTableProps {
  readonly rows: readonly ProjectRow[];
  readonly weeks: PlannedDates['weeks'];
  readonly on: CalendarDate;
}

/** The calendar as tables, for reading and for a screen reader. */
export function DaysTable({ rows, weeks, on }: DaysTableProps) {
  const { locale } = useDisplay();
  const day = (date: CalendarDate | null | undefined) =>
    date === null || date === undefined ? '' : weekdayWords(date, locale, on);
  return (
    <details className={layout['fold']}>
      <summary>Show as a table</summary>
      <div className={styles['tables']}>
        <table className={styles['table']}>
          <caption>Projects</caption>
          <thead>
            <tr>
              {['Project', 'Start by', 'Send out by', 'Away for', 'Back', 'Done', 'Due', 'On time'].map(
                (column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ id, name, dates, bars, due, back }) => {
              const away = bars.map((bar) => bar.away).filter((one) => one !== null);
              const [first] = dates.steps;
              const sending = dates.steps.find(({ kind }, place) => kind === 'wait' && place > 0);
              return (
                <tr key={id}>
                  <th scope="row">
                    <Link to={`/projects/${id}`}>{name}</Link>
                  </th>
                  <td>{first?.kind === 'work' ? day(first.latestStartOn) : 'at the quilter'}</td>
                  <td>{day(sending?.latestStartOn)}</td>
                  <td>{away.map(daysAwayWords).join('; ')}</td>
                  <td>{day(back?.on)}</td>
                  <td>{dates.finishOn === null ? 'no sewing time' : day(dates.finishOn)}</td>
                  <td>{day(due?.on)}</td>
                  <td>{inTimeWords(dates.lateDays)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
        <table className={styles['table']}>
          <caption>Weeks</caption>
          <thead>
            <tr>
              <th scope="col">Week of</th>
              <th scope="col">Hours</th>
            </tr>
          </thead>
          <tbody>
            {weeks.map(({ from, plannedMinutes, roomMinutes, shortMinutes }) => (
              <tr key={from}>
                <th scope="row">{dateWords(from, locale, on)}</th>
                <td>{weekWords(plannedMinutes, roomMinutes, shortMinutes)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

function inTimeWords(lateDays: number | null): string {
  if (lateDays === null) return 'no due date';
  return lateDays > 0 ? `${daysWords(lateDays)} late` : 'yes';
}
