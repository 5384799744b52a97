import { useId, useState } from 'react';
import { Link } from 'react-router';
import type { Contact } from '#core/contract/contacts';
import type { Trip } from '#core/contract/projects';
import type { Measurements } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import { tripWith } from '#core/domain/trip';
import {
  compareQuilters,
  type OfferOrder,
  orderOffers,
  type QuilterOffer,
} from '#core/learned/compare-quilters';
import { type CalendarDate } from '#core/units/calendar-date';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useRead, useWrite } from '#renderer/bridge/query';
import { dateWords, today } from '#renderer/text/dates';
import { turnaroundWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import { classes } from '#renderer/ui/base/classes';
import { DateField } from '#renderer/ui/fields/date-field';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { tripDetailsOf } from './trip-details';
import styles from './quilters.module.css';

interface QuiltersProps {
  readonly stage: Stage;
  /** With whom it is agreed already. */
  readonly booked: Trip | null;
  readonly measurements: Measurements;
  readonly dueOn: CalendarDate | null;
}

const ORDERS: readonly { readonly value: OfferOrder; readonly words: string }[] = [
  { value: 'day', words: 'Earliest back' },
  { value: 'price', words: 'Least price' },
];

/** Who could quilt this piece: for how much, and when it would be back, judged by their own past trips. */
export function Quilters({ stage, booked, measurements, dueOn }: QuiltersProps) {
  const titleId = useId();
  const contacts = useRead('contact:list', {}).value;
  const [sentOn, setSentOn] = useState<CalendarDate | null>(null);
  const [wantedOn, setWantedOn] = useState<CalendarDate | null>(dueOn);
  const [order, setOrder] = useState<OfferOrder>('day');
  const quilters = contacts?.filter(({ details }) => details.kind === 'longarm');
  if (quilters === undefined) return null;
  const offers = compareQuilters(quilters.map(quilterOf), {
    measurements,
    sentOn: sentOn ?? today(),
    wantedOn,
  });
  return (
    <section className={styles['quilters']} aria-labelledby={titleId}>
      <h3 id={titleId}>Who could quilt it</h3>
      {offers.length === 0 ? (
        <p className={styles['quiet']}>
          No longarm quilter is known yet. <Link to="/out">Add one</Link> with rates and turn-around, and they
          are compared here for this piece.
        </p>
      ) : (
        <>
          <Offers offers={orderOffers(offers, order)} stage={stage} booked={booked} />
          <div className={styles['asked']}>
            <DateField label="If sent on" value={sentOn ?? today()} onChange={setSentOn} />
            <DateField label="Wanted back by" value={wantedOn} onChange={setWantedOn} isOptional />
            <Choice label="First" value={order} options={ORDERS} onChange={setOrder} />
          </div>
        </>
      )}
    </section>
  );
}

function quilterOf({ id, details, trips }: Contact) {
  return { id, details, journeys: trips };
}

interface OffersProps extends Pick<QuiltersProps, 'stage' | 'booked'> {
  readonly offers: readonly QuilterOffer[];
}

function Offers({ offers, stage, booked }: OffersProps) {
  const { currency, locale } = useDisplay();
  const on = today();
  return (
    <ul className={styles['offers']}>
      {offers.map((offer) => (
        <li key={offer.id} className={styles['offer']}>
          <div className={styles['who']}>
            <Link to={`/out/${offer.id}`} className={styles['name']}>
              {offer.name}
            </Link>
            <span className={styles['quiet']}>{turnaroundWords(offer.turnaround)}</span>
            <Booking offer={offer} stage={stage} booked={booked} />
          </div>
          <div className={styles['figure']}>
            <span className={styles['large']}>
              {offer.priceMinor === null
                ? 'no price'
                : formatMoney(moneyFromMinor(offer.priceMinor, currency), locale)}
            </span>
            <span className={styles['quiet']}>{rateWords(offer)}</span>
          </div>
          <div className={styles['figure']}>
            <span className={classes(styles['large'], offer.isInTime === false && styles['alert'])}>
              {dateWords(offer.backOn, locale, on)}
            </span>
            <span className={styles['quiet']}>{dayWords(offer, locale, on)}</span>
          </div>
        </li>
      ))}
    </ul>
  );
}

interface BookingProps extends Pick<QuiltersProps, 'stage' | 'booked'> {
  readonly offer: QuilterOffer;
}

/** Agrees on a trip ahead with one of them, so that the days are planned by their turn-around; sending it comes later. */
function Booking({ offer, stage, booked }: BookingProps) {
  const adding = useWrite('trip:add');
  const changing = useWrite('trip:change');
  if (booked?.contactId === offer.id) return <strong>Booked</strong>;
  const book = () =>
    booked === null
      ? adding.write({ stageId: stage.id, details: tripWith(offer.name) })
      : changing.write({ tripId: booked.id, details: { ...tripDetailsOf(booked), withWhom: offer.name } });
  return (
    <div>
      <Button
        isSmall
        aria-label={`Book ${offer.name}`}
        disabled={adding.isWriting || changing.isWriting}
        onClick={() => void book()}
      >
        {booked === null ? 'Book' : 'Book instead'}
      </Button>
      <ProblemNotice problem={adding.problem ?? changing.problem} />
    </div>
  );
}

function rateWords({ isOwnRate, isAtMinimum }: QuilterOffer): string {
  if (!isOwnRate) return 'by the workshop’s usual rate';
  return isAtMinimum ? 'their minimum' : 'by their rate';
}

function dayWords({ backOn, lateBackOn, isInTime }: QuilterOffer, locale: string, on: CalendarDate): string {
  const late = lateBackOn === backOn ? '' : `, or as late as ${dateWords(lateBackOn, locale, on)}`;
  if (isInTime === null) return `expected back${late}`;
  return isInTime ? `in time${late}` : `too late${late}`;
}
