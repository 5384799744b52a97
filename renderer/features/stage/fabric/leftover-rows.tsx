import { DraftPlaceContext } from '#renderer/ui/base/draft';
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

/** The leftovers of a cut to keep; each becomes a piece of fabric in the stash. */
export function LeftoverRows({ leftovers, onChange }: LeftoverRowsProps) {
  const change = (at: number, part: Partial<KeptLeftover>) =>
    onChange(leftovers.map((one, index) => (index === at ? { ...one, ...part } : one)));
  return (
    <div className={styles['rows']}>
      {leftovers.map((leftover, index) => (
        <DraftPlaceContext key={index} value={`leftover ${String(index)}`}>
          <div className={styles['row']}>
            <LengthField
              label="Leftover width"
              value={leftover.width}
              onCommit={(width) => change(index, { width })}
            />
            <LengthField
              label="Leftover length"
              value={leftover.length}
              onCommit={(length) => change(index, { length })}
            />
            <Button look="quiet" onClick={() => onChange(leftovers.filter((_one, at) => at !== index))}>
              Delete
            </Button>
          </div>
        </DraftPlaceContext>
      ))}
      <div>
        <Button isSmall onClick={() => onChange([...leftovers, { width: null, length: null }])}>
          Add a leftover to keep
        </Button>
      </div>
    </div>
  );
}
