import { useLayoutEffect, useRef, useState } from 'react';
import type { Result } from '#core/result';
import { afterPress } from '../base/after-press';
import { classes } from '../base/classes';
import { useDraftText } from '../base/draft';
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
 * problem below it. That text is part of the draft of its form, or else of its page, where Escape brings back the last value.
 */
export function TypedField<Value>(props: TypedFieldProps<Value> & Reading<Value>) {
  const { value, onCommit, unit, placeholder, autoFocus = false, inputMode = 'text' } = props;
  const { format, read, emptyProblem, ...frame } = props;
  const input = useRef<HTMLInputElement>(null);
  const isOptional = props.isOptional === true;
  const typed = useTypedText({ value, onCommit, format, read, emptyProblem }, isOptional, props.label);
  // React focuses the field before its dialog is open. The dialog looks for the attribute when it opens, so it is set as well.
  useLayoutEffect(() => {
    if (input.current !== null) input.current.autofocus = autoFocus;
  }, [autoFocus]);
  useFormField({ commit: typed.commit, focus: () => input.current?.focus() });
  const problem = typed.problem ?? (typed.isTyped ? null : (props.problem ?? null));
  return (
    <Field {...frame} problem={problem}>
      {({ inputId, describedBy }) => (
        <span className={styles['row']}>
          <input
            ref={input}
            id={inputId}
            className={classes(styles['input'], styles['short'])}
            value={typed.text}
            placeholder={placeholder}
            inputMode={inputMode}
            autoComplete="off"
            spellCheck={false}
            autoFocus={autoFocus}
            aria-describedby={describedBy}
            aria-invalid={problem !== null}
            aria-required={!isOptional}
            onChange={(event) => typed.type(event.target.value)}
            // Typing replaces the proposed value.
            onFocus={(event) => {
              if (autoFocus) event.target.select();
            }}
            onBlur={() => {
              if (typed.isTyped) typed.commit();
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter') typed.commit();
              if (event.key === 'Escape' && typed.isTyped && !typed.isOfForm) {
                event.stopPropagation();
                event.preventDefault();
                typed.putBack();
              }
            }}
          />
          {unit !== undefined && <span className={styles['unit']}>{unit}</span>}
        </span>
      )}
    </Field>
  );
}

type TypedText<Value> = Pick<TypedFieldProps<Value>, 'value' | 'onCommit'> &
  Omit<Reading<Value>, 'inputMode'>;

/** The typed text of a field, from the first key to the value that is read from it. */
function useTypedText<Value>(field: TypedText<Value>, isOptional: boolean, label: string) {
  const { value, onCommit, format, read, emptyProblem } = field;
  const kept = useDraftText(label);
  const [own, setOwn] = useState<string | null>(null);
  const draft = kept === null ? own : kept.text;
  const setDraft = kept === null ? setOwn : kept.keep;
  const [problem, setProblem] = useState<string | null>(null);
  const text = draft ?? (value === null ? '' : format(value));
  const putBack = () => {
    setDraft(null);
    setProblem(null);
  };
  const accept = (accepted: Value | null): boolean => {
    putBack();
    if (accepted !== value) onCommit(accepted);
    return true;
  };
  const refuse = (words: string): boolean => {
    afterPress(() => setProblem(words));
    return false;
  };
  const commit = (): boolean => {
    if (text.trim() === '') return isOptional ? accept(null) : refuse(emptyProblem);
    if (draft === null) return true;
    const result = read(draft);
    return result.ok ? accept(result.value) : refuse(result.error);
  };
  const type = (next: string) => {
    setDraft(next);
    // A problem disappears as soon as the text can be read. A new one appears only when the field is left.
    if (problem !== null && (read(next).ok || next.trim() === '')) setProblem(null);
  };
  return { text, problem, isTyped: draft !== null, isOfForm: kept?.isOfForm === true, commit, type, putBack };
}
