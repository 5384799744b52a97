import type { PatternDetails } from '#core/domain/pattern';
import { Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import styles from './pattern.module.css';

interface ListTextProps {
  readonly details: PatternDetails;
  readonly hasBareSizes: boolean;
  readonly onChange: (part: Partial<PatternDetails>) => void;
}

const UNITS = [
  { value: 'in', words: 'inches' },
  { value: 'cm', words: 'centimeters' },
  { value: 'mm', words: 'millimeters' },
] as const;

/** The list as it stands, and the unit of its sizes where they have none. */
export function ListText({ details, hasBareSizes, onChange }: ListTextProps) {
  return (
    <>
      <div className={styles['list']}>
        <TextField
          label="Cutting list"
          help="By fabric or by block, in inches or metric, or as a table."
          value={details.listText}
          maximum={20_000}
          isLong
          onChange={(listText) => onChange({ listText })}
        />
      </div>
      {hasBareSizes && (
        <Select
          label="Sizes without a unit are"
          value={details.bareUnit}
          options={UNITS}
          onChange={(bareUnit) => onChange({ bareUnit })}
        />
      )}
    </>
  );
}
