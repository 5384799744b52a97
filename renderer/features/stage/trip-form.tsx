import type { TripDetails } from '#core/domain/trip';
import { Button } from '#renderer/ui/button';
import { DateField } from '#renderer/ui/date-field';
import { Dialog } from '#renderer/ui/dialog';
import { Form } from '#renderer/ui/form';
import { MoneyField } from '#renderer/ui/money-field';
import { ProblemNotice } from '#renderer/ui/problem-notice';
import { TextField } from '#renderer/ui/text-field';
import type { Problem } from '#core/contract/problem';
import styles from './stage.module.css';

interface TripFormProps {
  readonly title: string;
  readonly verb: string;
  readonly trip: TripDetails;
  readonly withBack: boolean;
  readonly isBusy: boolean;
  readonly problem: Problem | null;
  readonly onChange: (trip: TripDetails) => void;
  readonly onDone: () => void;
  readonly onClose: () => void;
}

/** Everything said of one journey out of the house. */
export function TripForm(props: TripFormProps) {
  const { title, verb, trip, withBack, isBusy, problem, onChange, onDone, onClose } = props;
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
        <div className={styles['whole']}>
          <TextField
            label="With whom"
            value={trip.withWhom}
            maximum={120}
            onChange={(withWhom) => set({ withWhom })}
            autoFocus
          />
        </div>
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
          label="Price"
          value={trip.priceMinor}
          onCommit={(priceMinor) => set({ priceMinor })}
          isOptional
        />
        <TextField
          label="Tracking number"
          value={trip.trackingNumber}
          maximum={120}
          onChange={(trackingNumber) => set({ trackingNumber })}
          isOptional
        />
        <div className={styles['whole']}>
          <TextField
            label="Sent along"
            help="Such as top, backing, batting, thread."
            value={trip.sentAlong}
            maximum={500}
            onChange={(sentAlong) => set({ sentAlong })}
            isOptional
          />
        </div>
        <div className={styles['whole']}>
          <TextField
            label="Asked for"
            help="Pattern, thread, density, what to keep clear of."
            value={trip.askedFor}
            maximum={1_000}
            onChange={(askedFor) => set({ askedFor })}
            isLong
            isOptional
          />
        </div>
      </Form>
      <ProblemNotice problem={problem} />
    </Dialog>
  );
}
