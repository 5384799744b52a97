import styles from '#renderer/features/stash/stash.module.css';
import { Field } from '#renderer/ui/fields/field';

interface ColorFieldProps {
  readonly label: string;
  /** Six hex digits with a hash. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** A color, through the system's own color control. */
export function ColorField({ value, onChange, ...frame }: ColorFieldProps) {
  return (
    <Field {...frame}>
      {({ inputId, describedBy }) => (
        <input
          id={inputId}
          type="color"
          className={styles['color']}
          value={value}
          aria-describedby={describedBy}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}
