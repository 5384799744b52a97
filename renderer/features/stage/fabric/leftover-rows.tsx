import type { Length } from '#core/units/length';
import { Button } from '#renderer/ui/page/button';
import { LengthField } from '#renderer/ui/fields/length-field';
import styles from './leftover-rows.module.css';

export interface KeptLeftover {
  readonly width: Length | null;
  readonly length: Length | null;
}

interface LeftoverRowsProps {
  readonly leftovers: readonly KeptLeftover[];
  readonly onChange: (leftovers: readonly KeptLeftover[]) => void;
}

/** The leftovers of a cut that are worth keeping; each becomes a piece of its own in the stash. */
export function LeftoverRows({ leftovers, onChange }: LeftoverRowsProps) {
  const change = (at: number, part: Partial<KeptLeftover>) =>
    onChange(leftovers.map((one, index) => (index === at ? { ...one, ...part } : one)));
  return (
    <div className={styles['rows']}>
      {leftovers.map((leftover, index) => (
        <div key={index} className={styles['row']}>
          <LengthField
            label="Leftover, width"
            value={leftover.width}
            onCommit={(width) => change(index, { width })}
          />
          <LengthField
            label="Leftover, length"
            value={leftover.length}
            onCommit={(length) => change(index, { length })}
          />
          <Button look="quiet" onClick={() => onChange(leftovers.filter((_one, at) => at !== index))}>
            Not kept
          </Button>
        </div>
      ))}
      <div>
        <Button isSmall onClick={() => onChange([...leftovers, { width: null, length: null }])}>
          Keep a leftover of this cut
        </Button>
      </div>
    </div>
  );
}
