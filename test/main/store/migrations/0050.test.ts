import path from 'node:path';
import type Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { createStoreAt, openWorkshop, temporaryFolder, type TestWorkshop } from '#test/helpers/workshop';

const PROJECT = '00000000-0000-4000-8000-0000000000a1';
const LONGARM = '00000000-0000-4000-8000-0000000000b1';
const OTHER = '00000000-0000-4000-8000-0000000000b2';
const TRIP = (digit: string) => `00000000-0000-4000-8000-0000000000c${digit}`;

type Old = Readonly<Record<string, string | number | null>>;

function insert(database: Database.Database, table: string, row: Old): void {
  const names = Object.keys(row);
  database
    .prepare(`INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map(() => '?').join(', ')})`)
    .run(...Object.values(row));
}

/** A trip as the version before stored it. */
function oldTrip(id: string, stage: string, withWhom: string, more: Old = {}): Old {
  return {
    id,
    stage_id: stage,
    with_whom: withWhom,
    sent_on: '2027-01-04',
    promised_on: '2027-02-01',
    back_on: null,
    tracking_number: 'QX 1',
    sent_along: 'Top, backing',
    asked_for: 'Loops',
    price_minor: 8_400,
    ...more,
  };
}

function startChange(database: Database.Database, seq: number, words: string): void {
  const id = `00000000-0000-4000-8000-0000000000d${seq}`;
  insert(database, 'change_log', { seq, id, words, made_at: seq, is_undone: 0 });
  database.prepare('UPDATE current_change SET change_seq = ?').run(seq);
}

/** A workshop of the version before, with trips to three spellings of a name and one deleted trip that undo can bring back. */
function workshopBefore(file: string): void {
  const database = createStoreAt(40, file);
  startChange(database, 1, 'Wrote it all down');
  const project = {
    id: PROJECT,
    name: 'Old ring',
    purpose: 'gift',
    for_whom: '',
    due_on: null,
    outline_json: '{"shape":"circle","diameter":406400}',
    hole_diameter: null,
    has_slit: 0,
    habit_changes_json: '{}',
    notes: '',
    is_archived: 0,
    created_at: 1,
    changed_at: 1,
  };
  insert(database, 'project', project);
  for (const [position, [id, kind]] of [
    [LONGARM, 'longarm'],
    [OTHER, 'other'],
  ].entries()) {
    const words = { held_up_by: '', notes: '', gate_passed_why: '' };
    insert(database, 'stage', {
      id: id ?? '',
      project_id: PROJECT,
      position,
      kind: kind ?? '',
      name: kind ?? '',
      state: 'planned',
      estimate_minutes: 0,
      ...words,
    });
  }
  insert(database, 'trip', oldTrip(TRIP('1'), LONGARM, 'Pell Tallowmere', { back_on: '2027-02-03' }));
  insert(database, 'trip', oldTrip(TRIP('2'), OTHER, 'pell tallowmere'));
  insert(database, 'trip', oldTrip(TRIP('3'), OTHER, 'The framer — “Gilt & Co.”', { price_minor: null }));
  startChange(database, 2, 'Removed the trip to Somebody Gone');
  insert(database, 'trip', oldTrip(TRIP('4'), LONGARM, 'Somebody Gone'));
  startChange(database, 3, 'Removed the trip to Somebody Gone');
  database.prepare('DELETE FROM trip WHERE id = ?').run(TRIP('4'));
  database.prepare('UPDATE current_change SET change_seq = NULL').run();
  database.close();
}

function migrated(): TestWorkshop {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  workshopBefore(file);
  return openWorkshop(file);
}

const tripsOf = (workshop: TestWorkshop) =>
  workshop.get('project:open', { projectId: PROJECT as never }).trips;

test('every name on a trip becomes a contact, and the trip keeps its details', () => {
  const workshop = migrated();
  const contacts = workshop.get('contact:list', {});
  expect(contacts.map(({ details }) => [details.name, details.kind])).toEqual(
    expect.arrayContaining([
      ['Pell Tallowmere', 'longarm'],
      ['pell tallowmere', 'other'],
      ['The framer — “Gilt & Co.”', 'other'],
    ]),
  );
  const trips = tripsOf(workshop);
  expect(trips.map(({ withWhom }) => withWhom)).toEqual([
    'Pell Tallowmere',
    'pell tallowmere',
    'The framer — “Gilt & Co.”',
  ]);
  expect(trips[0]).toMatchObject({
    id: TRIP('1'),
    stageId: LONGARM,
    sentOn: '2027-01-04',
    promisedOn: '2027-02-01',
    backOn: '2027-02-03',
    trackingNumber: 'QX 1',
    sentAlong: 'Top, backing',
    askedFor: 'Loops',
    priceMinor: 8_400,
    priceAskedMinor: null,
    packing: [],
    events: [],
  });
  expect(trips[2]).toMatchObject({ priceMinor: null });
  expect(new Set(trips.map(({ packageId }) => packageId)).size).toBe(3);
});

test('a trip deleted before is still restored by undo, with its contact, and deleted by redo', () => {
  const workshop = migrated();
  workshop.get('change:undo', {});
  expect(tripsOf(workshop).at(-1)).toMatchObject({
    id: TRIP('4'),
    withWhom: 'Somebody Gone',
    askedFor: 'Loops',
  });
  workshop.get('change:redo', {});
  expect(tripsOf(workshop)).toHaveLength(3);
  workshop.get('change:undo', {});
  workshop.get('change:undo', {});
  expect(tripsOf(workshop)).toHaveLength(3);
});
