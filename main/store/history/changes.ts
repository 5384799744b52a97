import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { ChangeList, UndoState } from '#core/contract/workshop';
import type { ChangeId } from '#core/domain/ids';
import { failure, type Result, success } from '#core/result';
import { flipRows } from './change-flip';
import {
  allRows,
  insertRow,
  oneNumber,
  oneRow,
  type ReadableStore,
  type Row,
  type WritableStore,
  write,
  writeOne,
  writeTransaction,
} from '../base/handles';
import { duringChange } from '../base/current-change';
import { flipBookings } from '../ledger/flip-bookings';
import { flagOf, idOf, numberOf, textOf } from '../base/rows';

/** How many changes can be undone; older ones are dropped. */
const CHANGES_KEPT = 500;

const NEWEST_DONE = 'SELECT * FROM change_log WHERE is_undone = 0 ORDER BY seq DESC LIMIT 1';
const OLDEST_UNDONE = 'SELECT * FROM change_log WHERE is_undone = 1 ORDER BY seq LIMIT 1';

/**
 * Makes one named change in one transaction, so that it can be undone as a whole. A failure or an exception rolls it back. A change that
 * changed nothing is not stored, and what was undone before it can still be redone.
 */
export function recordChange<Value extends object>(
  store: ReadableStore,
  words: string,
  work: (store: WritableStore) => Result<Value, Problem>,
): Result<Value & Changed, Problem> {
  return writeTransaction(
    store,
    (writable) => {
      const { newId, now } = store.clockAndIds;
      const id = newId() as ChangeId;
      const seq = insertRow(writable, 'change_log', { id, words, made_at: now(), is_undone: 0 });
      const done = duringChange(writable, seq, () => work(writable));
      if (!done.ok) return done;
      if (isEmptyChange(writable, seq)) write(writable, 'DELETE FROM change_log WHERE seq = ?', seq);
      else trimHistory(writable);
      return success({ ...done.value, changeId: id });
    },
    (answer) => answer.ok,
  );
}

export function undoState(store: ReadableStore): UndoState {
  const words = (row: Row | undefined): string | null => (row === undefined ? null : textOf(row, 'words'));
  return { undo: words(oneRow(store, NEWEST_DONE)), redo: words(oneRow(store, OLDEST_UNDONE)) };
}

/** Undoes the newest change. A named change that is no longer the newest is refused, because later ones may depend on it. */
export function undoChange(store: ReadableStore, changeId?: ChangeId): Result<{ says: string }, Problem> {
  return writeTransaction(store, (writable) => {
    const newest = oneRow(writable, NEWEST_DONE);
    if (newest === undefined) return failure<Problem>({ code: 'nothing-to-undo' });
    const words = textOf(newest, 'words');
    if (changeId !== undefined && textOf(newest, 'id') !== changeId) {
      return failure<Problem>({ code: 'not-newest-change', says: words });
    }
    flip(writable, numberOf(newest, 'seq'), 1);
    return success({ says: words });
  });
}

/** Redoes the change that was undone last. */
export function redoChange(store: ReadableStore): Result<{ says: string }, Problem> {
  return writeTransaction(store, (writable) => {
    const next = oneRow(writable, OLDEST_UNDONE);
    if (next === undefined) return failure<Problem>({ code: 'nothing-to-redo' });
    flip(writable, numberOf(next, 'seq'), 0);
    return success({ says: textOf(next, 'words') });
  });
}

export function listChanges(store: ReadableStore): ChangeList {
  const listed = (isUndone: 0 | 1, order: 'DESC' | 'ASC') =>
    allRows(store, `SELECT * FROM change_log WHERE is_undone = ? ORDER BY seq ${order}`, isUndone).map(
      (row) => ({
        id: idOf<ChangeId>(row, 'id'),
        says: textOf(row, 'words'),
        madeAt: numberOf(row, 'made_at'),
      }),
    );
  return { done: listed(0, 'DESC'), undone: listed(1, 'ASC') };
}

/** Undoes every change back to the named one and that one too, or redoes every change up to it and that one too, in one transaction. */
export function goToChange(store: ReadableStore, id: ChangeId): Result<{ steps: number }, Problem> {
  const named = oneRow(store, 'SELECT seq, is_undone FROM change_log WHERE id = ?', id);
  if (named === undefined) return failure<Problem>({ code: 'nothing-to-undo' });
  const [seq, isUndone] = [numberOf(named, 'seq'), flagOf(named, 'is_undone')];
  const toFlip = isUndone
    ? 'SELECT seq FROM change_log WHERE is_undone = 1 AND seq <= ? ORDER BY seq'
    : 'SELECT seq FROM change_log WHERE is_undone = 0 AND seq >= ? ORDER BY seq DESC';
  return writeTransaction(store, (writable) => {
    const steps = allRows(writable, toFlip, seq).map((row) => numberOf(row, 'seq'));
    for (const step of steps) flip(writable, step, isUndone ? 0 : 1);
    return success({ steps: steps.length });
  });
}

function flip(store: WritableStore, seq: number, isUndone: 0 | 1): void {
  // Rows are put back in reverse, children before their parents, so foreign keys are checked at the end.
  store.database.pragma('defer_foreign_keys = ON');
  duringChange(store, seq, () => {
    flipRows(store, seq);
    flipBookings(store, seq);
  });
  writeOne(store, 'UPDATE change_log SET is_undone = ? WHERE seq = ?', isUndone, seq);
}

/** Empties the history and changes nothing else: a workshop prepared for the maker starts without one. */
export function forgetChanges(store: WritableStore): void {
  write(store, 'DELETE FROM change_log');
}

function isEmptyChange(store: WritableStore, seq: number): boolean {
  const count = `SELECT (SELECT count(*) FROM change_row WHERE change_seq = ?)
    + (SELECT count(*) FROM change_booking WHERE change_seq = ?) AS entries`;
  return oneNumber(store, count, seq, seq) === 0;
}

/** Drops what was undone, which a new change replaces, and the oldest changes. */
function trimHistory(store: WritableStore): void {
  write(store, 'DELETE FROM change_log WHERE is_undone = 1');
  const oldest = 'SELECT seq FROM change_log ORDER BY seq DESC LIMIT 1 OFFSET ?';
  write(store, `DELETE FROM change_log WHERE seq <= (${oldest})`, CHANGES_KEPT);
}
