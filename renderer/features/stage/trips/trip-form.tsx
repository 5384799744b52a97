import type { Contact } from '#core/contract/contacts';
import { isPromisedBeforeSent, type TripDetails } from '#core/domain/trip';
import { turnaroundOf } from '#core/learned/turnaround';
import { addDays } from '#core/units/calendar-date';
import { dateWords, today } from '#renderer/text/dates';
import { turnaroundWords } from '#renderer/text/trip-words';
import { DateField } from '#renderer/ui/fields/date-field';
import type { FormDraft } from '#renderer/ui/base/draft';
import { DialogForm, type SaveProgress } from '#renderer/ui/page/dialog-form';
import { useDisplay } from '#renderer/ui/base/display';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { contactNamed, withQuilter } from './trip-details';
import layout from '#renderer/ui/page/layout.module.css';

interface TripFormProps {
  readonly title: string;
  readonly verb?: string;
  readonly draft: FormDraft;
  readonly trip: TripDetails;
  readonly contacts: readonly Contact[];
  /** How many days a trip usually takes, from the workshop’s settings. */
  readonly usualDays: number;
  readonly withBack: boolean;
  /** What a quilter asks for this project; fills the price while the maker has not entered another. */
  readonly priceOf?: (withWhom: string) => number | null;
  readonly saving: SaveProgress;
  readonly onChange: (trip: TripDetails) => void;
  readonly onSave: () => void;
  readonly onClose: () => void;
  /** More fields, between those of the trip and the buttons. */
  readonly children?: React.ReactNode;
}

/** All the fields of one trip. */
export function TripForm(props: TripFormProps) {
  const { title, draft, verb, trip, withBack, saving, onChange, onSave, onClose, children } = props;
  const set = (part: Partial<TripDetails>) => onChange({ ...trip, ...part });
  const isPromisedEarly = isPromisedBeforeSent(trip);
  const isBackEarly = trip.backOn !== null && trip.sentOn !== null && trip.backOn < trip.sentOn;
  return (
    <DialogForm
      draft={draft}
      title={title}
      {...(verb === undefined ? {} : { verb })}
      saving={saving}
      canSave={trip.withWhom.trim() !== '' && !isBackEarly && !isPromisedEarly}
      onSave={onSave}
      onClose={onClose}
      isWide
      className={layout['pair']}
    >
      <QuilterField {...props} />
      <DateField label="Sent on" value={trip.sentOn} onChange={(sentOn) => set({ sentOn })} isOptional />
      <DateField
        label="Promised back on"
        value={trip.promisedOn}
        onChange={(promisedOn) => set({ promisedOn })}
        problem={isPromisedEarly ? 'This is before it was sent.' : null}
        isOptional
      />
      {withBack && (
        <DateField
          label="Back on"
          value={trip.backOn}
          onChange={(backOn) => set({ backOn })}
          problem={isBackEarly ? 'This is before it was sent.' : null}
          isOptional
        />
      )}
      <MoneyField
        label="Price quoted"
        value={trip.priceAskedMinor}
        onCommit={(priceAskedMinor) => set({ priceAskedMinor })}
        isOptional
      />
      {withBack && (
        <MoneyField
          label="Price paid"
          value={trip.priceMinor}
          onCommit={(priceMinor) => set({ priceMinor })}
          isOptional
        />
      )}
      <TextField
        label="Tracking number"
        value={trip.trackingNumber}
        maximum={120}
        onChange={(trackingNumber) => set({ trackingNumber })}
        isOptional
      />
      <SentAlongFields trip={trip} set={set} />
      {children !== undefined && <div className={layout['whole']}>{children}</div>}
    </DialogForm>
  );
}

/** The quilter’s name, with their turnaround and the expected day as help. */
function QuilterField({
  trip,
  contacts,
  usualDays,
  withBack,
  priceOf = () => null,
  onChange,
}: TripFormProps) {
  const { locale } = useDisplay();
  const contact = contactNamed(contacts, trip.withWhom);
  const on = today();
  const help = (): string | undefined => {
    if (trip.withWhom.trim() === '') return undefined;
    if (contact === undefined) return 'A new name: it is saved with your contacts.';
    const turnaround = turnaroundOf(contact.details, contact.trips, usualDays);
    const expected = addDays(trip.sentOn ?? on, turnaround.days);
    const expect = withBack ? '' : ` Expect it back around ${dateWords(expected, locale, on)}.`;
    return `Turnaround: ${turnaroundWords(turnaround)}.${expect}`;
  };
  return (
    <div className={layout['whole']}>
      <TextField
        label="Who’s quilting it"
        value={trip.withWhom}
        maximum={120}
        help={help()}
        suggestions={contacts.map(({ details }) => details.name)}
        onChange={(withWhom) => {
          const { priceAskedMinor } = trip;
          const isFilledIn = priceAskedMinor === null || priceAskedMinor === priceOf(trip.withWhom);
          const moved = withQuilter(trip, withWhom, contacts, usualDays);
          onChange(isFilledIn ? { ...moved, priceAskedMinor: priceOf(withWhom) } : moved);
        }}
        autoFocus
      />
    </div>
  );
}

interface SentAlongFieldsProps {
  readonly trip: TripDetails;
  readonly set: (part: Partial<TripDetails>) => void;
}

const SHORT_FIELDS = [
  { key: 'backing', label: 'Backing' },
  { key: 'batting', label: 'Batting' },
  { key: 'patternName', label: 'Pattern' },
  { key: 'thread', label: 'Thread' },
] as const;

/** What is sent along with the top, and the instructions for the quilter. */
function SentAlongFields({ trip, set }: SentAlongFieldsProps) {
  return (
    <>
      {SHORT_FIELDS.map(({ key, label }) => (
        <TextField
          key={key}
          label={label}
          value={trip[key]}
          maximum={120}
          onChange={(text) => set({ [key]: text })}
          isOptional
        />
      ))}
      <div className={layout['whole']}>
        <TextField
          label="Instructions"
          help="Density, areas to keep clear, which edge is the top."
          value={trip.askedFor}
          maximum={1_000}
          onChange={(askedFor) => set({ askedFor })}
          isLong
          isOptional
        />
      </div>
      <div className={layout['whole']}>
        <TextField
          label="Also sent along"
          value={trip.sentAlong}
          maximum={500}
          onChange={(sentAlong) => set({ sentAlong })}
          isOptional
        />
      </div>
    </>
  );
}
