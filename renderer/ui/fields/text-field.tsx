import { type ChangeEvent, useRef, useState } from 'react';
import { classes } from '../base/classes';
import { Field, type FieldFrame } from './field';
import { useFormField } from './form';
import styles from './field.module.css';

interface TextFieldProps extends FieldFrame {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** For text that is saved when the field is left, not while it is typed. */
  readonly onBlur?: () => void;
  readonly maximum?: number | undefined;
  readonly placeholder?: string;
  readonly isLong?: boolean;
  readonly autoFocus?: boolean;
  readonly suggestions?: readonly string[];
  /** The problem of a field that is empty when the form is submitted. Without it, the field may be empty. */
  readonly emptyProblem?: string;
}

/** Text in one line, or in several with `isLong`. */
export function TextField({ emptyProblem, ...props }: TextFieldProps) {
  const {
    value,
    onChange,
    onBlur,
    maximum,
    placeholder,
    isLong = false,
    autoFocus = false,
    suggestions = [],
  } = props;
  const input = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  const [isLeftEmpty, setIsLeftEmpty] = useState(false);
  const isEmpty = value.trim() === '';
  const commit = () => {
    setIsLeftEmpty(isEmpty);
    return emptyProblem === undefined || !isEmpty;
  };
  useFormField({ commit, focus: () => input.current?.focus() });
  const problem = isLeftEmpty && isEmpty ? (emptyProblem ?? null) : (props.problem ?? null);
  return (
    <Field label={props.label} help={props.help} isOptional={props.isOptional} problem={problem}>
      {({ inputId, describedBy }) => {
        const shared = {
          ref: input,
          id: inputId,
          value,
          placeholder,
          autoFocus,
          maxLength: maximum,
          onBlur,
          'aria-describedby': describedBy,
          'aria-invalid': problem !== null,
          'aria-required': emptyProblem !== undefined,
          onChange: (event: ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) =>
            onChange(event.target.value),
        };
        if (isLong)
          return <textarea {...shared} rows={3} className={classes(styles['input'], styles['area'])} />;
        const listId = suggestions.length === 0 ? undefined : `${inputId}-list`;
        return (
          <>
            <input {...shared} className={styles['input']} autoComplete="off" list={listId} />
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
