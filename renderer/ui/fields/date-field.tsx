import { type CalendarDate, calendarDateFromText } from '#core/units/calendar-date';
import { classes } from '../base/classes';
import { Field, type FieldFrame } from './field';
import styles from './field.module.css';

interface DateFieldProps extends FieldFrame {
  readonly value: CalendarDate | null;
  readonly onChange: (value: CalendarDate | null) => void;
}

/** A day, entered in the system's own date control. An unfinished date counts as empty. */
export function DateField({ value, onChange, ...frame }: DateFieldProps) {
  return (
    <Field {...frame}>
      {({ inputId, describedBy }) => (
        <input
          id={inputId}
          type="date"
          className={classes(styles['input'], styles['short'])}
          value={value ?? ''}
          max="9999-12-31"
          aria-describedby={describedBy}
          aria-invalid={frame.problem !== null && frame.problem !== undefined}
          onChange={(event) => {
            const date = calendarDateFromText(event.target.value);
            onChange(date.ok ? date.value : null);
          }}
        />
      )}
    </Field>
  );
}
