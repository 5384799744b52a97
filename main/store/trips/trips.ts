import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed, Trip } from '#core/contract/projects';
import type { PackageId, StageId, TripId } from '#core/domain/ids';
import type { PackingLine, TripDetails } from '#core/domain/trip';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { contactByName } from './contacts';
import { insertRow, oneRow, type ReadableStore, updateRow, type WritableStore, write } from '../base/handles';
import { findStage, notFound } from '../base/lookups';
import { touchProject } from '../projects/project-rows';
import { idOf, textOf } from '../base/rows';
import { allowMove, type AllowedMove, makeMove, moveWords } from '../projects/stage-moves';
import { findTrip, tripColumns, tripsOfPackage } from '../projects/trip-rows';

export function addTrip(
  store: ReadableStore,
  { stageId, details }: ChannelInput<'trip:add'>,
): Result<ChannelOutput<'trip:add'>, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  return recordChange(store, `Added a trip to ${details.withWhom}`, (writable) => {
    const tripId = insertTrip(writable, { stageId, details, packing: [] }, newPackage(writable));
    touchProject(writable, stage.value.projectId);
    return success({ tripId });
  });
}

/** Records the trip and sends its stage out, as one change; the same for every other stage in the package. */
export function sendOut(
  store: ReadableStore,
  { stageId, details, packing = [], alsoStageIds = [] }: ChannelInput<'trip:send'>,
): Result<ChannelOutput<'trip:send'>, Problem> {
  const move = allowMove(store, stageId, 'out');
  if (!move.ok) return move;
  const others: AllowedMove[] = [];
  for (const id of alsoStageIds.filter((one) => one !== stageId)) {
    const other = allowMove(store, id, 'out');
    if (!other.ok) return other;
    others.push(other.value);
  }
  return recordChange(store, withOthers(moveWords(move.value), others.length), (writable) => {
    const sentPackage = newPackage(writable);
    makeMove(writable, move.value);
    const tripId = sendTrip(writable, { stageId, details, packing }, sentPackage);
    for (const other of others) {
      makeMove(writable, other);
      const shared = { ...details, priceAskedMinor: null, priceMinor: null };
      sendTrip(writable, { stageId: other.stage.id, details: shared, packing: [] }, sentPackage);
    }
    return success({ tripId });
  });
}

/** Ends a stage's trip, adding the trip if it was never entered, and finishes the stage, as one change. */
export function receiveBack(
  store: ReadableStore,
  { stageId, tripId, details, alsoTripIds = [] }: ChannelInput<'trip:receive'>,
): Result<Changed, Problem> {
  const move = allowMove(store, stageId, 'done');
  if (!move.ok) return move;
  const trip = tripId === null ? undefined : findTrip(store, tripId);
  if (tripId !== null && trip?.stageId !== stageId) return notFound('trip');
  const others = othersBack(store, trip, alsoTripIds);
  if (!others.ok) return others;
  return recordChange(store, withOthers(moveWords(move.value), others.value.length), (writable) => {
    makeMove(writable, move.value);
    if (tripId === null) insertTrip(writable, { stageId, details, packing: [] }, newPackage(writable));
    else writeTrip(writable, tripId, stageId, details);
    for (const other of others.value) {
      makeMove(writable, other.move);
      updateRow(writable, 'trip', other.trip.id, { back_on: details.backOn });
    }
    return success({});
  });
}

export function changeTrip(
  store: ReadableStore,
  { tripId, details }: ChannelInput<'trip:change'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  return recordChange(store, `Changed the trip to ${details.withWhom}`, (writable) => {
    writeTrip(writable, tripId, trip.stageId, details);
    touchProject(writable, trip.projectId);
    return success({});
  });
}

export function deleteTrip(
  store: ReadableStore,
  { tripId }: ChannelInput<'trip:delete'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  return recordChange(store, `Deleted the trip to ${trip.withWhom}`, (writable) => {
    write(writable, 'DELETE FROM trip WHERE id = ?', tripId);
    touchProject(writable, trip.projectId);
    return success({});
  });
}

interface OtherBack {
  readonly trip: Trip;
  readonly move: AllowedMove;
}

/** The other trips of the package that came back too, each with its move. */
function othersBack(
  store: ReadableStore,
  trip: Trip | undefined,
  ids: readonly TripId[],
): Result<readonly OtherBack[], Problem> {
  const sentPackage = trip === undefined ? [] : tripsOfPackage(store, trip.packageId);
  const others: OtherBack[] = [];
  for (const id of ids.filter((one) => one !== trip?.id)) {
    const other = sentPackage.find((one) => one.id === id && one.backOn === null);
    if (other === undefined) return notFound('trip');
    const move = allowMove(store, other.stageId, 'done');
    if (!move.ok) return move;
    others.push({ trip: other, move: move.value });
  }
  return success(others);
}

function withOthers(words: string, others: number): string {
  return others === 0 ? words : `${words} and ${others} more in the same package`;
}

function newPackage(store: WritableStore): PackageId {
  return store.clockAndIds.newId() as PackageId;
}

interface NewTrip {
  readonly stageId: StageId;
  readonly details: TripDetails;
  readonly packing: readonly PackingLine[];
}

function insertTrip(store: WritableStore, trip: NewTrip, packageId: PackageId): TripId {
  const { stageId, details, packing } = trip;
  const id = store.clockAndIds.newId() as TripId;
  insertRow(store, 'trip', {
    id,
    stage_id: stageId,
    contact_id: contactOf(store, stageId, details),
    parcel_id: packageId,
    packing_json: JSON.stringify(packing),
    ...tripColumns(details),
  });
  return id;
}

/** Uses the trip reserved ahead of time if there is one; otherwise adds a trip. */
function sendTrip(store: WritableStore, trip: NewTrip, packageId: PackageId): TripId {
  const { stageId, details, packing } = trip;
  const sql =
    'SELECT id FROM trip WHERE stage_id = ? AND sent_on IS NULL AND back_on IS NULL ORDER BY seq DESC';
  const reserved = oneRow(store, sql, stageId);
  if (reserved === undefined) return insertTrip(store, trip, packageId);
  const id = idOf<TripId>(reserved, 'id');
  writeTrip(store, id, stageId, details);
  updateRow(store, 'trip', id, { parcel_id: packageId, packing_json: JSON.stringify(packing) });
  return id;
}

function writeTrip(store: WritableStore, id: TripId, stageId: StageId, details: TripDetails): void {
  updateRow(store, 'trip', id, { contact_id: contactOf(store, stageId, details), ...tripColumns(details) });
}

function contactOf(store: WritableStore, stageId: StageId, { withWhom }: TripDetails) {
  const row = oneRow(store, 'SELECT kind FROM stage WHERE id = ?', stageId) ?? {};
  return contactByName(store, withWhom, textOf(row, 'kind') === 'longarm' ? 'longarm' : 'other');
}
