import { useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { Contact, ContactTrip } from '#core/contract/contacts';
import type { ContactId } from '#core/domain/ids';
import { isBookedAhead } from '#core/domain/trip';
import { type Turnaround, turnaroundOf } from '#core/learned/turnaround';
import { daysBetween } from '#core/units/calendar-date';
import { formatMoney, minorDigits } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { dateWords, today } from '#renderer/text/dates';
import { dayCount, turnaroundWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { FactList } from '#renderer/ui/page/fact-list';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './at-the-quilter.module.css';
import { ContactDialog } from './contact-dialog';
import { LineSection } from './line-section';

const BACK = { to: '/sent-out', words: 'Sent out' };

/** One contact: how long they really take, what they charge, and all trips to them. */
export function ContactPage({ contactId }: { readonly contactId: ContactId }) {
  const { value: contacts, problem } = useRead('contact:list', {});
  const { settings } = useWorkshop();
  const [isChanging, setIsChanging] = useState(false);
  const contact = contacts?.find(({ id }) => id === contactId);
  if (contact === undefined) {
    const gone = contacts === undefined ? problem : ({ code: 'not-found', kind: 'contact' } as const);
    return (
      <Page title="Contact" back={BACK}>
        <ProblemNotice problem={gone} />
      </Page>
    );
  }
  const { details, trips } = contact;
  return (
    <Page
      title={details.name}
      under={[details.kind === 'longarm' ? 'Longarm quilter' : 'Contact', details.reach]
        .filter((part) => part !== '')
        .join(' · ')}
      back={BACK}
      aside={trips.length === 0 && <DeleteContact contact={contact} />}
      action={
        <Button look="main" onClick={() => setIsChanging(true)}>
          Change
        </Button>
      }
    >
      <Days turnaround={turnaroundOf(details, trips, settings.turnaroundDays)} />
      <Charges contact={contact} />
      {details.notes !== '' && <p className={layout['notes']}>{details.notes}</p>}
      <Trips trips={trips} />
      {isChanging && <ContactDialog contact={contact} onClose={() => setIsChanging(false)} />}
    </Page>
  );
}

function Days({ turnaround }: { readonly turnaround: Turnaround }) {
  return (
    <div>
      <p className={layout['quiet']}>Time away</p>
      <p className={styles['hero']}>
        {turnaround.days} <span className={styles['unit']}>{turnaround.days === 1 ? 'day' : 'days'}</span>
      </p>
      <p className={layout['quiet']}>{turnaroundWords(turnaround)}</p>
    </div>
  );
}

function Charges({ contact }: { readonly contact: Contact }) {
  const { currency, locale } = useDisplay();
  const { rateMinor, minimumMinor, lines, promisedDays } = contact.details;
  const facts: readonly (readonly [string, string])[] = [
    [
      'Rate',
      rateMinor === null
        ? 'not known'
        : `${currency} ${String(rateMinor / 10 ** minorDigits(currency))} per square inch`,
    ],
    [
      'Minimum',
      minimumMinor === null ? 'not known' : formatMoney(moneyFromMinor(minimumMinor, currency), locale),
    ],
    ['They say it takes', promisedDays === null ? 'not known' : dayCount(promisedDays)],
    ...(lines.length === 0 ? [] : [['Other charges', lines.map(({ name }) => name).join(', ')] as const]),
  ];
  return <FactList facts={facts} />;
}

function Trips({ trips }: { readonly trips: readonly ContactTrip[] }) {
  const { currency, locale } = useDisplay();
  if (trips.length === 0) return <p className={layout['quiet']}>No trips yet.</p>;
  return (
    <LineSection title="Trips">
      {trips.map((trip) => (
        <li key={trip.id} className={classes(styles['line'], styles['trip'])}>
          <Link to={`/projects/${trip.projectId}/stages/${trip.stageId}`} className={layout['name']}>
            {trip.projectName}
          </Link>
          <span>{tripDaysWords(trip, locale)}</span>
          <span>
            {trip.sentOn !== null && trip.backOn !== null && dayCount(daysBetween(trip.sentOn, trip.backOn))}
          </span>
          <span>
            {trip.priceMinor !== null && formatMoney(moneyFromMinor(trip.priceMinor, currency), locale)}
          </span>
        </li>
      ))}
    </LineSection>
  );
}

/** `Oct 3 to Nov 10`, `sent Oct 3, not back yet`, `reserved, not sent yet`. */
function tripDaysWords(trip: ContactTrip, locale: string): string {
  const { sentOn, backOn } = trip;
  if (isBookedAhead(trip, trip.stageState)) return 'reserved, not sent yet';
  const day = (date: NonNullable<ContactTrip['sentOn']>) => dateWords(date, locale, today());
  const sent = sentOn === null ? 'on an unknown date' : day(sentOn);
  return backOn === null ? `sent ${sent}, not back yet` : `${sent} to ${day(backOn)}`;
}

function DeleteContact({ contact }: { readonly contact: Contact }) {
  const deleting = useWrite('contact:delete');
  const navigate = useNavigate();
  const remove = async () => {
    const answer = await deleting.write({ contactId: contact.id });
    if (answer.ok) void navigate('/sent-out');
  };
  return (
    <>
      <Button look="quiet" isSmall disabled={deleting.isWriting} onClick={() => void remove()}>
        Delete
      </Button>
      <ProblemNotice problem={deleting.problem} />
    </>
  );
}
