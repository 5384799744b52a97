import { type ReactNode, useId } from 'react';
import { Typeset } from '../answers/typeset';
import styles from './field.module.css';

/** What every field has: its label, help, and problem. */
export interface FieldFrame {
  readonly label: string;
  readonly help?: string | undefined;
  readonly isOptional?: boolean | undefined;
  /** Shown beside the label: the field may stay empty. */
  readonly optionalWords?: string | undefined;
  /** A problem found by the store or a calculator. The field shows its own problem first. */
  readonly problem?: string | null | undefined;
}

interface FieldIds {
  readonly inputId: string;
  readonly describedBy: string | undefined;
}

interface FieldProps extends FieldFrame {
  readonly children: (ids: FieldIds) => ReactNode;
}

/** Label above, help and problem below, connected for a screen reader. */
export function Field(props: FieldProps) {
  const { label, help, isOptional = false, optionalWords = 'optional', problem = null, children } = props;
  const id = useId();
  const hasHelp = help !== undefined && help !== '';
  const describedBy = [hasHelp && `${id}-help`, problem !== null && `${id}-problem`].filter(
    (one) => one !== false,
  );
  return (
    <div className={styles['field']}>
      <label htmlFor={id} className={styles['label']}>
        {label}
        {isOptional && optionalWords !== '' && (
          <>
            {' '}
            <span className={styles['optional']}>{optionalWords}</span>
          </>
        )}
      </label>
      {children({ inputId: id, describedBy: describedBy.length === 0 ? undefined : describedBy.join(' ') })}
      {hasHelp && (
        <p id={`${id}-help`} className={styles['help']}>
          <Typeset text={help} />
        </p>
      )}
      <FieldProblemLine id={`${id}-problem`} problem={problem} />
    </div>
  );
}

/** Always in the page, so that a screen reader reads its words when they appear. */
export function FieldProblemLine({ id, problem }: { readonly id: string; readonly problem: string | null }) {
  return (
    <p id={id} className={styles['problem']} aria-live="polite" hidden={problem === null}>
      {problem !== null && <Typeset text={problem} />}
    </p>
  );
}
