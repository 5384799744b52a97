import styles from './fabric-form.module.css';
import { Field } from '#renderer/ui/fields/field';

interface ColorFieldProps {
  readonly label: string;
  /** `#` and six hex digits. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** A color, chosen with the system's color picker. */
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
