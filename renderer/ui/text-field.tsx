import { classes } from './classes';
import { Field, type FieldFrame } from './field';
import styles from './field.module.css';

interface TextFieldProps extends FieldFrame {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** For what is saved as it is left rather than as it is typed. */
  readonly onBlur?: () => void;
  readonly maximum?: number | undefined;
  readonly placeholder?: string;
  readonly isLong?: boolean;
  readonly autoFocus?: boolean;
  readonly suggestions?: readonly string[];
}

/** Words: one line, or as many as are written. */
export function TextField(props: TextFieldProps) {
  const {
    value,
    onChange,
    onBlur,
    maximum,
    placeholder,
    isLong = false,
    autoFocus = false,
    suggestions = [],
    ...frame
  } = props;
  return (
    <Field {...frame}>
      {({ inputId, describedBy }) => {
        const shared = {
          id: inputId,
          value,
          placeholder,
          autoFocus,
          maxLength: maximum,
          onBlur,
          'aria-describedby': describedBy,
          'aria-invalid': frame.problem !== null && frame.problem !== undefined,
        };
        if (isLong) {
          return (
            <textarea
              {...shared}
              rows={3}
              className={classes(styles['input'], styles['area'])}
              onChange={(event) => onChange(event.target.value)}
            />
          );
        }
        const listId = suggestions.length === 0 ? undefined : `${inputId}-list`;
        return (
          <>
            <input
              {...shared}
              className={styles['input']}
              autoComplete="off"
              list={listId}
              onChange={(event) => onChange(event.target.value)}
            />
            {listId !== undefined && (
              <datalist id={listId}>
                {suggestions.map((one) => (
                  <option key={one} value={one} />
                ))}
              </datalist>
            )}
          </>
        );
      }}
    </Field>
  );
}
