import type { Contact, ContactTrip } from '#core/contract/contacts';
import type { Trip } from '#core/contract/projects';

/** The other pieces that went in the same package and are still away. */
export function othersInPackage(contacts: readonly Contact[], trip: Trip): readonly ContactTrip[] {
  return contacts
    .flatMap(({ trips }) => trips)
    .filter(({ id, packageId, backOn }) => packageId === trip.packageId && id !== trip.id && backOn === null);
}
