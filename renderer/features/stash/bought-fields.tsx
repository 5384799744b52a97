import type { StashKindId } from '#core/domain/ids';
import { measureOfKind } from '#core/domain/stash-kind';
import type { Length } from '#core/units/length';
import { useRead } from '#renderer/bridge/query';
import { type Option, Select } from '#renderer/ui/fields/choice';
import { DateField } from '#renderer/ui/fields/date-field';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { FabricSizeField } from './fabric-size-field';
import { KIND_WORDS } from './fabric-words';
import { kindOfSize, type PieceDraft, withKind } from './fabric-draft';
import styles from './stash.module.css';

interface BoughtFieldsProps {
  readonly piece: PieceDraft;
  readonly fabricWidth: Length;
  readonly isSizeOptional?: boolean;
  readonly autoFocus?: boolean;
  readonly onChange: (piece: PieceDraft) => void;
}

/** A piece of fabric, or a pack or number of things, that came into the house: what kind, how much, what it cost and when. */
export function BoughtFields(props: BoughtFieldsProps) {
  const { piece, fabricWidth, isSizeOptional = false, autoFocus = false, onChange } = props;
  const change = (part: Partial<PieceDraft>) => onChange({ ...piece, ...part });
  const measure = measureOfKind(piece.kind);
  return (
    <div className={styles['fields']}>
      <KindField piece={piece} onChange={onChange} />
      {measure !== 'count' && (
        <FabricSizeField
          label={measure === 'pack' ? 'Size of one' : 'Size'}
          value={piece.size}
          fabricWidth={fabricWidth}
          isOptional={isSizeOptional}
          autoFocus={autoFocus}
          onCommit={(size) => change(size === null ? { size } : sized(piece, size))}
        />
      )}
      {(measure === 'pack' || measure === 'count') && (
        <NumberField
          label="How many"
          value={piece.count}
          isWhole
          minimum={1}
          maximum={10_000}
          isOptional={isSizeOptional}
          autoFocus={autoFocus && measure === 'count'}
          onCommit={(count) => change({ count })}
        />
      )}
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

/** The maker's own list of kinds; one she has put away is offered only while it is the chosen one. */
function KindField({ piece, onChange }: Pick<BoughtFieldsProps, 'piece' | 'onChange'>) {
  const kinds = useRead('kind:list', {}).value ?? [];
  const chosen =
    kinds.find(({ id }) => id === piece.kindId) ?? kinds.find(({ form }) => form === piece.kind) ?? null;
  const options: Option<StashKindId | ''>[] = kinds
    .filter((kind) => !kind.isHidden || kind === chosen)
    .map(({ id, name }) => ({ value: id, words: name }));
  if (chosen === null) options.unshift({ value: '', words: KIND_WORDS[piece.kind].name });
  return (
    <Select
      label="What it is"
      value={chosen?.id ?? ''}
      options={options}
      onChange={(id) => {
        const kind = kinds.find((one) => one.id === id);
        if (kind !== undefined) onChange(withKind(piece, kind, chosen));
      }}
    />
  );
}

/** A size may speak for a kind: `FQ` was typed, so it is a fat quarter. */
function sized(piece: PieceDraft, size: NonNullable<PieceDraft['size']>): Partial<PieceDraft> {
  const kind = kindOfSize(piece.kind, size);
  return kind === piece.kind ? { size } : { size, kind, kindId: null };
}
