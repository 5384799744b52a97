import { type BenchTime, benchTimeSchema } from '#core/domain/bench-time';
import type { Workshop } from '#core/domain/workshop';
import { formatMinutes, type Minutes, minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { DaysOff } from './days-off';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const MINUTES_IN_DAY = 1440;

/** How long the maker sews on each weekday, and their days off: the base of all planned dates. */
export function BenchHours({ workshop }: { readonly workshop: Workshop }) {
  const changing = useWrite('workshop:change');
  const { benchTime } = workshop;
  const save = (part: Partial<BenchTime>) => {
    const checked = benchTimeSchema.safeParse({ ...benchTime, ...part });
    if (checked.success) void changing.write({ workshop: { ...workshop, benchTime: checked.data } });
  };
  const saveDay = (day: number, minutes: Minutes | null) => {
    const weekMinutes = benchTime.weekMinutes.map((saved, index) => (index === day ? (minutes ?? 0) : saved));
    save({ weekMinutes: weekMinutes as unknown as BenchTime['weekMinutes'] });
  };
  const week = benchTime.weekMinutes.reduce((sum, minutes) => sum + minutes, 0);
  return (
    <section className={layout['stack']} aria-labelledby="bench-hours">
      <h2 id="bench-hours">Sewing time</h2>
      <p className={layout['quiet']}>
        {week === 0
          ? 'No sewing time yet, so Ringbound can’t plan dates.'
          : `${formatMinutes(week)} a week. Ringbound uses this to figure out when to start, mail and finish each project.`}
      </p>
      <div className={styles['week']}>
        {WEEKDAYS.map((name, day) => (
          <MinutesField
            key={name}
            label={name}
            value={minutesFromWhole(benchTime.weekMinutes[day] ?? 0)}
            isOptional
            optionalWords=""
            onCommit={(minutes) => saveDay(day, capped(minutes))}
          />
        ))}
      </div>
      <Checkbox
        label="Remind me on the desktop"
        help="One reminder a day about anything due, to be mailed, or coming back today or tomorrow. Only while Ringbound is open."
        isChecked={benchTime.remindsOfDays}
        onChange={(remindsOfDays) => save({ remindsOfDays })}
      />
      <DaysOff daysOff={benchTime.daysOff} onChange={(daysOff) => save({ daysOff })} />
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}

/** Limits the time to the 24 hours of a day. */
function capped(minutes: Minutes | null): Minutes | null {
  return minutes === null || minutes <= MINUTES_IN_DAY ? minutes : minutesFromWhole(MINUTES_IN_DAY);
}
