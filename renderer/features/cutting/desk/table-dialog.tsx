import { useState } from 'react';
import { cuttingTable, type CuttingTableSettings } from '#core/domain/cutting-setup';
import type { Length } from '#core/units/length';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { LengthField } from '#renderer/ui/fields/length-field';
import { WishOrder } from './wish-order';
import styles from '../cutting.module.css';

interface TableDialogProps {
  readonly table: CuttingTableSettings;
  readonly onKeep: (table: CuttingTableSettings) => void;
  readonly onClose: () => void;
}

type LengthName = 'rulerLength' | 'matLength' | 'straighten' | 'selvage' | 'keepShort' | 'keepLong';

const FIELDS: readonly { readonly name: LengthName; readonly label: string; readonly help: string }[] = [
  { name: 'rulerLength', label: 'Ruler', help: 'The longest cut made without moving it.' },
  { name: 'matLength', label: 'Mat', help: 'Its longer side.' },
  { name: 'straighten', label: 'To straighten the end', help: 'Off rolls and fat quarters; 0 for none.' },
  { name: 'selvage', label: 'Selvage on each side', help: '0 where widths are written down without it.' },
  { name: 'keepShort', label: 'A leftover is kept from', help: 'Its shorter side.' },
  { name: 'keepLong', label: 'and from', help: 'Its longer side.' },
];

/** The table, the tools and what matters most in this plan. */
export function TableDialog({ table, onKeep, onClose }: TableDialogProps) {
  const [draft, setDraft] = useState(table);
  const keep = () => {
    const read = cuttingTable.safeParse(draft);
    if (!read.success) return;
    onKeep(read.data);
    onClose();
  };
  const { shape } = cuttingTable.unwrap();
  const limits = (name: LengthName) => {
    const { minimum, maximum } = shape[name].toJSONSchema() as { minimum?: number; maximum?: number };
    return { minimum, maximum };
  };
  const set = (name: LengthName, length: Length | null) => {
    if (length !== null) setDraft((before) => ({ ...before, [name]: length }));
  };
  return (
    <Dialog
      title="Table and leftovers"
      isWide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not now</Button>
          <Button look="main" type="submit" form="cutting-table">
            Plan with these
          </Button>
        </>
      }
    >
      <Form id="cutting-table" className={styles['form']} onSubmit={keep}>
        <div className={styles['whole']}>
          <WishOrder
            wishes={draft.wishes}
            onChange={(wishes) => setDraft((before) => ({ ...before, wishes }))}
          />
        </div>
        {FIELDS.map(({ name, label, help }) => (
          <LengthField
            key={name}
            label={label}
            help={help}
            value={draft[name]}
            {...limits(name)}
            onCommit={(length) => set(name, length)}
          />
        ))}
        <div className={styles['whole']}>
          <Checkbox
            label="The fabric is folded once, so that two are cut at a time"
            isChecked={draft.mayFold}
            onChange={(mayFold) => setDraft((before) => ({ ...before, mayFold }))}
          />
        </div>
      </Form>
    </Dialog>
  );
}
