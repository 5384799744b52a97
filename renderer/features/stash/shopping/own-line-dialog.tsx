import type { ProjectId } from '#core/domain/ids';
import type { OwnShoppingLine, SavedShoppingLine } from '#core/domain/shopping';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { type Option, Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

const EMPTY_LINE: OwnShoppingLine = { words: '', howMuch: '', supplier: '', projectId: null };

interface OwnLineDialogProps {
  /** Null for a new line. */
  readonly line: SavedShoppingLine | null;
  readonly onClose: () => void;
}

/** Adds or changes a shopping line in the maker's own words. */
export function OwnLineDialog({ line, onClose }: OwnLineDialogProps) {
  const draft = useFormDraft(`shopping-line ${line?.id ?? 'new'}`);
  const [details, setDetails] = useDraftValue<OwnShoppingLine>(
    draft,
    'details',
    line === null ? EMPTY_LINE : ownOf(line),
  );
  const saving = useDialogSave(useWrite('shopping:save-line'), onClose, draft);
  const { value: projects } = useRead('project:list', { archived: false });
  const change = (part: Partial<OwnShoppingLine>) => setDetails({ ...details, ...part });
  const options: readonly Option<ProjectId | ''>[] = [
    { value: '', words: 'No project in particular' },
    ...(projects?.items ?? []).map(({ project }) => ({ value: project.id, words: project.name })),
  ];
  return (
    <DialogForm
      draft={draft}
      title={line === null ? 'Add an item' : 'Change the item'}
      saving={saving}
      onSave={() => saving.save({ lineId: line?.id ?? null, details })}
      onClose={onClose}
      className={layout['stack']}
    >
      <TextField
        label="What"
        value={details.words}
        maximum={120}
        autoFocus
        emptyProblem="Enter what you want to buy."
        onChange={(words) => change({ words })}
      />
      <div className={layout['fields']}>
        <TextField
          label="How much"
          isOptional
          value={details.howMuch}
          maximum={60}
          placeholder="2 spools"
          onChange={(howMuch) => change({ howMuch })}
        />
        <TextField
          label="Shop"
          isOptional
          value={details.supplier}
          maximum={120}
          onChange={(supplier) => change({ supplier })}
        />
      </div>
      <Select
        label="For which project"
        value={details.projectId ?? ''}
        options={options}
        onChange={(id) => change({ projectId: id === '' ? null : id })}
      />
    </DialogForm>
  );
}

function ownOf({ words, howMuch, supplier, projectId }: SavedShoppingLine): OwnShoppingLine {
  return { words, howMuch, supplier, projectId };
}
