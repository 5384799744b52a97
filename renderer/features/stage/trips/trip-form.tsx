import type { Contact } from '#core/contract/contacts';
import type { Problem } from '#core/contract/problem';
import type { TripDetails } from '#core/domain/trip';
import { turnaroundOf } from '#core/learned/turnaround';
import { addDays } from '#core/units/calendar-date';
import { dateWords, today } from '#renderer/text/dates';
import { turnaroundWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { DateField } from '#renderer/ui/fields/date-field';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { Form } from '#renderer/ui/fields/form';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { contactNamed, tripTo } from './trip-details';
import styles from '../stage.module.css';

interface TripFormProps {
  readonly title: string;
  readonly verb: string;
  readonly trip: TripDetails;
  readonly contacts: readonly Contact[];
  /** How many days a trip usually takes in this workshop. */
  readonly usualDays: number;
  readonly withBack: boolean;
  readonly isBusy: boolean;
  readonly problem: Problem | null;
  readonly onChange: (trip: TripDetails) => void;
  readonly onDone: () => void;
  readonly onClose: () => void;
  /** What else is asked, between the trip and its buttons. */
  readonly children?: React.ReactNode;
}

/** Everything said of one journey out of the house. */
export function TripForm(props: TripFormProps) {
  const { title, verb, trip, withBack, isBusy, problem, onChange, onDone, onClose, children } = props;
  const set = (part: Partial<TripDetails>) => onChange({ ...trip, ...part });
  const isBackEarly = trip.backOn !== null && trip.sentOn !== null && trip.backOn < trip.sentOn;
  const canDo = trip.withWhom.trim() !== '' && !isBackEarly;
  return (
    <Dialog
      title={title}
      isWide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="trip" disabled={isBusy || !canDo}>
            {verb}
          </Button>
        </>
      }
    >
      <Form id="trip" className={styles['form']} onSubmit={() => canDo && onDone()}>
        <WithWhom {...props} />
        <DateField label="Sent on" value={trip.sentOn} onChange={(sentOn) => set({ sentOn })} isOptional />
        <DateField
          label="Promised back on"
          value={trip.promisedOn}
          onChange={(promisedOn) => set({ promisedOn })}
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
          label="Price asked"
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
        <WhatGoes trip={trip} set={set} />
        {children !== undefined && <div className={styles['whole']}>{children}</div>}
      </Form>
      <ProblemNotice problem={problem} />
    </Dialog>
  );
}

/** The name, and below it what is known of whoever bears it. */
function WithWhom({ trip, contacts, usualDays, withBack, onChange }: TripFormProps) {
  const { locale } = useDisplay();
  const contact = contactNamed(contacts, trip.withWhom);
  const on = today();
  const help = (): string | undefined => {
    if (trip.withWhom.trim() === '') return undefined;
    if (contact === undefined) return 'Somebody new: kept with your contacts.';
    const turnaround = turnaroundOf(contact.details, contact.trips, usualDays);
    const expected = addDays(trip.sentOn ?? on, turnaround.days);
    const expect = withBack ? '' : ` Reckon with ${dateWords(expected, locale, on)}.`;
    return `Turn-around: ${turnaroundWords(turnaround)}.${expect}`;
  };
  return (
    <div className={styles['whole']}>
      <TextField
        label="With whom"
        value={trip.withWhom}
        maximum={120}
        help={help()}
        suggestions={contacts.map(({ details }) => details.name)}
        onChange={(withWhom) => onChange(tripTo(trip, withWhom, contacts, usualDays))}
        autoFocus
      />
    </div>
  );
}

interface WhatGoesProps {
  readonly trip: TripDetails;
  readonly set: (part: Partial<TripDetails>) => void;
}

const FEW_FIELDS = [
  { key: 'backing', label: 'Backing' },
  { key: 'batting', label: 'Batting' },
  { key: 'patternName', label: 'Pattern' },
  { key: 'thread', label: 'Thread' },
] as const;

/** What goes along with the top, and what is asked for. */
function WhatGoes({ trip, set }: WhatGoesProps) {
  return (
    <>
      {FEW_FIELDS.map(({ key, label }) => (
        <TextField
          key={key}
          label={label}
          value={trip[key]}
          maximum={120}
          onChange={(text) => set({ [key]: text })}
          isOptional
        />
      ))}
      <div className={styles['whole']}>
        <TextField
          label="Asked for"
          help="Density, what to keep clear of, which edge is the top."
          value={trip.askedFor}
          maximum={1_000}
          onChange={(askedFor) => set({ askedFor })}
          isLong
          isOptional
        />
      </div>
      <div className={styles['whole']}>
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
