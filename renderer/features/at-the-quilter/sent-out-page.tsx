import { useState } from 'react';
import { Link } from 'react-router';
import type { Contact, ContactTrip } from '#core/contract/contacts';
import { turnaroundOf } from '#core/learned/turnaround';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { tripCount, turnaroundWords } from '#renderer/text/trip-words';
import { Button } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import layout from '#renderer/ui/page/layout.module.css';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import styles from './at-the-quilter.module.css';
import { ContactDialog } from './contact-dialog';
import { LineSection } from './line-section';
import { PackageLine } from './package-line';
import { awaySummary, bookedTrips, packagesAway } from './packages-away';

/** What is at a quilter and until when, what is booked, and all contacts. */
export function SentOutPage() {
  const { value: contacts, problem } = useRead('contact:list', {});
  const { settings } = useWorkshop();
  const [isAdding, setIsAdding] = useState(false);
  if (contacts === undefined) {
    return (
      <Page title="Sent out">
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  const packages = packagesAway(contacts, today(), settings.silentDays);
  const booked = bookedTrips(contacts);
  return (
    <Page
      title="Sent out"
      under={contacts.length === 0 ? undefined : awaySummary(packages)}
      action={
        <Button look="main" onClick={() => setIsAdding(true)}>
          Add a contact
        </Button>
      }
    >
      {contacts.length === 0 && (
        <EmptyState title="No contacts yet">
          <p>
            Add a longarm quilter, a framer, or a neighbor with a machine, with their rates and how long they
            say they take. The notebook learns how long they really take from every trip that ends.
          </p>
        </EmptyState>
      )}
      {packages.length > 0 && (
        <LineSection title="At the quilter">
          {packages.map((sentPackage) => (
            <PackageLine key={sentPackage.first.packageId} sentPackage={sentPackage} />
          ))}
        </LineSection>
      )}
      {booked.length > 0 && (
        <LineSection title="Reserved, not sent yet">
          {booked.map((trip) => (
            <BookedLine key={trip.id} trip={trip} />
          ))}
        </LineSection>
      )}
      {contacts.length > 0 && (
        <LineSection title="Contacts">
          {contacts.map((contact) => (
            <ContactLine key={contact.id} contact={contact} usualDays={settings.turnaroundDays} />
          ))}
        </LineSection>
      )}
      {isAdding && <ContactDialog contact={null} onClose={() => setIsAdding(false)} />}
    </Page>
  );
}

function BookedLine({ trip }: { readonly trip: ContactTrip }) {
  return (
    <li className={styles['line']}>
      <div className={styles['words']}>
        <Link to={`/projects/${trip.projectId}/stages/${trip.stageId}`} className={layout['name']}>
          {trip.projectName}
        </Link>
        <span className={layout['quiet']}>
          with <Link to={`/sent-out/${trip.contactId}`}>{trip.withWhom}</Link>
        </span>
      </div>
    </li>
  );
}

function ContactLine({ contact, usualDays }: { readonly contact: Contact; readonly usualDays: number }) {
  const { details, trips } = contact;
  const turnaround = turnaroundOf(details, trips, usualDays);
  return (
    <li className={styles['line']}>
      <div className={styles['words']}>
        <Link to={`/sent-out/${contact.id}`} className={layout['name']}>
          {details.name}
        </Link>
        <span className={layout['quiet']}>
          {details.kind === 'longarm' ? 'Longarm quilter' : 'Other'}
          {details.reach !== '' && ` · ${details.reach}`}
        </span>
      </div>
      <div className={styles['words']}>
        <span>{turnaroundWords(turnaround)}</span>
        <span className={layout['quiet']}>{tripCount(trips.length)} on record</span>
      </div>
    </li>
  );
}
