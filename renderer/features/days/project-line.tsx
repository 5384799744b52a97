import { Link } from 'react-router';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { dateWords, daysWords, weekdayWords } from '#renderer/text/dates';
import { daysAwayWords } from '#renderer/text/trip-words';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { DayMark } from './day-mark';
import type { Bar, Mark, ProjectRow, Scale } from './calendar-rows';
import styles from './days.module.css';

interface ProjectLineProps {
  readonly row: ProjectRow;
  readonly scale: Scale;
  readonly dayWidth: number;
  readonly on: CalendarDate;
  readonly onMoveDue: (mark: Mark) => void;
  readonly onMoveBack: (mark: Mark) => void;
}

/** One project: its name and finish date at the left, its stages as bars, and the days that can be moved. */
export function ProjectLine({ row, scale, dayWidth, on, onMoveDue, onMoveBack }: ProjectLineProps) {
  const { locale } = useDisplay();
  const { id, name, bars, due, back, dates } = row;
  const isLate = (dates.lateDays ?? 0) > 0;
  const markProps = { scale, dayWidth, on };
  return (
    <div className={styles['project']}>
      <div className={styles['projectName']}>
        <Link to={`/projects/${id}`} title={name}>
          {name}
        </Link>
        <span className={classes(styles['ends'], isLate && styles['late'])}>{endWords(row, locale, on)}</span>
      </div>
      <div className={styles['track']}>
        {bars.map((bar) => (
          <StageBar key={bar.key} bar={bar} scale={scale} dayWidth={dayWidth} locale={locale} on={on} />
        ))}
        {back !== null && (
          <DayMark
            {...markProps}
            kind="back"
            label={`${name}, back from ${back.withWhom}`}
            flag="back"
            mark={back}
            onMove={onMoveBack}
          />
        )}
        {due !== null && (
          <DayMark
            {...markProps}
            kind="due"
            label={`${name}, due`}
            flag="due"
            mark={due}
            isLate={isLate}
            onMove={onMoveDue}
          />
        )}
      </div>
    </div>
  );
}

function endWords({ dates }: ProjectRow, locale: string, on: CalendarDate): string {
  if (dates.finishOn === null) return 'no sewing time';
  const late = dates.lateDays ?? 0;
  const done = `done ${weekdayWords(dates.finishOn, locale, on)}`;
  return late > 0 ? `${done}, ${daysWords(late)} late` : done;
}

/** In CSS pixels. A shorter bar shows its name only as a tooltip. */
const ROOM_FOR_WORDS = 44;

interface StageBarProps {
  readonly bar: Bar;
  readonly scale: Scale;
  readonly dayWidth: number;
  readonly locale: string;
  readonly on: CalendarDate;
}

function StageBar({ bar, scale, dayWidth, locale, on }: StageBarProps) {
  const at = daysBetween(scale.from, bar.from);
  const long = Math.min(scale.days, daysBetween(scale.from, bar.to) + 1) - at;
  if (long <= 0) return null;
  const look = bar.kind === 'away' ? 'away' : bar.state === 'in-hand' ? 'inHand' : 'planned';
  const away = bar.away === null ? '' : ` · ${daysAwayWords(bar.away)}`;
  const days = `${dateWords(bar.from, locale, on)} to ${dateWords(bar.to, locale, on)}`;
  return (
    <span
      className={classes(styles['bar'], styles[look])}
      style={{ '--at': at, '--long': long }}
      title={`${bar.name}, ${bar.kind === 'away' ? 'at the quilter' : 'at home'} ${days}${away}`}
      aria-hidden
    >
      {long * dayWidth >= ROOM_FOR_WORDS && `${bar.name}${away}`}
    </span>
  );
}
