import { type StashColumn, stashColumnSchema, type TableReading } from '#core/domain/stash-table';
import { columnTitle } from '#core/stash/table/column-titles';
import layout from '#renderer/ui/page/layout.module.css';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import styles from './import.module.css';

const LEFT_OUT = 'left-out';
const OPTIONS = [
  { value: LEFT_OUT, words: 'Leave out' },
  ...stashColumnSchema.options.map((value) => ({ value, words: columnTitle(value) })),
] as const;

interface ImportColumnsProps {
  readonly reading: TableReading;
  readonly onMap: (column: number, field: StashColumn | null) => void;
  readonly onTitles: (hasTitles: boolean) => void;
}

/** The meaning of each column of the table, guessed from its title; the maker can correct it. */
export function ImportColumns({ reading, onMap, onTitles }: ImportColumnsProps) {
  if (reading.columns.every(({ samples }) => samples.length === 0)) return null;
  return (
    <section className={layout['stack']} aria-label="Columns">
      <h2 className={layout['heading']}>Columns</h2>
      <Checkbox label="The first row has column titles" isChecked={reading.hasTitles} onChange={onTitles} />
      <ul className={styles['columns']}>
        {reading.columns.map(({ title, samples }, index) => (
          <li key={index} className={styles['column']}>
            <Select<StashColumn | typeof LEFT_OUT>
              label={title === '' ? `Column ${String(index + 1)}` : title}
              value={reading.mapping[index] ?? LEFT_OUT}
              options={OPTIONS}
              onChange={(field) => onMap(index, field === LEFT_OUT ? null : field)}
            />
            <p className={layout['quiet']}>{samples.filter((sample) => sample !== '').join(' · ')}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}
