import type { PlannedDates } from '#core/contract/dates';
import { addDays, type CalendarDate, calendarDateParts, daysBetween } from '#core/units/calendar-date';
import { formatMinutes } from '#core/units/minutes';
import { dateWords, monthWords } from '#renderer/text/dates';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import type { Scale } from './calendar-rows';
import styles from './days.module.css';

interface ScaleHeadProps {
  readonly scale: Scale;
  readonly weeks: PlannedDates['weeks'];
  readonly dayWidth: number;
  readonly on: CalendarDate;
}

/** In CSS pixels. A narrower week has no room for words. */
const WIDE_WEEK = 84;

/** Months, the Mondays of the weeks, and how full each week is. */
export function ScaleHead({ scale, weeks, dayWidth, on }: ScaleHeadProps) {
  const { locale } = useDisplay();
  const mondays = Array.from({ length: scale.days / 7 }, (_, week) => addDays(scale.from, 7 * week));
  const place = (day: CalendarDate) => Math.max(0, daysBetween(scale.from, day));
  const isWide = 7 * dayWidth >= WIDE_WEEK;
  return (
    <div className={styles['head']} aria-hidden>
      <div className={styles['corner']}>
        <span>Hours</span>
      </div>
      <div className={styles['months']}>
        {monthsOf(scale).map((first) => (
          <span key={first} className={styles['month']} style={{ '--at': place(first) }}>
            {monthWords(first, locale)}
          </span>
        ))}
      </div>
      <div className={styles['mondays']}>
        {mondays.map((monday) => (
          <span key={monday} className={styles['monday']} style={{ '--at': place(monday) }}>
            {calendarDateParts(monday).day}
          </span>
        ))}
      </div>
      <div className={styles['hours']}>
        {weeks.map(({ from, roomMinutes, plannedMinutes, shortMinutes }) => (
          <div
            key={from}
            className={classes(styles['week'], shortMinutes > 0 && styles['shortWeek'])}
            style={{ '--at': daysBetween(scale.from, from), '--full': fullness(plannedMinutes, roomMinutes) }}
            title={`Week of ${dateWords(from, locale, on)}: ${weekWords(plannedMinutes, roomMinutes, shortMinutes)}`}
          >
            <span className={styles['fill']} />
            <span className={styles['weekWords']}>
              {shortMinutes > 0
                ? `${hours(shortMinutes)}${isWide ? ' over' : ''}`
                : isWide && `${hours(plannedMinutes)} of ${hours(roomMinutes)}`}
            </span>
          </div>
        ))}
      </div>
    </div>
  );
}

/** How full a week is: `6 h planned of 8 h`. */
export function weekWords(planned: number, room: number, short: number): string {
  const used = `${formatMinutes(planned)} planned of ${formatMinutes(room)}`;
  return short > 0 ? `${used}; ${formatMinutes(short)} too little to be on time` : used;
}

function fullness(planned: number, room: number): number {
  return room === 0 ? 0 : Math.min(1, planned / room);
}

/** `6 h`, `2½ h`: rounded to half hours to save room. */
function hours(minutes: number): string {
  const halves = Math.round(minutes / 30);
  const whole = Math.floor(halves / 2);
  const half = halves % 2 === 1 ? '½' : '';
  if (halves === 0 && minutes > 0) return `${String(minutes)} min`;
  return `${whole === 0 && half !== '' ? '' : String(whole)}${half} h`;
}

/** The first day of the scale and the first of every month after it. A first month that is almost over has no label. */
function monthsOf({ from, days }: Scale): readonly CalendarDate[] {
  const all = Array.from({ length: days }, (_, day) => addDays(from, day));
  const firsts = all.filter((day) => calendarDateParts(day).day === 1);
  const next = firsts[0];
  const isShort = next !== undefined && daysBetween(from, next) < 10;
  return next === from || isShort ? firsts : [from, ...firsts];
}
