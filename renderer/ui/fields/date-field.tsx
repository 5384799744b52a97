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
    <SystemField
      {...frame}
      type="date"
      value={value ?? ''}
      max="9999-12-31"
      onChange={(text) => {
        const date = calendarDateFromText(text);
        onChange(date.ok ? date.value : null);
      }}
    />
  );
}

interface MonthFieldProps extends FieldFrame {
  /** `2027-02`, or empty. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** A month, entered in the system's own control. */
export function MonthField(props: MonthFieldProps) {
  return <SystemField {...props} type="month" max="9999-12" />;
}

interface SystemFieldProps extends MonthFieldProps {
  readonly type: 'date' | 'month';
  readonly max: string;
}

function SystemField({ type, value, max, onChange, ...frame }: SystemFieldProps) {
  return (
    <Field {...frame}>
      {({ inputId, describedBy }) => (
        <input
          id={inputId}
          type={type}
          className={classes(styles['input'], styles['short'])}
          value={value}
          max={max}
          aria-describedby={describedBy}
          aria-invalid={frame.problem !== null && frame.problem !== undefined}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}
