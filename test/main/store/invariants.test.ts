import { beforeEach, describe, expect, test } from 'vitest';
import {
  addStock,
  addProject,
  inches,
  NO_SUCH_ID,
  openWorkshop,
  TODAY,
  type TestWorkshop,
} from '#test/helpers/workshop';

let workshop: TestWorkshop;

beforeEach(() => {
  workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const { pieceId } = addStock(workshop);
  workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(10), on: TODAY, note: '' });
  const rest = { stageId: null, leftovers: [], knowingly: false, on: TODAY, note: '' };
  const { bookingId } = workshop.get('ledger:cut', { pieceId, projectId, length: inches(20), ...rest });
  workshop.get('ledger:undo', { bookingId, on: TODAY });
});

const entry = (columns: string): string =>
  `INTO ledger_entry (id, booking_seq, piece_seq, kind, length_change, held_change, value_change, reverses)
  VALUES ('${NO_SUCH_ID}', ${columns})`;

describe('the file itself refuses in SQL', () => {
  test.each([
    ['to edit an entry', 'UPDATE ledger_entry SET length_change = 1', 'never edited'],
    ['to remove an entry', 'DELETE FROM ledger_entry', 'never edited'],
    ['to edit a booking', "UPDATE booking SET note = 'other'", 'never edited'],
    ['to remove a booking', 'DELETE FROM booking', 'never edited'],
    [
      'to write over an entry',
      'INSERT OR REPLACE INTO ledger_entry SELECT * FROM ledger_entry WHERE seq = 1',
      'never edited',
    ],
    ['to write over a booking', 'REPLACE INTO booking SELECT * FROM booking WHERE seq = 1', 'never edited'],
    ['to edit a piece of fabric', 'UPDATE fabric_piece SET width = 1', 'never edited'],
    ['to remove a piece of fabric', 'DELETE FROM fabric_piece', 'never edited'],
    ['a sum that is not the ledger’s', 'UPDATE piece_sum SET there = there + 1', 'Not what the ledger says'],
    ['a hold that is not the ledger’s', 'UPDATE piece_hold SET held = held + 1', 'Not what the ledger says'],
    ['to remove a sum', 'DELETE FROM piece_sum', 'never edited'],
    ['to cut more than is there', `INSERT ${entry("3, 1, 'cut', -99999999, 0, 0, NULL")}`, 'there >= 0'],
    [
      'to cut more than is there, ignoring that',
      `INSERT OR IGNORE ${entry("3, 1, 'cut', -99999999, 0, 0, NULL")}`,
      'More than there is',
    ],
    [
      'to cut more than is there, replacing',
      `INSERT OR REPLACE ${entry("3, 1, 'cut', -99999999, 0, 0, NULL")}`,
      'there >= 0',
    ],
    [
      'to take more value than there is',
      `INSERT ${entry("3, 1, 'cut', -1, 0, -999999, NULL")}`,
      'value_minor >= 0',
    ],
    [
      'to release more than is set aside',
      `INSERT ${entry("2, 1, 'released', 0, -99999999, 0, NULL")}`,
      'held >= 0',
    ],
    [
      'to release more than is set aside, ignoring',
      `INSERT OR IGNORE ${entry("2, 1, 'released', 0, -99999999, 0, NULL")}`,
      'More than there is',
    ],
    [
      'to set aside more than is free',
      `INSERT ${entry("2, 1, 'set-aside', 0, 99999999, 0, NULL")}`,
      'Spoken for already',
    ],
    [
      'to set aside more than is free, ignoring that',
      `INSERT OR IGNORE ${entry("2, 1, 'set-aside', 0, 99999999, 0, NULL")}`,
      'Spoken for already',
    ],
    ['to cut what is set aside', `INSERT ${entry("3, 1, 'cut', -585216, 0, 0, NULL")}`, 'Spoken for already'],
    [
      'to throw out what is set aside',
      `INSERT ${entry("1, 1, 'discarded', -585216, 0, 0, NULL")}`,
      'Spoken for already',
    ],
    ['to mark a booking as knowing afterwards', 'UPDATE booking SET is_knowing = 1', 'never edited'],
    [
      'a booking that is neither knowing nor not',
      "INSERT INTO booking (id, fabric_seq, is_knowing, note, on_date, recorded_at) VALUES ('x', 1, 2, '', '2027-02-28', 0)",
      'is_knowing IN',
    ],
    [
      'a price of zero',
      `INSERT INTO fabric_price SELECT '${NO_SUCH_ID}', id, 0, 1 FROM fabric`,
      'price_minor > 0',
    ],
    [
      'a price without a fabric',
      `INSERT INTO fabric_price VALUES ('${NO_SUCH_ID}', '${NO_SUCH_ID}', 1, 1)`,
      'FOREIGN KEY',
    ],
    [
      'two prices for one fabric',
      `INSERT INTO fabric_price SELECT '${NO_SUCH_ID}', id, 1, 1 FROM fabric; INSERT INTO fabric_price SELECT 'other', id, 1, 1 FROM fabric`,
      'UNIQUE',
    ],
    [
      'to set fabric aside for no project',
      `INSERT ${entry("1, 1, 'set-aside', 0, 1, 0, NULL")}`,
      'held for a project',
    ],
    ['a purchase that takes fabric away', `INSERT ${entry("1, 1, 'bought', -1, 0, 0, NULL")}`, 'CASE kind'],
    ['an entry of an unknown kind', `INSERT ${entry("1, 1, 'lost', -1, 0, 0, NULL")}`, 'CASE kind'],
    ['an entry on a missing piece', `INSERT ${entry("1, 99, 'bought', 1, 0, 0, NULL")}`, 'another fabric'],
    ['an entry in a missing booking', `INSERT ${entry("99, 1, 'bought', 1, 0, 0, NULL")}`, 'another fabric'],
    [
      'to undo an entry twice',
      `INSERT ${entry("4, 1, 'taken-back', 162560, 81280, 556, 3")}`,
      'taken back already',
    ],
    [
      'to undo something other than was booked',
      `INSERT ${entry("4, 1, 'taken-back', 1, 0, 0, 2")}`,
      'must be the opposite',
    ],
    [
      'to undo without naming an entry',
      `INSERT ${entry("4, 1, 'taken-back', 1, 0, 0, NULL")}`,
      "kind = 'taken-back'",
    ],
    ['to remove a fabric with bookings', 'DELETE FROM fabric', 'FOREIGN KEY'],
    ['to remove a project with bookings', 'DELETE FROM project', 'FOREIGN KEY'],
    ['a stage of no project', `UPDATE stage SET project_id = '${NO_SUCH_ID}'`, 'FOREIGN KEY'],
    ['a stage in an unknown state', "UPDATE stage SET state = 'lost'", 'state IN'],
    ['a stage that is done without an end', "UPDATE stage SET state = 'done'", 'finished_at IS NOT NULL'],
    ['a slit without a hole', 'UPDATE project SET hole_diameter = NULL', 'hole_diameter IS NOT NULL'],
    ['text where a number belongs', "UPDATE stage SET estimate_minutes = 'long'", 'cannot store TEXT'],
    ['a project without a name', "UPDATE project SET name = ''", 'length(name)'],
    ['a shape that is not JSON', "UPDATE project SET outline_json = '{'", 'malformed JSON'],
    ['any change outside a named one', "UPDATE project SET notes = 'slipped in'", 'Outside a change'],
  ])('%s', (_what, sql, why) => {
    const { database } = workshop.context.store;
    const before = database.prepare('SELECT count(*), sum(length_change) FROM ledger_entry').raw().get();
    // Inside a change, so that the rule itself refuses; the last case is about being outside one.
    const isInside = !sql.includes('slipped in');
    database.exec('BEGIN');
    if (isInside) database.exec('UPDATE current_change SET change_seq = (SELECT max(seq) FROM change_log)');
    expect(() => database.exec(sql)).toThrow(why);
    database.exec('ROLLBACK');
    expect(database.prepare('SELECT count(*), sum(length_change) FROM ledger_entry').raw().get()).toEqual(
      before,
    );
  });
});

test('a valid entry in SQL is accepted, so the refusals above are not due to mistakes in their SQL', () => {
  const { database } = workshop.context.store;
  database.exec(`INSERT ${entry("3, 1, 'cut', -1, 0, 0, NULL")}`);
  expect(database.prepare('SELECT there FROM piece_sum').raw().get()).toEqual([inches(72) - 1]);
});
