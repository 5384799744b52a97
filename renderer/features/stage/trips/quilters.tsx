import { useId, useState } from 'react';
import { Link } from 'react-router';
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
import { usePlannedDates } from '#renderer/bridge/dates';
import { useRead, useWrite } from '#renderer/bridge/query';
import { dateWords, today } from '#renderer/text/dates';
import { turnaroundWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import { classes } from '#renderer/ui/base/classes';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DiscardEntries } from '#renderer/ui/page/discard-entries';
import { DateField } from '#renderer/ui/fields/date-field';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { tripDetailsOf } from './trip-details';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './quilters.module.css';

interface QuiltersProps {
  readonly stage: Stage;
  /** The trip already reserved for this stage. */
  readonly reserved: Trip | null;
  readonly measurements: Measurements;
}

const ORDERS: readonly { readonly value: OfferOrder; readonly words: string }[] = [
  { value: 'day', words: 'Earliest back' },
  { value: 'price', words: 'Lowest price' },
];

/** Compares the longarm quilters for this project: the price, and the day it should be back, from their past trips. */
export function Quilters({ stage, reserved, measurements }: QuiltersProps) {
  const titleId = useId();
  const contacts = useRead('contact:list', {}).value;
  const draft = useFormDraft(`quilters ${stage.id}`);
  const [sentOn, setSentOn] = useDraftValue<CalendarDate | null>(draft, 'sentOn', null);
  const [typed, setTyped] = useDraftValue<CalendarDate | null | undefined>(draft, 'wantedOn', undefined);
  const neededBackOn = useNeededBack(stage);
  const wantedOn = typed === undefined ? neededBackOn : typed;
  const [order, setOrder] = useState<OfferOrder>('day');
  const quilters = contacts?.filter(({ details }) => details.kind === 'longarm');
  if (quilters === undefined) return null;
  const offers = compareQuilters(quilters, {
    measurements,
    sentOn: sentOn ?? today(),
    wantedOn,
  });
  return (
    <section className={styles['quilters']} aria-labelledby={titleId}>
      <h3 id={titleId}>Who could quilt it</h3>
      {offers.length === 0 ? (
        <p className={layout['quiet']}>
          You haven’t added a longarm quilter yet. <Link to="/sent-out">Add one</Link> with rates and
          turnaround, and they are compared here for this project.
        </p>
      ) : (
        <>
          <Offers offers={orderOffers(offers, order)} stage={stage} reserved={reserved} />
          <div className={styles['asked']}>
            <DateField label="If sent on" value={sentOn ?? today()} onChange={setSentOn} />
            <DateField label="Needed back by" value={wantedOn} onChange={setTyped} isOptional />
            <Choice label="Show first" value={order} options={ORDERS} onChange={setOrder} />
            <DiscardEntries draft={draft} />
          </div>
          <p className={layout['quiet']}>
            Prices here are estimates. What you agree on with your quilter counts.
          </p>
        </>
      )}
    </section>
  );
}

/** The last day on which the project may come back, so that the stages after the quilting still get done; null without a due day. */
function useNeededBack({ id, projectId }: Stage): CalendarDate | null {
  const planned = usePlannedDates(today()).value;
  const steps = planned?.plan.projects.find((one) => one.id === projectId)?.steps ?? [];
  const wait = steps.findIndex((step) => step.id === id && step.kind === 'wait');
  return wait < 0 ? null : (steps[wait + 1]?.latestStartOn ?? null);
}

interface OffersProps extends Pick<QuiltersProps, 'stage' | 'reserved'> {
  readonly offers: readonly QuilterOffer[];
}

function Offers({ offers, stage, reserved }: OffersProps) {
  const { currency, locale } = useDisplay();
  const on = today();
  return (
    <ul className={styles['offers']}>
      {offers.map((offer) => (
        <li key={offer.id} className={styles['offer']}>
          <div className={styles['who']}>
            <Link to={`/sent-out/${offer.id}`} className={layout['name']}>
              {offer.name}
            </Link>
            <span className={layout['quiet']}>{turnaroundWords(offer.turnaround)}</span>
            <ReserveButton offer={offer} stage={stage} reserved={reserved} />
          </div>
          <div className={styles['figure']}>
            <span className={styles['large']}>
              {offer.priceMinor === null
                ? 'no price'
                : formatMoney(moneyFromMinor(offer.priceMinor, currency), locale)}
            </span>
            <span className={layout['quiet']}>{rateWords(offer)}</span>
          </div>
          <div className={styles['figure']}>
            <span className={classes(styles['large'], offer.isInTime === false && layout['alert'])}>
              {dateWords(offer.backOn, locale, on)}
            </span>
            <span className={layout['quiet']}>{dayWords(offer, locale, on)}</span>
          </div>
        </li>
      ))}
    </ul>
  );
}

interface ReserveButtonProps extends Pick<QuiltersProps, 'stage' | 'reserved'> {
  readonly offer: QuilterOffer;
}

/** Reserves a quilter before sending, so that the schedule uses their turnaround. */
function ReserveButton({ offer, stage, reserved }: ReserveButtonProps) {
  const adding = useWrite('trip:add');
  const changing = useWrite('trip:change');
  if (reserved?.contactId === offer.id) return <strong>Reserved</strong>;
  const reserve = () =>
    reserved === null
      ? adding.write({
          stageId: stage.id,
          details: { ...tripWith(offer.name), priceAskedMinor: offer.priceMinor },
        })
      : changing.write({
          tripId: reserved.id,
          details: {
            ...tripDetailsOf(reserved),
            withWhom: offer.name,
            priceAskedMinor: offer.priceMinor,
          },
        });
  return (
    <div>
      <Button
        isSmall
        aria-label={`Reserve ${offer.name}`}
        disabled={adding.isWriting || changing.isWriting}
        onClick={() => void reserve()}
      >
        {reserved === null ? 'Reserve' : 'Reserve instead'}
      </Button>
      <ProblemNotice problem={adding.problem ?? changing.problem} />
    </div>
  );
}

function rateWords({ isOwnRate, isAtMinimum }: QuilterOffer): string {
  if (!isOwnRate) return 'at your usual rate';
  return isAtMinimum ? 'their minimum' : 'at their rate';
}

function dayWords({ backOn, lateBackOn, isInTime }: QuilterOffer, locale: string, on: CalendarDate): string {
  const late = lateBackOn === backOn ? '' : `, or as late as ${dateWords(lateBackOn, locale, on)}`;
  if (isInTime === null) return `expected back${late}`;
  return isInTime ? `on time${late}` : `too late${late}`;
}
