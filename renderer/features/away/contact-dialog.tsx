import { useState } from 'react';
import { useNavigate } from 'react-router';
import { z } from 'zod';
import type { Contact } from '#core/contract/contacts';
import { type ContactDetails, contactDetails, type ContactKind, nameAlone } from '#core/domain/contact';
import { priceLines } from '#core/domain/price-line';
import { minorDigits } from '#core/units/format-money';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { Form } from '#renderer/ui/fields/form';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import { TextField } from '#renderer/ui/fields/text-field';
import styles from './away.module.css';

interface ContactDialogProps {
  /** Null for somebody new. */
  readonly contact: Contact | null;
  readonly onClose: () => void;
}

const KINDS: readonly { readonly value: ContactKind; readonly words: string }[] = [
  { value: 'longarm', words: 'Longarm quilter' },
  { value: 'other', words: 'Somebody else' },
];

const linesForm = z.object({ lines: priceLines });

/** Everything said of a contact: who it is, rates and minimum, and how long they say they take. */
export function ContactDialog({ contact, onClose }: ContactDialogProps) {
  const [details, setDetails] = useState<ContactDetails>(contact?.details ?? nameAlone('', 'longarm'));
  const keeping = useWrite('contact:keep');
  const navigate = useNavigate();
  const set = (part: Partial<ContactDetails>) => setDetails({ ...details, ...part });
  const keep = async () => {
    const kept = await keeping.write({ contactId: contact?.id ?? null, details });
    if (!kept.ok) return;
    onClose();
    if (contact === null) void navigate(`/out/${kept.value.contactId}`);
  };
  return (
    <Dialog
      title={contact === null ? 'A new contact' : contact.details.name}
      isWide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="contact" disabled={keeping.isWriting}>
            {contact === null ? 'Add the contact' : 'Keep it so'}
          </Button>
        </>
      }
    >
      <Form id="contact" className={styles['form']} onSubmit={() => void keep()}>
        <TextField
          label="Name"
          value={details.name}
          maximum={120}
          emptyProblem="A contact needs a name."
          onChange={(name) => set({ name })}
          autoFocus
        />
        <Choice label="Who" value={details.kind} options={KINDS} onChange={(kind) => set({ kind })} />
        <div className={styles['whole']}>
          <TextField
            label="How to reach them"
            value={details.reach}
            maximum={300}
            onChange={(reach) => set({ reach })}
            isOptional
          />
        </div>
        <Rates details={details} set={set} />
        <div className={styles['whole']}>
          <TextField
            label="Notes"
            value={details.notes}
            maximum={5_000}
            onChange={(notes) => set({ notes })}
            isLong
            isOptional
          />
        </div>
      </Form>
      <ProblemNotice problem={keeping.problem} />
    </Dialog>
  );
}

interface RatesProps {
  readonly details: ContactDetails;
  readonly set: (part: Partial<ContactDetails>) => void;
}

/** What they charge and promise; what they have not said stays empty, and the workshop's settings stand in. */
function Rates({ details, set }: RatesProps) {
  const { currency } = useDisplay();
  const inMajor = 10 ** minorDigits(currency);
  return (
    <>
      <NumberField
        label="Their rate"
        unit={`${currency} a square inch`}
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
      <details className={styles['fold']}>
        <summary>
          {details.lines.length === 0
            ? 'Thread, batting, basting, rush, freight'
            : `Other lines: ${details.lines.map(({ name }) => name).join(', ')}`}
        </summary>
        <SchemaForm
          schema={linesForm}
          value={{ lines: details.lines }}
          onChange={(value) => {
            const lines = contactDetails.unwrap().shape.lines.safeParse(value['lines']);
            if (lines.success) set({ lines: lines.data });
          }}
        />
      </details>
    </>
  );
}
