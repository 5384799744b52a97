import { useLayoutEffect, useRef, useState } from 'react';
import type { Result } from '#core/result';
import { afterPress } from '../base/after-press';
import { classes } from '../base/classes';
import { Field, type FieldFrame } from './field';
import { useFormField } from './form';
import styles from './field.module.css';

export interface TypedFieldProps<Value> extends FieldFrame {
  readonly value: Value | null;
  /** Called with the value that was read, or with null for an optional field that was emptied. */
  readonly onCommit: (value: Value | null) => void;
  readonly unit?: string | undefined;
  readonly placeholder?: string | undefined;
  readonly autoFocus?: boolean;
}

interface Reading<Value> {
  readonly format: (value: Value) => string;
  /** Reads the typed text. A failure is the problem to show at the field. */
  readonly read: (text: string) => Result<Value, string>;
  readonly emptyProblem: string;
  readonly inputMode?: 'text' | 'decimal' | 'numeric';
}

/**
 * A field whose typed text becomes a value on Enter or when the field is left. Text that cannot be read stays as typed, with the
 * problem below it; Escape brings back the last value.
 */
export function TypedField<Value>({
  value,
  onCommit,
  unit,
  placeholder,
  autoFocus = false,
  format,
  read,
  emptyProblem,
  inputMode = 'text',
  ...frame
}: TypedFieldProps<Value> & Reading<Value>) {
  const input = useRef<HTMLInputElement>(null);
  const [draft, setDraft] = useState<string | null>(null);
  const [ownProblem, setOwnProblem] = useState<string | null>(null);
  // React focuses the field before its dialog is open. The dialog looks for the attribute when it opens, so it is set as well.
  useLayoutEffect(() => {
    if (input.current !== null) input.current.autofocus = autoFocus;
  }, [autoFocus]);
  const shown = draft ?? (value === null ? '' : format(value));

  const take = (taken: Value | null): boolean => {
    setDraft(null);
    setOwnProblem(null);
    if (taken !== value) onCommit(taken);
    return true;
  };
  const refuse = (words: string): boolean => {
    afterPress(() => setOwnProblem(words));
    return false;
  };
  const commit = (): boolean => {
    if (shown.trim() === '') return frame.isOptional === true ? take(null) : refuse(emptyProblem);
    if (draft === null) return true;
    const result = read(draft);
    return result.ok ? take(result.value) : refuse(result.error);
  };
  useFormField({ commit, focus: () => input.current?.focus() });
  const type = (text: string) => {
    setDraft(text);
    // A problem disappears as soon as the text can be read. A new one appears only when the field is left.
    if (ownProblem !== null && (read(text).ok || text.trim() === '')) setOwnProblem(null);
  };
  const putBack = () => {
    setDraft(null);
    setOwnProblem(null);
  };

  const problem = ownProblem ?? (draft === null ? (frame.problem ?? null) : null);
  return (
    <Field {...frame} problem={problem}>
      {({ inputId, describedBy }) => (
        <span className={styles['row']}>
          <input
            ref={input}
            id={inputId}
            className={classes(styles['input'], styles['short'])}
            value={shown}
            placeholder={placeholder}
            inputMode={inputMode}
            autoComplete="off"
            spellCheck={false}
            autoFocus={autoFocus}
            aria-describedby={describedBy}
            aria-invalid={problem !== null}
            aria-required={frame.isOptional !== true}
            onChange={(event) => type(event.target.value)}
            // Typing replaces the proposed value.
            onFocus={(event) => {
              if (autoFocus) event.target.select();
            }}
            onBlur={() => {
              if (draft !== null) commit();
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter') commit();
              if (event.key === 'Escape' && draft !== null) {
                event.stopPropagation();
                event.preventDefault();
                putBack();
              }
            }}
          />
          {unit !== undefined && <span className={styles['unit']}>{unit}</span>}
        </span>
      )}
    </Field>
  );
}
