import { type StashColumn, stashColumn, type TableReading } from '#core/domain/stash-table';
import { columnTitle } from '#core/stash/table/column-titles';
import shared from '#renderer/features/stash/stash.module.css';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import styles from './bring-in.module.css';

const LEFT_OUT = 'left-out';
const OPTIONS = [
  { value: LEFT_OUT, words: 'Leave it out' },
  ...stashColumn.options.map((value) => ({ value, words: columnTitle(value) })),
] as const;

interface BringInMappingProps {
  readonly reading: TableReading;
  readonly onMap: (column: number, says: StashColumn | null) => void;
  readonly onTitles: (hasTitles: boolean) => void;
}

/** What each column of the table says, guessed by its title and to be put right here. */
export function BringInMapping({ reading, onMap, onTitles }: BringInMappingProps) {
  if (reading.columns.every(({ samples }) => samples.length === 0)) return null;
  return (
    <section className={shared['stack']} aria-label="What the columns say">
      <h2 className={styles['heading']}>What the columns say</h2>
      <Checkbox label="The first line holds titles" isChecked={reading.hasTitles} onChange={onTitles} />
      <ul className={styles['columns']}>
        {reading.columns.map(({ title, samples }, index) => (
          <li key={index} className={styles['column']}>
            <Select<StashColumn | typeof LEFT_OUT>
              label={title === '' ? `Column ${String(index + 1)}` : title}
              value={reading.mapping[index] ?? LEFT_OUT}
              options={OPTIONS}
              onChange={(says) => onMap(index, says === LEFT_OUT ? null : says)}
            />
            <p className={shared['quiet']}>{samples.filter((sample) => sample !== '').join(' · ')}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}
