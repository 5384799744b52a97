import { useNavigate } from 'react-router';
import { z } from 'zod';
import type { Contact } from '#core/contract/contacts';
import { type ContactDetails, contactDetailsSchema, type ContactKind, nameAlone } from '#core/domain/contact';
import { priceLinesSchema } from '#core/domain/price-line';
import { minorDigits } from '#core/units/format-money';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Choice } from '#renderer/ui/fields/choice';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';

interface ContactDialogProps {
  /** Null for a new one. */
  readonly contact: Contact | null;
  readonly onClose: () => void;
}

const KINDS: readonly { readonly value: ContactKind; readonly words: string }[] = [
  { value: 'longarm', words: 'Longarm quilter' },
  { value: 'other', words: 'Someone else' },
];

const otherChargesSchema = z.object({ lines: priceLinesSchema });

/** Adds or changes a contact: who it is, what they charge, and how long they say they take. */
export function ContactDialog({ contact, onClose }: ContactDialogProps) {
  const draft = useFormDraft(`contact ${contact?.id ?? 'new'}`);
  const [details, setDetails] = useDraftValue<ContactDetails>(
    draft,
    'details',
    contact?.details ?? nameAlone('', 'longarm'),
  );
  const navigate = useNavigate();
  const saving = useDialogSave(
    useWrite('contact:save'),
    ({ contactId }) => {
      onClose();
      if (contact === null) void navigate(`/sent-out/${contactId}`);
    },
    draft,
  );
  const set = (part: Partial<ContactDetails>) => setDetails({ ...details, ...part });
  return (
    <DialogForm
      draft={draft}
      title={contact === null ? 'Add a contact' : `Change ${contact.details.name}`}
      isWide
      saving={saving}
      onSave={() => saving.save({ contactId: contact?.id ?? null, details })}
      onClose={onClose}
      className={layout['pair']}
    >
      <TextField
        label="Name"
        value={details.name}
        maximum={120}
        emptyProblem="Enter a name."
        onChange={(name) => set({ name })}
        autoFocus
      />
      <Choice label="Who" value={details.kind} options={KINDS} onChange={(kind) => set({ kind })} />
      <div className={layout['whole']}>
        <TextField
          label="How to reach them"
          value={details.reach}
          maximum={300}
          onChange={(reach) => set({ reach })}
          isOptional
        />
      </div>
      <Rates details={details} set={set} />
      <div className={layout['whole']}>
        <TextField
          label="Notes"
          value={details.notes}
          maximum={5_000}
          onChange={(notes) => set({ notes })}
          isLong
          isOptional
        />
      </div>
    </DialogForm>
  );
}

interface RatesProps {
  readonly details: ContactDetails;
  readonly set: (part: Partial<ContactDetails>) => void;
}

/** What they charge and promise. For a blank field the workshop's settings are used. */
function Rates({ details, set }: RatesProps) {
  const { currency } = useDisplay();
  const inMajor = 10 ** minorDigits(currency);
  return (
    <>
      <NumberField
        label="Their rate"
        unit={`${currency} per square inch`}
        value={details.rateMinor === null ? null : details.rateMinor / inMajor}
        minimum={0}
        maximum={10_000 / inMajor}
        onCommit={(rate) =>
          set({ rateMinor: rate === null ? null : Number((rate * inMajor).toPrecision(12)) })
        }
        isOptional
      />
      <MoneyField
        label="Their minimum"
        value={details.minimumMinor}
        maximum={10_000_000}
        onCommit={(minimumMinor) => set({ minimumMinor })}
        isOptional
      />
      <NumberField
        label="They say it takes"
        unit="days"
        value={details.promisedDays}
        minimum={0}
        maximum={730}
        isWhole
        onCommit={(promisedDays) => set({ promisedDays })}
        isOptional
      />
      <OtherCharges details={details} set={set} />
    </>
  );
}

function OtherCharges({ details: { lines }, set }: RatesProps) {
  return (
    <details className={classes(layout['fold'], layout['whole'])}>
      <summary>
        {lines.length === 0
          ? 'Thread, batting, basting, rush, shipping'
          : `Other charges: ${lines.map(({ name }) => name).join(', ')}`}
      </summary>
      <SchemaForm
        schema={otherChargesSchema}
        value={{ lines }}
        onChange={(value) => {
          const read = contactDetailsSchema.unwrap().shape.lines.safeParse(value['lines']);
          if (read.success) set({ lines: read.data });
        }}
      />
    </details>
  );
}
