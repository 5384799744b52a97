import { type ReactNode, useId } from 'react';
import styles from './option-rows.module.css';

export interface OptionRow<Value extends string> {
  readonly value: Value;
  readonly name: string;
  /** The color of a fabric. */
  readonly swatch?: string;
  /** Small words below the name. */
  readonly under?: ReactNode;
  /** What is shown on the right, such as a size, and small words below it. */
  readonly right?: ReactNode;
  readonly underRight?: ReactNode;
}

interface OptionRowsProps<Value extends string> {
  readonly legend: string;
  readonly rows: readonly OptionRow<Value>[];
  readonly chosen: Value | null;
  readonly onChoose: (value: Value) => void;
}

/** A list of options to choose one from, a row for each; arrow keys move between them. */
export function OptionRows<Value extends string>({ legend, rows, chosen, onChoose }: OptionRowsProps<Value>) {
  const name = useId();
  return (
    <fieldset className={styles['options']}>
      <legend className={styles['under']}>{legend}</legend>
      {rows.map((row) => (
        <label key={row.value} className={styles['option']}>
          <input
            type="radio"
            name={name}
            checked={row.value === chosen}
            onChange={() => onChoose(row.value)}
          />
          {row.swatch !== undefined && (
            <span className={styles['swatch']} style={{ background: row.swatch }} />
          )}
          <span className={styles['name']}>
            {row.name}
            {row.under !== undefined && <span className={styles['under']}>{row.under}</span>}
          </span>
          {(row.right !== undefined || row.underRight !== undefined) && (
            <span className={styles['right']}>
              {row.right}
              {row.underRight !== undefined && <span className={styles['under']}>{row.underRight}</span>}
            </span>
          )}
        </label>
      ))}
    </fieldset>
  );
}
