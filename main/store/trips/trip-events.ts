import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { TripEventKind } from '#core/domain/trip';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { insertRow, oneRow, type ReadableStore, updateRow, write } from '../base/handles';
import { notFound } from '../base/lookups';
import { touchProject } from '../projects/project-rows';
import { textOf } from '../base/rows';
import { findTrip, tripsOfPackage } from '../projects/trip-rows';

const WORDS: Readonly<Record<TripEventKind, string>> = {
  packed: 'Packed for',
  arrived: 'Arrived at',
  'on-the-frame': 'On the frame at',
  ready: 'Ready at',
  'sent-back': 'Sent back by',
  heard: 'Update from',
};

/** Adds an update to a trip, or to every trip of its package that is not back yet. */
export function addTripEvent(
  store: ReadableStore,
  { tripId, kind, on, note, ofWholePackage }: ChannelInput<'trip:add-event'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  const sentPackage = ofWholePackage ? tripsOfPackage(store, trip.packageId) : [];
  const others = sentPackage.filter(({ id, backOn }) => id !== tripId && backOn === null);
  return recordChange(store, `${WORDS[kind]} ${trip.withWhom}`, (writable) => {
    for (const { id, projectId } of [trip, ...others]) {
      insertRow(writable, 'trip_event', {
        id: store.clockAndIds.newId(),
        trip_id: id,
        kind,
        on_day: on,
        note,
      });
      touchProject(writable, projectId);
    }
    return success({});
  });
}

export function deleteTripEvent(
  store: ReadableStore,
  { tripEventId }: ChannelInput<'trip:delete-event'>,
): Result<Changed, Problem> {
  const row = oneRow(store, 'SELECT trip_id FROM trip_event WHERE id = ?', tripEventId);
  const trip = row === undefined ? undefined : findTrip(store, textOf(row, 'trip_id'));
  if (trip === undefined) return notFound('trip-event');
  return recordChange(store, `Deleted an update from ${trip.withWhom}`, (writable) => {
    write(writable, 'DELETE FROM trip_event WHERE id = ?', tripEventId);
    touchProject(writable, trip.projectId);
    return success({});
  });
}

/** Saves the packing list of a trip. */
export function packTrip(
  store: ReadableStore,
  { tripId, packing }: ChannelInput<'trip:pack'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  return recordChange(store, `Changed the packing list for ${trip.withWhom}`, (writable) => {
    updateRow(writable, 'trip', tripId, { packing_json: JSON.stringify(packing) });
    touchProject(writable, trip.projectId);
    return success({});
  });
}
