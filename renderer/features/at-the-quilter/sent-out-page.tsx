import { useState } from 'react';
import { Link } from 'react-router';
import type { Contact } from '#core/contract/contacts';
import { turnaroundOf } from '#core/learned/turnaround';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { tripCount, turnaroundWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ContactDialog } from './contact-dialog';
import { PackageLine } from './package-line';
import { awaySummary, bookedTrips, packagesAway } from './packages-away';
import styles from './at-the-quilter.module.css';

/** What is out: every package that is away and until when, and everybody it may go to. */
export function SentOutPage() {
  const { value: contacts, problem } = useRead('contact:list', {});
  const { settings } = useWorkshop();
  const [isAdding, setIsAdding] = useState(false);
  if (contacts === undefined) {
    return (
      <Page title="Out">
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  const packages = packagesAway(contacts, today(), settings.silentDays);
  const booked = bookedTrips(contacts);
  return (
    <Page
      title="Out"
      under={contacts.length === 0 ? undefined : awaySummary(packages)}
      action={
        <Button look="main" onClick={() => setIsAdding(true)}>
          Add a contact
        </Button>
      }
    >
      {contacts.length === 0 && (
        <EmptyState title="Nobody to send to yet">
          <p>
            A longarm quilter, a framer, a neighbor with a machine: with their rates and how long they say
            they take. What they really take is learned from every trip that ends.
          </p>
        </EmptyState>
      )}
      {packages.length > 0 && (
        <section aria-labelledby="away">
          <h2 id="away" className={styles['heading']}>
            Away
          </h2>
          <ul className={styles['lines']}>
            {packages.map((sentPackage) => (
              <PackageLine key={sentPackage.first.packageId} sentPackage={sentPackage} />
            ))}
          </ul>
        </section>
      )}
      {booked.length > 0 && (
        <section aria-labelledby="booked">
          <h2 id="booked" className={styles['heading']}>
            Reserved, not sent yet
          </h2>
          <ul className={styles['lines']}>
            {booked.map((trip) => (
              <li key={trip.id} className={styles['line']}>
                <div className={styles['words']}>
                  <Link to={`/projects/${trip.projectId}/stages/${trip.stageId}`} className={styles['name']}>
                    {trip.projectName}
                  </Link>
                  <span className={styles['quiet']}>
                    with <Link to={`/sent-out/${trip.contactId}`}>{trip.withWhom}</Link>
                  </span>
                </div>
              </li>
            ))}
          </ul>
        </section>
      )}
      {contacts.length > 0 && (
        <section aria-labelledby="contacts">
          <h2 id="contacts" className={styles['heading']}>
            Contacts
          </h2>
          <ul className={styles['lines']}>
            {contacts.map((contact) => (
              <ContactLine key={contact.id} contact={contact} usualDays={settings.turnaroundDays} />
            ))}
          </ul>
        </section>
      )}
      {isAdding && <ContactDialog contact={null} onClose={() => setIsAdding(false)} />}
    </Page>
  );
}

function ContactLine({ contact, usualDays }: { readonly contact: Contact; readonly usualDays: number }) {
  const { details, trips } = contact;
  const turnaround = turnaroundOf(details, trips, usualDays);
  return (
    <li className={styles['line']}>
      <div className={styles['words']}>
        <Link to={`/sent-out/${contact.id}`} className={styles['name']}>
          {details.name}
        </Link>
        <span className={styles['quiet']}>
          {details.kind === 'longarm' ? 'Longarm quilter' : 'Other'}
          {details.reach !== '' && ` · ${details.reach}`}
        </span>
      </div>
      <div className={styles['words']}>
        <span>{turnaroundWords(turnaround)}</span>
        <span className={styles['quiet']}>{tripCount(trips.length)} on record</span>
      </div>
    </li>
  );
}
