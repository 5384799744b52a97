import { useId } from 'react';
import { FieldProblemLine } from './field';
import { Typeset } from '../answers/typeset';
import styles from './field.module.css';

interface CheckboxProps {
  readonly label: string;
  readonly isChecked: boolean;
  readonly onChange: (isChecked: boolean) => void;
  readonly help?: string | undefined;
  readonly problem?: string | null | undefined;
  readonly isDisabled?: boolean;
}

/** A checkbox with its label. */
export function Checkbox({
  label,
  isChecked,
  onChange,
  help,
  problem = null,
  isDisabled = false,
}: CheckboxProps) {
  const id = useId();
  return (
    <div className={styles['field']}>
      <label className={styles['tick']}>
        <input
          type="checkbox"
          checked={isChecked}
          disabled={isDisabled}
          aria-describedby={`${id}-help ${id}-problem`}
          onChange={(event) => onChange(event.target.checked)}
        />
        <span>
          <Typeset text={label} />
        </span>
      </label>
      <p id={`${id}-help`} className={styles['help']} hidden={help === undefined}>
        {help}
      </p>
      <FieldProblemLine id={`${id}-problem`} problem={problem} />
    </div>
  );
}
