import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Contact, ContactTrip } from '#core/contract/contacts';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { type ContactDetails, contactKindSchema, type ContactKind, nameAlone } from '#core/domain/contact';
import type { ContactId } from '#core/domain/ids';
import { priceLinesSchema } from '#core/domain/price-line';
import { stageStateSchema as stageStates } from '#core/domain/stage';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import {
  allRows,
  insertRow,
  oneNumber,
  oneRow,
  type ReadableStore,
  type Row,
  updateRow,
  type Value,
  type WritableStore,
  write,
} from '../base/handles';
import { notFound } from '../base/lookups';
import { choiceOf, idOf, jsonOf, numberOrNullOf, readBy, textOf } from '../base/rows';
import { tripsOf } from '../projects/trip-rows';

/** All contacts by name, each with the trips to them, apart from those of deleted projects. */
export function listContacts(store: ReadableStore): readonly Contact[] {
  const trips = contactTrips(store);
  return allRows(store, 'SELECT * FROM contact ORDER BY name COLLATE NOCASE, id').map((row) => {
    const id = idOf<ContactId>(row, 'id');
    return { id, details: detailsOf(row), trips: trips.filter(({ contactId }) => contactId === id) };
  });
}

export function saveContact(
  store: ReadableStore,
  { contactId, details }: ChannelInput<'contact:save'>,
): Result<ChannelOutput<'contact:save'>, Problem> {
  const taken = oneRow(
    store,
    'SELECT name FROM contact WHERE name = ? COLLATE NOCASE AND id IS NOT ?',
    details.name,
    contactId,
  );
  if (taken !== undefined) return failure<Problem>({ code: 'name-taken', name: textOf(taken, 'name') });
  if (contactId === null) {
    return recordChange(store, `Added the contact ${details.name}`, (writable) =>
      success({ contactId: insertContact(writable, details) }),
    );
  }
  if (!contactExists(store, contactId)) return notFound('contact');
  return recordChange(store, `Changed the contact ${details.name}`, (writable) => {
    updateRow(writable, 'contact', contactId, columnsOf(details));
    return success({ contactId });
  });
}

export function deleteContact(
  store: ReadableStore,
  { contactId }: ChannelInput<'contact:delete'>,
): Result<Changed, Problem> {
  const row = oneRow(store, 'SELECT name FROM contact WHERE id = ?', contactId);
  if (row === undefined) return notFound('contact');
  const name = textOf(row, 'name');
  if (oneNumber(store, 'SELECT count(*) FROM trip WHERE contact_id = ?', contactId) > 0) {
    return failure<Problem>({ code: 'in-use', kind: 'contact', name });
  }
  return recordChange(store, `Deleted the contact ${name}`, (writable) => {
    write(writable, 'DELETE FROM contact WHERE id = ?', contactId);
    return success({});
  });
}

/** Finds the contact with this name, ignoring case, or adds it. */
export function contactByName(store: WritableStore, name: string, kind: ContactKind): ContactId {
  const sql = 'SELECT id FROM contact WHERE name = ? COLLATE NOCASE ORDER BY name = ? DESC, id LIMIT 1';
  const row = oneRow(store, sql, name, name);
  return row === undefined ? insertContact(store, nameAlone(name, kind)) : idOf<ContactId>(row, 'id');
}

function insertContact(store: WritableStore, details: ContactDetails): ContactId {
  const id = store.clockAndIds.newId() as ContactId;
  insertRow(store, 'contact', { id, ...columnsOf(details) });
  return id;
}

function contactExists(store: ReadableStore, id: string): boolean {
  return oneRow(store, 'SELECT 1 AS there FROM contact WHERE id = ?', id) !== undefined;
}

function contactTrips(store: ReadableStore): readonly ContactTrip[] {
  const sql = `SELECT trip.id, project.name AS project_name, stage.name AS stage_name, stage.state AS stage_state
    FROM trip JOIN stage ON stage.id = stage_id JOIN project ON project.id = project_id
    WHERE deleted_at IS NULL ORDER BY sent_on DESC, trip.seq DESC`;
  const rows = allRows(store, sql);
  const trips = new Map(
    tripsOf(
      store,
      rows.map((row) => textOf(row, 'id')),
    ).map((trip) => [trip.id, trip]),
  );
  return rows.flatMap((row) => {
    const trip = trips.get(textOf(row, 'id') as ContactTrip['id']);
    if (trip === undefined) return [];
    const stageState = choiceOf(row, 'stage_state', stageStates.options);
    return [
      { ...trip, projectName: textOf(row, 'project_name'), stageName: textOf(row, 'stage_name'), stageState },
    ];
  });
}

function detailsOf(row: Row): ContactDetails {
  return {
    name: textOf(row, 'name'),
    kind: choiceOf(row, 'kind', contactKindSchema.options),
    reach: textOf(row, 'reach'),
    rateMinor: numberOrNullOf(row, 'rate_minor'),
    minimumMinor: numberOrNullOf(row, 'minimum_minor'),
    lines: readBy(priceLinesSchema, jsonOf(row, 'lines_json'), `contact ${textOf(row, 'id')}`),
    promisedDays: numberOrNullOf(row, 'promised_days'),
    notes: textOf(row, 'notes'),
  };
}

function columnsOf(details: ContactDetails): Readonly<Record<string, Value>> {
  return {
    name: details.name,
    kind: details.kind,
    reach: details.reach,
    rate_minor: details.rateMinor,
    minimum_minor: details.minimumMinor,
    lines_json: JSON.stringify(details.lines),
    promised_days: details.promisedDays,
    notes: details.notes,
  };
}
