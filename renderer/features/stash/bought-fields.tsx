import { clothKind } from '#core/domain/stash';
import type { Length } from '#core/units/length';
import { DateField } from '#renderer/ui/date-field';
import { MoneyField } from '#renderer/ui/money-field';
import { Select } from '#renderer/ui/choice';
import { ClothSizeField } from './cloth-size-field';
import { KIND_WORDS } from './cloth-words';
import { kindOfSize, type PieceDraft } from './fabric-draft';
import styles from './stash.module.css';

const KINDS = clothKind.options.map((value) => ({ value, words: KIND_WORDS[value].name }));

interface BoughtFieldsProps {
  readonly piece: PieceDraft;
  readonly fabricWidth: Length;
  readonly isSizeOptional?: boolean;
  readonly autoFocus?: boolean;
  readonly onChange: (piece: PieceDraft) => void;
}

/** A piece of cloth that came into the house: how large, what kind, what it cost and when. */
export function BoughtFields(props: BoughtFieldsProps) {
  const { piece, fabricWidth, isSizeOptional = false, autoFocus = false, onChange } = props;
  const change = (part: Partial<PieceDraft>) => onChange({ ...piece, ...part });
  return (
    <div className={styles['fields']}>
      <ClothSizeField
        label="Size"
        value={piece.size}
        fabricWidth={fabricWidth}
        isOptional={isSizeOptional}
        autoFocus={autoFocus}
        onCommit={(size) => change(size === null ? { size } : { size, kind: kindOfSize(piece.kind, size) })}
      />
      <Select label="What it is" value={piece.kind} options={KINDS} onChange={(kind) => change({ kind })} />
      <MoneyField
        label="What it cost"
        value={piece.costMinor}
        maximum={100_000_000}
        isOptional
        onCommit={(costMinor) => change({ costMinor })}
      />
      <DateField label="Bought on" value={piece.on} onChange={(on) => change({ on })} />
    </div>
  );
}
