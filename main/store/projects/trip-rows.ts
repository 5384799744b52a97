import type { Trip } from '#core/contract/projects';
import type { ContactId, PackageId, ProjectId, StageId, TripEventId, TripId } from '#core/domain/ids';
import { packingListSchema, type TripDetails, type TripEvent, tripEventKindSchema } from '#core/domain/trip';
import { allRows, type ReadableStore, type Row, type Value } from '../base/handles';
import {
  choiceOf,
  dateOf,
  dateOrNullOf,
  groupRows,
  idOf,
  jsonOf,
  numberOrNullOf,
  readBy,
  textOf,
} from '../base/rows';

const TRIP = `SELECT trip.*, project_id, contact.name AS with_whom
  FROM trip JOIN stage ON stage.id = stage_id JOIN contact ON contact.id = contact_id`;

/** The trips of these projects in the order they were entered. */
export function tripsByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly Trip[]> {
  const those = 'project_id IN (SELECT value FROM json_each(?))';
  const trips = readTrips(store, those, projectIds);
  return new Map(projectIds.map((id) => [id, trips.filter(({ projectId }) => projectId === id)]));
}

/** These trips in the order they were entered. Unknown ids are left out. */
export function tripsOf(store: ReadableStore, tripIds: readonly string[]): readonly Trip[] {
  return readTrips(store, 'trip.id IN (SELECT value FROM json_each(?))', tripIds);
}

export function findTrip(store: ReadableStore, id: string): Trip | undefined {
  return tripsOf(store, [id])[0];
}

/** The trips in one package. */
export function tripsOfPackage(store: ReadableStore, packageId: PackageId): readonly Trip[] {
  return readTrips(store, 'trip.parcel_id IN (SELECT value FROM json_each(?))', [packageId]);
}

function readTrips(store: ReadableStore, those: string, values: readonly string[]): readonly Trip[] {
  const rows = allRows(store, `${TRIP} WHERE ${those} ORDER BY trip.seq`, JSON.stringify(values));
  const events = groupRows(
    allRows(
      store,
      'SELECT * FROM trip_event WHERE trip_id IN (SELECT value FROM json_each(?)) ORDER BY on_day, seq',
      JSON.stringify(rows.map((row) => textOf(row, 'id'))),
    ),
    'trip_id',
  );
  return rows.map((row) => tripOf(row, (events.get(row['id']) ?? []).map(eventOf)));
}

function tripOf(row: Row, events: readonly TripEvent[]): Trip {
  const id = idOf<TripId>(row, 'id');
  return {
    id,
    stageId: idOf<StageId>(row, 'stage_id'),
    projectId: idOf<ProjectId>(row, 'project_id'),
    contactId: idOf<ContactId>(row, 'contact_id'),
    packageId: idOf<PackageId>(row, 'parcel_id'),
    packing: readBy(packingListSchema, jsonOf(row, 'packing_json'), `trip ${id}`),
    events,
    withWhom: textOf(row, 'with_whom'),
    sentOn: dateOrNullOf(row, 'sent_on'),
    promisedOn: dateOrNullOf(row, 'promised_on'),
    backOn: dateOrNullOf(row, 'back_on'),
    trackingNumber: textOf(row, 'tracking_number'),
    backing: textOf(row, 'backing'),
    batting: textOf(row, 'batting'),
    thread: textOf(row, 'thread'),
    patternName: textOf(row, 'pattern_name'),
    sentAlong: textOf(row, 'sent_along'),
    askedFor: textOf(row, 'asked_for'),
    priceAskedMinor: numberOrNullOf(row, 'price_asked_minor'),
    priceMinor: numberOrNullOf(row, 'price_minor'),
  };
}

function eventOf(row: Row): TripEvent {
  return {
    id: idOf<TripEventId>(row, 'id'),
    kind: choiceOf(row, 'kind', tripEventKindSchema.options),
    on: dateOf(row, 'on_day'),
    note: textOf(row, 'note'),
  };
}

/** The columns of a trip's details, without the contact. */
export function tripColumns(details: TripDetails): Readonly<Record<string, Value>> {
  return {
    sent_on: details.sentOn,
    promised_on: details.promisedOn,
    back_on: details.backOn,
    tracking_number: details.trackingNumber,
    backing: details.backing,
    batting: details.batting,
    thread: details.thread,
    pattern_name: details.patternName,
    sent_along: details.sentAlong,
    asked_for: details.askedFor,
    price_asked_minor: details.priceAskedMinor,
    price_minor: details.priceMinor,
  };
}
