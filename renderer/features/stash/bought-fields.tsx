import type { StashKindId } from '#core/domain/ids';
import { measureOfKind } from '#core/domain/stash-kind';
import type { Length } from '#core/units/length';
import { useRead } from '#renderer/bridge/query';
import { type Option, Select } from '#renderer/ui/fields/choice';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { BoughtDayField } from './bought-day-field';
import { CribCaution } from './crib-caution';
import { FabricSizeField } from './fabric-size-field';
import layout from '#renderer/ui/page/layout.module.css';
import { KIND_WORDS } from './fabric-words';
import { kindOfSize, type PieceDraft, withKind } from './fabric-draft';

interface BoughtFieldsProps {
  readonly piece: PieceDraft;
  readonly fabricWidth: Length;
  readonly isSizeOptional?: boolean;
  readonly autoFocus?: boolean;
  readonly onChange: (piece: PieceDraft) => void;
}

/** The fields of a purchase: kind, size or number, and what it cost and when, if that is known. */
export function BoughtFields(props: BoughtFieldsProps) {
  const { piece, fabricWidth, isSizeOptional = false, autoFocus = false, onChange } = props;
  const change = (part: Partial<PieceDraft>) => onChange({ ...piece, ...part });
  const measure = measureOfKind(piece.kind);
  return (
    <div className={layout['fields']}>
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
        help="Leave it blank if you don’t know. Write 0 if it was free."
        isOptional
        onCommit={(costMinor) => change({ costMinor })}
      />
      <BoughtDayField value={piece.on} onChange={(on) => change({ on })} />
    </div>
  );
}

/** Chooses one of the maker's kinds. A hidden kind is offered only if it is the chosen one. */
function KindField({ piece, onChange }: Pick<BoughtFieldsProps, 'piece' | 'onChange'>) {
  const kinds = useRead('kind:list', {}).value ?? [];
  const chosen =
    kinds.find(({ id }) => id === piece.kindId) ?? kinds.find(({ form }) => form === piece.kind) ?? null;
  const options: Option<StashKindId | ''>[] = kinds
    .filter((kind) => !kind.isHidden || kind === chosen)
    .map(({ id, name }) => ({ value: id, words: name }));
  if (chosen === null) options.unshift({ value: '', words: KIND_WORDS[piece.kind].name });
  return (
    <>
      <Select
        label="Kind"
        value={chosen?.id ?? ''}
        options={options}
        onChange={(id) => {
          const kind = kinds.find((one) => one.id === id);
          if (kind !== undefined) onChange(withKind(piece, kind, chosen));
        }}
      />
      <CribCaution kindName={chosen?.name ?? ''} />
    </>
  );
}

/** A size may imply a kind: `FQ` is a fat quarter. */
function sized(piece: PieceDraft, size: NonNullable<PieceDraft['size']>): Partial<PieceDraft> {
  const kind = kindOfSize(piece.kind, size);
  return kind === piece.kind ? { size } : { size, kind, kindId: null };
}
