import type { Contact, ContactTrip } from '#core/contract/contacts';
import type { Trip } from '#core/contract/projects';

/** The other pieces that went in the same parcel and are still away. */
export function othersInParcel(contacts: readonly Contact[], trip: Trip): readonly ContactTrip[] {
  return contacts
    .flatMap(({ trips }) => trips)
    .filter(({ id, parcelId, backOn }) => parcelId === trip.parcelId && id !== trip.id && backOn === null);
}
