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
  heard: 'Word from',
};

/** Writes down a word of a trip, or of every trip of its package that is still away. */
export function tellTrip(
  store: ReadableStore,
  { tripId, kind, on, note, ofWholePackage }: ChannelInput<'trip:tell'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  const sentPackage = ofWholePackage ? tripsOfPackage(store, trip.packageId) : [];
  const others = sentPackage.filter(({ id, backOn }) => id !== tripId && backOn === null);
  return recordChange(store, `${WORDS[kind]} ${trip.withWhom}`, (writable) => {
    for (const { id, projectId } of [trip, ...others]) {
      insertRow(writable, 'trip_event', {
        id: store.surroundings.newId(),
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

export function untellTrip(
  store: ReadableStore,
  { tripEventId }: ChannelInput<'trip:untell'>,
): Result<Changed, Problem> {
  const row = oneRow(store, 'SELECT trip_id FROM trip_event WHERE id = ?', tripEventId);
  const trip = row === undefined ? undefined : findTrip(store, textOf(row, 'trip_id'));
  if (trip === undefined) return notFound('word of the trip');
  return recordChange(store, `Struck out a word from ${trip.withWhom}`, (writable) => {
    write(writable, 'DELETE FROM trip_event WHERE id = ?', tripEventId);
    touchProject(writable, trip.projectId);
    return success({});
  });
}

/** Keeps the list by which the package is packed, with what is in it. */
export function packTrip(
  store: ReadableStore,
  { tripId, packing }: ChannelInput<'trip:pack'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  return recordChange(store, `Packing list for ${trip.withWhom}`, (writable) => {
    updateRow(writable, 'trip', tripId, { packing_json: JSON.stringify(packing) });
    touchProject(writable, trip.projectId);
    return success({});
  });
}
