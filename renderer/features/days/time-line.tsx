import { useEffect, useRef } from 'react';
import type { DayMoves, PlannedDates } from '#core/contract/dates';
import type { DayOff } from '#core/domain/bench-time';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { VirtualList } from '#renderer/ui/page/virtual-list';
import { ProjectLine } from './project-line';
import { ScaleHead } from './scale-head';
import { type ProjectRow, type Scale, withDue, withPromise } from './calendar-rows';
import styles from './days.module.css';

interface TimeLineProps {
  readonly rows: readonly ProjectRow[];
  readonly weeks: PlannedDates['weeks'];
  readonly scale: Scale;
  readonly daysOff: readonly DayOff[];
  /** In CSS pixels. */
  readonly dayWidth: number;
  readonly on: CalendarDate;
  readonly moves: DayMoves;
  readonly onMove: (moves: DayMoves) => void;
}

const ROW_HEIGHT = 72;
/** How many days before today are in view at first. */
const DAYS_BEFORE = 3;

/** The calendar: weeks with their hours at the top, a row for each project below. It scrolls sideways within the page. */
export function TimeLine({ rows, weeks, scale, daysOff, dayWidth, on, moves, onMove }: TimeLineProps) {
  const scroller = useRef<HTMLDivElement>(null);
  const head = useRef<HTMLDivElement>(null);
  const toToday = Math.max(0, daysBetween(scale.from, on) - DAYS_BEFORE) * dayWidth;
  useEffect(() => {
    if (scroller.current !== null) scroller.current.scrollLeft = toToday;
  }, [toToday]);
  // A part that scrolls sideways cannot have a head that sticks to the page, so the head is outside and is moved along.
  const moveHead = () => {
    if (head.current !== null && scroller.current !== null)
      head.current.scrollLeft = scroller.current.scrollLeft;
  };
  return (
    <div className={styles['timeLine']} style={{ '--day': `${String(dayWidth)}px`, '--days': scale.days }}>
      <div ref={head} className={styles['headStrip']} aria-hidden>
        <div className={styles['sheet']}>
          <ScaleHead scale={scale} weeks={weeks} dayWidth={dayWidth} on={on} />
        </div>
      </div>
      <section
        ref={scroller}
        className={styles['scroller']}
        aria-label="Calendar"
        tabIndex={0}
        onScroll={moveHead}
      >
        <div className={styles['sheet']}>
          <Ground scale={scale} daysOff={daysOff} on={on} />
          <VirtualList label="Projects" items={rows} keyOf={({ id }) => id} estimate={ROW_HEIGHT}>
            {(row) => (
              <ProjectLine
                row={row}
                scale={scale}
                dayWidth={dayWidth}
                on={on}
                onMoveDue={(mark) => onMove(withDue(moves, row.id, mark))}
                onMoveBack={(mark) => {
                  if (row.back !== null) onMove(withPromise(moves, row.back.tripId, mark));
                }}
              />
            )}
          </VirtualList>
        </div>
      </section>
    </div>
  );
}

/** Days off and today, drawn behind everything. */
function Ground({ scale, daysOff, on }: Pick<TimeLineProps, 'scale' | 'daysOff' | 'on'>) {
  const place = (day: CalendarDate) => daysBetween(scale.from, day);
  return (
    <div className={styles['ground']} aria-hidden>
      {daysOff
        .filter(({ to }) => place(to) >= 0)
        .map(({ from, to }) => (
          <div
            key={`${from} ${to}`}
            className={styles['dayOff']}
            style={{ '--at': Math.max(0, place(from)), '--long': place(to) - Math.max(0, place(from)) + 1 }}
          />
        ))}
      <div className={styles['today']} style={{ '--at': place(on) }} />
    </div>
  );
}
