import type { Contact, ContactTrip } from '#core/contract/contacts';
import type { Trip } from '#core/contract/projects';

/** The trips of other projects in the same package that are still away. */
export function othersInPackage(contacts: readonly Contact[], trip: Trip): readonly ContactTrip[] {
  return contacts
    .flatMap(({ trips }) => trips)
    .filter(({ id, packageId, backOn }) => packageId === trip.packageId && id !== trip.id && backOn === null);
}
