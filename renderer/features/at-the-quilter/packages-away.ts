import type { Contact, ContactTrip } from '#core/contract/contacts';
import { reasonToCheckIn, type CheckInReason, isBookedAhead } from '#core/domain/trip';
import type { CalendarDate } from '#core/units/calendar-date';

/** The trips of one package that are not back yet, with the reason to check in with the quilter, if there is one. */
export interface PackageAway {
  readonly contact: Contact;
  readonly trips: readonly ContactTrip[];
  readonly first: ContactTrip;
  readonly ask: CheckInReason | null;
}

/** All packages that are not back yet: first those to check on, the longest overdue or silent first, then by promised day. */
export function packagesAway(
  contacts: readonly Contact[],
  on: CalendarDate,
  silentDays: number,
): readonly PackageAway[] {
  const packages = contacts.flatMap((contact) => {
    const away = contact.trips.filter(isAway);
    const ids = [...new Set(away.map(({ packageId }) => packageId))];
    return ids.flatMap((id) => {
      const trips = away.filter(({ packageId }) => packageId === id);
      const [first] = trips;
      return first === undefined ? [] : [{ contact, trips, first, ask: pressingAsk(trips, on, silentDays) }];
    });
  });
  return packages.toSorted(
    (one, other) =>
      (other.ask?.days ?? 0) - (one.ask?.days ?? 0) ||
      (one.first.promisedOn ?? '9999').localeCompare(other.first.promisedOn ?? '9999') ||
      one.contact.details.name.localeCompare(other.contact.details.name),
  );
}

/** The trip was sent and is not back; a trip at the quilter may have no sent day on record. */
function isAway(trip: ContactTrip): boolean {
  return trip.backOn === null && !isBookedAhead(trip, trip.stageState);
}

/** The trips that are booked but not sent yet. */
export function bookedTrips(contacts: readonly Contact[]): readonly ContactTrip[] {
  return contacts.flatMap(({ trips }) => trips.filter((trip) => isBookedAhead(trip, trip.stageState)));
}

function pressingAsk(
  trips: readonly ContactTrip[],
  on: CalendarDate,
  silentDays: number,
): CheckInReason | null {
  const asks = trips.map((trip) => reasonToCheckIn(trip, on, silentDays)).filter((ask) => ask !== null);
  return asks.toSorted((one, other) => other.days - one.days)[0] ?? null;
}

/** `3 projects at 2 contacts, 1 to check on`. */
export function awaySummary(packages: readonly PackageAway[]): string {
  const projects = packages.reduce((sum, { trips }) => sum + trips.length, 0);
  if (projects === 0) return 'Nothing is sent out: every project is at home.';
  const contacts = new Set(packages.map(({ contact }) => contact.id)).size;
  const toCheck = packages.filter(({ ask }) => ask !== null).length;
  const away = `${counted(projects, 'project')} at ${counted(contacts, 'contact')}`;
  return toCheck === 0 ? away : `${away}, ${String(toCheck)} to check on`;
}

function counted(count: number, one: string): string {
  return count === 1 ? `1 ${one}` : `${String(count)} ${one}s`;
}
