import { type ReactNode, useId } from 'react';
import { classes } from '../base/classes';
import { Field, type FieldFrame, FieldProblemLine } from './field';
import styles from './field.module.css';

export interface Option<Value extends string | number> {
  readonly value: Value;
  readonly words: string;
  /** Drawn before the words, such as the outline of a shape. */
  readonly picture?: ReactNode;
}

interface ChoiceProps<Value extends string | number> extends FieldFrame {
  readonly value: Value;
  readonly options: readonly Option<Value>[];
  readonly onChange: (value: Value) => void;
}

/** A few options, all visible. Arrow keys move between them. */
export function Choice<Value extends string | number>({
  value,
  options,
  onChange,
  ...frame
}: ChoiceProps<Value>) {
  const id = useId();
  const { label, help, problem = null } = frame;
  const describedBy = [help !== undefined && `${id}-help`, problem !== null && `${id}-problem`].filter(
    (one) => one !== false,
  );
  return (
    <fieldset
      className={styles['field']}
      aria-describedby={describedBy.length === 0 ? undefined : describedBy.join(' ')}
    >
      <legend className={styles['label']}>{label}</legend>
      <div className={styles['choices']}>
        {options.map((option) => (
          <label key={option.value} className={styles['choice']}>
            <input
              type="radio"
              name={id}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            {option.picture}
            {option.words}
          </label>
        ))}
      </div>
      {help !== undefined && (
        <p id={`${id}-help`} className={styles['help']}>
          {help}
        </p>
      )}
      <FieldProblemLine id={`${id}-problem`} problem={problem} />
    </fieldset>
  );
}

/** Many options in a list that opens. */
export function Select<Value extends string | number>({
  value,
  options,
  onChange,
  ...frame
}: ChoiceProps<Value>) {
  return (
    <Field {...frame}>
      {({ inputId, describedBy }) => (
        <select
          id={inputId}
          className={classes(styles['input'])}
          value={value}
          aria-describedby={describedBy}
          onChange={(event) => {
            const chosen = options.find((option) => String(option.value) === event.target.value);
            if (chosen !== undefined) onChange(chosen.value);
          }}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.words}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
