import { useState } from 'react';
import type { BenchTime, DayOff } from '#core/domain/bench-time';
import type { CalendarDate } from '#core/units/calendar-date';
import { dateWords, today } from '#renderer/text/dates';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Button } from '#renderer/ui/page/button';
import { DateField } from '#renderer/ui/fields/date-field';
import { useDisplay } from '#renderer/ui/base/display';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

interface DaysOffProps {
  readonly daysOff: BenchTime['daysOff'];
  readonly onChange: (daysOff: BenchTime['daysOff']) => void;
}

/** The days off, in order, and the fields to add more. */
export function DaysOff({ daysOff, onChange }: DaysOffProps) {
  const { locale } = useDisplay();
  const on = today();
  const sorted = daysOff.toSorted((one, other) => one.from.localeCompare(other.from));
  const words = ({ from, to }: DayOff) =>
    from === to
      ? dateWords(from, locale, on)
      : `${dateWords(from, locale, on)} to ${dateWords(to, locale, on)}`;
  return (
    <div className={layout['stack']}>
      <h3>Days off</h3>
      {sorted.length === 0 ? (
        <p className={layout['quiet']}>
          No days off yet: holidays, visits, fairs, anything that keeps you from sewing.
        </p>
      ) : (
        <ul className={layout['lines']}>
          {sorted.map((day) => (
            <li key={`${day.from} ${day.to} ${day.why}`} className={styles['line']}>
              <span className={styles['words']}>
                <span className={styles['name']}>{words(day)}</span>
                {day.why !== '' && <span className={layout['quiet']}>{day.why}</span>}
              </span>
              <Button
                isSmall
                aria-label={`Delete the day off ${words(day)}`}
                onClick={() => onChange(daysOff.filter((one) => one !== day))}
              >
                Delete
              </Button>
            </li>
          ))}
        </ul>
      )}
      <NewDayOff onAdd={(day) => onChange([...daysOff, day])} />
    </div>
  );
}

function NewDayOff({ onAdd }: { readonly onAdd: (day: DayOff) => void }) {
  const draft = useFormDraft('days-off');
  const [from, setFrom] = useDraftValue<CalendarDate | null>(draft, 'from', null);
  const [to, setTo] = useDraftValue<CalendarDate | null>(draft, 'to', null);
  const [why, setWhy] = useDraftValue(draft, 'why', '');
  const [problem, setProblem] = useState<string | null>(null);
  const add = () => {
    const last = to ?? from;
    if (from === null || last === null || last < from) {
      setProblem(from === null ? 'Choose the first day off.' : 'The last day off is before the first.');
      return;
    }
    onAdd({ from, to: last, why: why.trim() });
    draft.forget();
    setProblem(null);
  };
  return (
    <div className={styles['newDayOff']}>
      <DateField label="First day off" value={from} onChange={setFrom} problem={problem} />
      <DateField label="Last day off" optionalWords="if several" isOptional value={to} onChange={setTo} />
      <TextField label="Reason" isOptional maximum={120} value={why} onChange={setWhy} />
      <Button onClick={add}>Add days off</Button>
    </div>
  );
}
