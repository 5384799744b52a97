import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { StashSearchId } from '#core/domain/ids';
import { type SavedSearch, stashSearchSchema } from '#core/domain/stash-filter';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { allRows, insertRow, oneNumber, oneRow, type ReadableStore, updateRow, write } from '../base/handles';
import { notFound } from '../base/lookups';
import { idOf, jsonOf, readBy, textOf } from '../base/rows';

export function listSearches(store: ReadableStore): readonly SavedSearch[] {
  return allRows(store, 'SELECT * FROM stash_search ORDER BY position, id').map((row) => ({
    id: idOf<StashSearchId>(row, 'id'),
    name: textOf(row, 'name'),
    asked: readBy(stashSearchSchema, jsonOf(row, 'asked_json'), 'asked_json'),
  }));
}

export function saveSearch(
  store: ReadableStore,
  { name, asked }: ChannelInput<'search:save'>,
): Result<ChannelOutput<'search:save'>, Problem> {
  return recordChange(store, `Saved the search “${name}”`, (writable) => {
    const searchId = store.clockAndIds.newId() as StashSearchId;
    const position = oneNumber(store, 'SELECT coalesce(max(position), -1) + 1 FROM stash_search');
    insertRow(writable, 'stash_search', {
      id: searchId,
      name,
      asked_json: JSON.stringify(asked),
      position,
    });
    return success({ searchId });
  });
}

export function renameSearch(
  store: ReadableStore,
  { searchId, name }: ChannelInput<'search:rename'>,
): Result<Changed, Problem> {
  if (nameOf(store, searchId) === null) return notFound('stash-search');
  return recordChange(store, `Renamed a search to “${name}”`, (writable) => {
    updateRow(writable, 'stash_search', searchId, { name });
    return success({});
  });
}

export function deleteSearch(
  store: ReadableStore,
  { searchId }: ChannelInput<'search:delete'>,
): Result<Changed, Problem> {
  const name = nameOf(store, searchId);
  if (name === null) return notFound('stash-search');
  return recordChange(store, `Deleted the search “${name}”`, (writable) => {
    write(writable, 'DELETE FROM stash_search WHERE id = ?', searchId);
    return success({});
  });
}

function nameOf(store: ReadableStore, id: StashSearchId): string | null {
  const row = oneRow(store, 'SELECT name FROM stash_search WHERE id = ?', id);
  return row === undefined ? null : textOf(row, 'name');
}
