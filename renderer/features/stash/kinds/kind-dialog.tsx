import { pieceKindSchema } from '#core/domain/stash';
import { measureOfKind, type StashKind, type StashKindDetails } from '#core/domain/stash-kind';
import { useWrite } from '#renderer/bridge/query';
import { CribCaution } from '#renderer/features/stash/crib-caution';
import { KIND_WORDS } from '#renderer/features/stash/fabric-words';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Select } from '#renderer/ui/fields/choice';
import { LengthField } from '#renderer/ui/fields/length-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface KindDialogProps {
  /** Null for a new one. */
  readonly kind: StashKind | null;
  readonly onClose: () => void;
}

const NEW_KIND: StashKindDetails = {
  form: 'precut-squares',
  name: '',
  width: null,
  length: null,
  count: null,
  isHidden: false,
};

const FORMS = pieceKindSchema.options.map((value) => ({ value, words: KIND_WORDS[value].name }));

/** Adds or changes one of the maker's kinds: its name, how it is measured, and its usual size. */
export function KindDialog({ kind, onClose }: KindDialogProps) {
  const draft = useFormDraft(`kind ${kind?.id ?? 'new'}`);
  const [details, setDetails] = useDraftValue<StashKindDetails>(draft, 'details', kind ?? NEW_KIND);
  const saving = useDialogSave(useWrite('kind:save'), onClose, draft);
  const change = (part: Partial<StashKindDetails>) => setDetails({ ...details, ...part });
  const save = () => {
    const { form, name, width, length, count, isHidden } = details;
    saving.save({ kindId: kind?.id ?? null, details: { form, name, width, length, count, isHidden } });
  };
  return (
    <DialogForm
      draft={draft}
      title={kind === null ? 'Add a kind' : `Change ${kind.name}`}
      saving={saving}
      onSave={save}
      onClose={onClose}
      className={layout['fields']}
      after={<CribCaution kindName={details.name} />}
    >
      <div className={layout['whole']}>
        <TextField
          label="Name"
          value={details.name}
          maximum={60}
          autoFocus
          emptyProblem="Give the kind a name, such as Squares, 8 in."
          onChange={(name) => change({ name })}
        />
      </div>
      <Select
        label="How it’s measured"
        value={details.form}
        options={FORMS}
        onChange={(form) => change({ form })}
      />
      <UsualSize details={details} onChange={change} />
    </DialogForm>
  );
}

interface UsualSizeProps {
  readonly details: StashKindDetails;
  readonly onChange: (part: Partial<StashKindDetails>) => void;
}

function UsualSize({ details, onChange }: UsualSizeProps) {
  const measure = measureOfKind(details.form);
  return (
    <>
      {measure !== 'count' && (
        <>
          <LengthField
            label="Usual size across"
            isOptional
            value={details.width}
            onCommit={(width) => onChange({ width })}
          />
          <LengthField
            label="Usual size along"
            isOptional
            value={details.length}
            onCommit={(length) => onChange({ length })}
          />
        </>
      )}
      {(measure === 'pack' || measure === 'count') && (
        <NumberField
          label="How many in a pack"
          isOptional
          isWhole
          minimum={1}
          maximum={10_000}
          value={details.count}
          onCommit={(count) => onChange({ count })}
        />
      )}
    </>
  );
}
