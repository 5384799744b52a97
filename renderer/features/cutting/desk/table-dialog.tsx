import { cuttingTableSchema, type CuttingTableSettings } from '#core/domain/cutting-setup';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import { WishOrder } from './wish-order';

interface TableDialogProps {
  readonly table: CuttingTableSettings;
  readonly onSave: (table: CuttingTableSettings) => void;
  readonly onClose: () => void;
}

/** All but the wishes, which have a list of their own. */
const FIELDS: readonly (keyof CuttingTableSettings)[] = [
  'rulerLength',
  'matLength',
  'straighten',
  'selvage',
  'keepShort',
  'keepLong',
  'mayFold',
];

/** The table, the tools and what matters most in this plan. */
export function TableDialog({ table, onSave, onClose }: TableDialogProps) {
  const typed = useFormDraft('cutting-table');
  const [draft, setDraft] = useDraftValue(typed, 'table', table);
  const save = () => {
    const read = cuttingTableSchema.safeParse(draft);
    if (!read.success) return;
    typed.forget();
    onSave(read.data);
    onClose();
  };
  return (
    <DialogForm
      draft={typed}
      title="Table and leftovers"
      isWide
      onSave={save}
      onClose={onClose}
      className={layout['sections']}
    >
      <WishOrder wishes={draft.wishes} onChange={(wishes) => setDraft((before) => ({ ...before, wishes }))} />
      <SchemaForm
        schema={cuttingTableSchema}
        only={FIELDS}
        value={draft}
        onChange={(next) => setDraft((before) => ({ ...before, ...next }))}
      />
    </DialogForm>
  );
}
