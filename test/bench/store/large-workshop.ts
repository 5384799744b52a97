import { STARTING_PLANS } from '#core/domain/starting-plans';
import { addDays, calendarDate } from '#core/units/calendar-date';
import { insertRow, type WritableStore, writeTransaction } from '#main/store/base/handles';
import { addPlannedStages } from '#main/store/projects/stages';
import { projectColumns } from '#main/store/projects/project-rows';
import { storeFifoCost } from '#main/store/ledger/cost-basis';
import { fabricColumns } from '#main/store/stash/fabric-rows';
import { placeAt } from '#main/store/stash/places';
import { closeStore, openStore } from '#main/store/opening/open-store';
import type { ClockAndIds } from '#main/store/base/clock-and-ids';
import { fabricDetails, inches, projectDetails } from './sample-details';

export const SIZE = {
  fabrics: 20_000,
  pieces: 60_000,
  projects: 2_000,
  openProjects: 60,
  entries: 400_000,
} as const;

const COLORS = ['rust', 'blue', 'teal', 'grey', 'cream', 'black', 'brown', 'green', 'plum', 'gold'];
const PRINTS = ['leaves', 'dots', 'stripes', 'checks', 'stars', 'clouds', 'waves', 'plain', 'birds', 'rings'];
const FIRST_DAY = calendarDate('2015-01-01');

/** The same workshop every time: identifiers in order, chance from a fixed seed. */
export function buildLargeWorkshop(file: string): void {
  const opened = openStore(file, { clockAndIds: orderlyClockAndIds() });
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  const { database } = opened.value;
  database.pragma('synchronous = OFF');
  writeTransaction(opened.value, (store) => {
    database.exec(`INSERT INTO change_log VALUES (1, 'large', 'Filled the workshop', 0, 0);
      UPDATE current_change SET change_seq = 1`);
    fillProjects(store);
    fillFabrics(store);
    fillLedger(store);
    for (let fabric = 1; fabric <= SIZE.fabrics; fabric += 1) storeFifoCost(store, [fabric]);
    database.exec('UPDATE current_change SET change_seq = NULL');
    // Nobody undoes this, and its record would be half the file.
    database.exec('DELETE FROM change_row');
  });
  database.pragma('wal_checkpoint(TRUNCATE)');
  database.exec('VACUUM');
  closeStore(opened.value);
}

/** Chance that is the same every time: mulberry32, public domain. */
export function seeded(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
}

function orderlyClockAndIds(): ClockAndIds {
  let [ids, ticks] = [0, 0];
  return {
    now: () => (ticks += 1000),
    today: () => FIRST_DAY,
    newId: () => `00000000-0000-4000-8000-${(ids += 1).toString(16).padStart(12, '0')}`,
  };
}

function fillProjects(store: WritableStore): void {
  const chance = seeded(1);
  for (let index = 0; index < SIZE.projects; index += 1) {
    const isArchived = index >= SIZE.openProjects;
    const id = store.clockAndIds.newId();
    const dueOn = addDays(FIRST_DAY, 4_000 + chance(700));
    insertRow(store, 'project', {
      id,
      ...projectColumns(projectDetails(`Ring ${index} ${PRINTS[chance(10)] ?? ''}`, dueOn)),
      is_archived: isArchived ? 1 : 0,
      created_at: index,
      changed_at: index,
    });
    addPlannedStages(store, id, STARTING_PLANS[chance(5)]?.stages ?? []);
  }
}

function fillFabrics(store: WritableStore): void {
  const chance = seeded(2);
  for (let index = 0; index < SIZE.fabrics; index += 1) {
    const [color, print] = [COLORS[chance(10)] ?? '', PRINTS[chance(10)] ?? ''];
    const details = fabricDetails(`${color} ${print} ${index}`, {
      colorWords: `${color} ${COLORS[chance(10)] ?? ''}`,
      print,
    });
    insertRow(store, 'fabric', {
      id: store.clockAndIds.newId(),
      ...fabricColumns(details, placeAt(store, details.place)),
      created_at: index,
    });
  }
}

function fillLedger(store: WritableStore): void {
  const chance = seeded(3);
  let entries = 0;
  const book = (
    fabric: number,
    project: number | null,
    lines: readonly (readonly [number, string, number, number, number])[],
  ): void => {
    const { newId, now } = store.clockAndIds;
    const booking = insertRow(store, 'booking', {
      id: newId(),
      fabric_seq: fabric,
      project_seq: project,
      note: '',
      on_date: addDays(FIRST_DAY, Math.floor((entries * 4_000) / SIZE.entries)),
      recorded_at: now(),
    });
    for (const [piece, kind, length, held, value] of lines) {
      const columns = { id: newId(), booking_seq: booking, piece_seq: piece, kind };
      insertRow(store, 'ledger_entry', {
        ...columns,
        length_change: length,
        held_change: held,
        value_change: value,
      });
      entries += 1;
    }
  };
  const piece = (fabric: number, kind: string, width: number): number =>
    insertRow(store, 'fabric_piece', {
      id: store.clockAndIds.newId(),
      fabric_seq: fabric,
      kind,
      width: inches(width),
    });

  const bought = SIZE.pieces * (2 / 3);
  for (let index = 0; index < bought; index += 1) {
    const fabric = 1 + (index % SIZE.fabrics);
    book(fabric, null, [[piece(fabric, 'yardage', 42), 'bought', inches(600), 0, 9_000]]);
  }
  for (let index = 0; index < SIZE.pieces - bought; index += 1) {
    const fabric = 1 + (index % SIZE.fabrics);
    const left = piece(fabric, 'leftover', 12);
    book(fabric, 1 + chance(SIZE.projects), [
      [fabric, 'cut', 0 - inches(9), 0, -135],
      [left, 'leftover', inches(9), 0, 38],
    ]);
  }
  while (entries < SIZE.entries) {
    const [seq, project] = [1 + chance(bought), 1 + chance(SIZE.projects)];
    const fabric = 1 + ((seq - 1) % SIZE.fabrics);
    if (chance(10) === 0) book(fabric, project, [[seq, 'set-aside', 0, inches(2), 0]]);
    else book(fabric, project, [[seq, 'cut', 0 - inches(1 + chance(12)), 0, -(15 + chance(120))]]);
  }
}
