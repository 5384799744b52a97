import { type BenchTime, benchTime as benchTimeSchema } from '#core/domain/bench-time';
import type { Workshop } from '#core/domain/workshop';
import { formatMinutes, type Minutes, minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { DaysOff } from './days-off';
import styles from './workshop.module.css';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const LONGEST_DAY = 1440;

/** How long the maker sews on each weekday, and the days she does not: what all dates are reckoned from. */
export function BenchHours({ workshop }: { readonly workshop: Workshop }) {
  const changing = useWrite('workshop:change');
  const { benchTime } = workshop;
  const keep = (part: Partial<BenchTime>) => {
    const checked = benchTimeSchema.safeParse({ ...benchTime, ...part });
    if (checked.success) void changing.write({ workshop: { ...workshop, benchTime: checked.data } });
  };
  const keepDay = (day: number, minutes: Minutes | null) => {
    const weekMinutes = benchTime.weekMinutes.map((kept, index) => (index === day ? (minutes ?? 0) : kept));
    keep({ weekMinutes: weekMinutes as unknown as BenchTime['weekMinutes'] });
  };
  const week = benchTime.weekMinutes.reduce((sum, minutes) => sum + minutes, 0);
  return (
    <section className={styles['part']} aria-labelledby="bench-hours">
      <h2 id="bench-hours">Time at the bench</h2>
      <p className={styles['quiet']}>
        {week === 0
          ? 'No hours at all: nothing can be planned.'
          : `${formatMinutes(week)} in a week. All days by which things must be begun, sent or done are worked out from this.`}
      </p>
      <div className={styles['week']}>
        {WEEKDAYS.map((name, day) => (
          <MinutesField
            key={name}
            label={name}
            value={minutesFromWhole(benchTime.weekMinutes[day] ?? 0)}
            isOptional
            optionalWords=""
            onCommit={(minutes) => keepDay(day, capped(minutes))}
          />
        ))}
      </div>
      <Checkbox
        label="Remind me on the desktop"
        help="Once a day, of what is due, must be sent or comes back today or tomorrow. Only while Ringbound is open."
        isChecked={benchTime.remindsOfDays}
        onChange={(remindsOfDays) => keep({ remindsOfDays })}
      />
      <DaysOff daysOff={benchTime.daysOff} onChange={(daysOff) => keep({ daysOff })} />
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}

/** A day has no more than its 24 hours. */
function capped(minutes: Minutes | null): Minutes | null {
  return minutes === null || minutes <= LONGEST_DAY ? minutes : minutesFromWhole(LONGEST_DAY);
}
