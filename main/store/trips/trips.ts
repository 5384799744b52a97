import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed, Trip } from '#core/contract/projects';
import type { PackageId, StageId, TripId } from '#core/domain/ids';
import type { PackingLine, TripDetails } from '#core/domain/trip';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { contactByName } from './contacts';
import { checkCanBeSent, checkDays, checkHasNoTrip } from './open-trips';
import { insertRow, oneRow, type ReadableStore, updateRow, type WritableStore, write } from '../base/handles';
import { findStage, notFound, type StageRef } from '../base/lookups';
import { touchProject } from '../projects/project-rows';
import { idOf, textOf } from '../base/rows';
import { allowMove, type AllowedMove, makeMove, moveWords } from '../projects/stage-moves';
import { stagesByProject } from '../projects/stage-rows';
import { findTrip, tripColumns, tripsOfPackage } from '../projects/trip-rows';

export function addTrip(
  store: ReadableStore,
  { stageId, details }: ChannelInput<'trip:add'>,
): Result<ChannelOutput<'trip:add'>, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  const days = checkDays(details);
  if (!days.ok) return days;
  const free = details.backOn === null ? checkHasNoTrip(store, stage.value) : success(null);
  if (!free.ok) return free;
  const move = moveByDays(store, stage.value, details);
  if (!move.ok) return move;
  return recordChange(store, `Added a trip to ${details.withWhom}`, (writable) => {
    const tripId = insertTrip(writable, { stageId, details, packing: [] }, newPackage(writable));
    if (move.value !== null) makeMove(writable, move.value);
    touchProject(writable, stage.value.projectId);
    return success({ tripId });
  });
}

/** Records the trip and sends its stage out, as one change; the same for every other stage in the package. */
export function sendOut(
  store: ReadableStore,
  { stageId, details, packing = [], alsoStageIds = [] }: ChannelInput<'trip:send'>,
): Result<ChannelOutput<'trip:send'>, Problem> {
  const days = checkDays(details);
  if (!days.ok) return days;
  const move = allowMove(store, stageId, 'out');
  if (!move.ok) return move;
  const others: AllowedMove[] = [];
  for (const id of alsoStageIds.filter((one) => one !== stageId)) {
    const other = allowMove(store, id, 'out');
    if (!other.ok) return other;
    others.push(other.value);
  }
  for (const { stage } of [move.value, ...others]) {
    const free = checkCanBeSent(store, stage);
    if (!free.ok) return free;
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
  const days = checkDays(details);
  if (!days.ok) return days;
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

/** Changes a trip. A day of sending sends its stage out, a day of coming back finishes it. */
export function changeTrip(
  store: ReadableStore,
  { tripId, details }: ChannelInput<'trip:change'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  const days = checkDays(details);
  if (!days.ok) return days;
  const stage = findStage(store, trip.stageId);
  if (!stage.ok) return stage;
  const isNewDay = details.sentOn !== trip.sentOn || details.backOn !== trip.backOn;
  const move = isNewDay ? moveByDays(store, stage.value, details) : success(null);
  if (!move.ok) return move;
  return recordChange(store, changeWords(details.withWhom, move.value), (writable) => {
    writeTrip(writable, tripId, trip.stageId, details);
    if (move.value !== null) makeMove(writable, move.value);
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

function changeWords(withWhom: string, move: AllowedMove | null): string {
  return move === null ? `Changed the trip to ${withWhom}` : moveWords(move);
}

function allowSending(store: ReadableStore, stageId: StageId): Result<AllowedMove, Problem> {
  const move = allowMove(store, stageId, 'out');
  if (!move.ok) return move;
  const free = checkCanBeSent(store, move.value.stage);
  return free.ok ? move : free;
}

/**
 * The move that the days of a trip mean for its stage; null for none. A stage that is over stays so, and a day still to come moves
 * nothing yet.
 */
function moveByDays(
  store: ReadableStore,
  { id, projectId }: StageRef,
  { sentOn, backOn }: TripDetails,
): Result<AllowedMove | null, Problem> {
  const today = store.clockAndIds.today();
  const stages = stagesByProject(store, [projectId]).get(projectId) ?? [];
  const state = stages.find((one) => one.id === id)?.state;
  if (backOn !== null) {
    return state === 'out' && backOn <= today ? allowMove(store, id, 'done') : success(null);
  }
  const isSent = sentOn !== null && sentOn <= today;
  const isHome = state === 'planned' || state === 'in-hand';
  return isSent && isHome ? allowSending(store, id) : success(null);
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

/** Goes on with the trip that the stage has already; without one, adds a trip. */
function sendTrip(store: WritableStore, trip: NewTrip, packageId: PackageId): TripId {
  const { stageId, details, packing } = trip;
  const sql = 'SELECT id FROM trip WHERE stage_id = ? AND back_on IS NULL ORDER BY seq DESC';
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
