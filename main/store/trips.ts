import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed, Trip } from '#core/contract/projects';
import type { ProjectId, StageId, TripId } from '#core/domain/ids';
import type { TripDetails } from '#core/domain/trip';
import { type Result, success } from '#core/result';
import { recordChange } from './changes';
import {
  allRows,
  insertRow,
  oneRow,
  type ReadableStore,
  type Row,
  updateRow,
  type Value,
  type WritableStore,
  write,
} from './handles';
import { findStage, notFound } from './lookups';
import { touchProject } from './project-rows';
import { allowMove, makeMove, moveWords } from './stage-moves';
import { dateOrNullOf, numberOrNullOf, textOf } from './rows';

/** The trips of these projects in the order they were written down. */
export function tripsByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly Trip[]> {
  const rows = allRows(
    store,
    `SELECT trip.*, project_id FROM stage JOIN trip ON stage_id = stage.id
    WHERE project_id IN (SELECT value FROM json_each(?)) ORDER BY trip.seq`,
    JSON.stringify(projectIds),
  );
  const trips = rows.map(tripOf);
  return new Map(projectIds.map((id) => [id, trips.filter(({ projectId }) => projectId === id)]));
}

export function addTrip(
  store: ReadableStore,
  { stageId, details }: ChannelInput<'trip:add'>,
): Result<ChannelOutput<'trip:add'>, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  return recordChange(store, `Added a trip to ${details.withWhom}`, (writable) => {
    const tripId = insertTrip(writable, stageId, details);
    touchProject(writable, stage.value.projectId);
    return success({ tripId });
  });
}

/** Writes the trip down and moves its stage out, as one change. */
export function sendOut(
  store: ReadableStore,
  { stageId, details }: ChannelInput<'trip:send'>,
): Result<ChannelOutput<'trip:send'>, Problem> {
  const move = allowMove(store, stageId, 'out');
  if (!move.ok) return move;
  return recordChange(store, moveWords(move.value), (writable) => {
    makeMove(writable, move.value);
    return success({ tripId: insertTrip(writable, stageId, details) });
  });
}

/** Puts down when a stage's trip ended (a trip that was never written down is now) and finishes the stage, as one change. */
export function receiveBack(
  store: ReadableStore,
  { stageId, tripId, details }: ChannelInput<'trip:receive'>,
): Result<Changed, Problem> {
  const move = allowMove(store, stageId, 'done');
  if (!move.ok) return move;
  if (tripId !== null && findTrip(store, tripId)?.stageId !== stageId) return notFound('trip');
  return recordChange(store, moveWords(move.value), (writable) => {
    makeMove(writable, move.value);
    if (tripId === null) insertTrip(writable, stageId, details);
    else updateRow(writable, 'trip', tripId, tripColumns(details));
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
    updateRow(writable, 'trip', tripId, tripColumns(details));
    touchProject(writable, trip.projectId);
    return success({});
  });
}

export function removeTrip(
  store: ReadableStore,
  { tripId }: ChannelInput<'trip:remove'>,
): Result<Changed, Problem> {
  const trip = findTrip(store, tripId);
  if (trip === undefined) return notFound('trip');
  return recordChange(store, `Removed the trip to ${trip.withWhom}`, (writable) => {
    write(writable, 'DELETE FROM trip WHERE id = ?', tripId);
    touchProject(writable, trip.projectId);
    return success({});
  });
}

function insertTrip(store: WritableStore, stageId: StageId, details: TripDetails): TripId {
  const id = store.surroundings.newId() as TripId;
  insertRow(store, 'trip', { id, stage_id: stageId, ...tripColumns(details) });
  return id;
}

function findTrip(store: ReadableStore, id: string): Trip | undefined {
  const sql = 'SELECT trip.*, project_id FROM trip JOIN stage ON stage.id = stage_id WHERE trip.id = ?';
  const row = oneRow(store, sql, id);
  return row === undefined ? undefined : tripOf(row);
}

function tripOf(row: Row): Trip {
  return {
    id: textOf(row, 'id') as TripId,
    stageId: textOf(row, 'stage_id') as StageId,
    projectId: textOf(row, 'project_id') as ProjectId,
    withWhom: textOf(row, 'with_whom'),
    sentOn: dateOrNullOf(row, 'sent_on'),
    promisedOn: dateOrNullOf(row, 'promised_on'),
    backOn: dateOrNullOf(row, 'back_on'),
    trackingNumber: textOf(row, 'tracking_number'),
    sentAlong: textOf(row, 'sent_along'),
    askedFor: textOf(row, 'asked_for'),
    priceMinor: numberOrNullOf(row, 'price_minor'),
  };
}

function tripColumns(details: TripDetails): Readonly<Record<string, Value>> {
  return {
    with_whom: details.withWhom,
    sent_on: details.sentOn,
    promised_on: details.promisedOn,
    back_on: details.backOn,
    tracking_number: details.trackingNumber,
    sent_along: details.sentAlong,
    asked_for: details.askedFor,
    price_minor: details.priceMinor,
  };
}
