import { expect, test } from 'vitest';
import type { StashSearch } from '#core/domain/stash-filter';
import { calendarDate } from '#core/units/calendar-date';
import { inches, NO_SUCH_ID, openWorkshop } from '#test/helpers/workshop';

const ASKED: StashSearch = {
  search: 'leaves',
  filter: { kind: 'yardage', freeAtLeast: inches(9), boughtFrom: calendarDate('2026-01-31') },
  order: 'oldest',
  grouping: 'color',
  view: 'shelf',
};

test('a search is saved with all its settings, renamed and deleted, and each can be undone', () => {
  const { get } = openWorkshop();
  const names = () => get('search:list', {}).map(({ name }) => name);
  const { searchId } = get('search:save', { name: 'Old leaves', asked: ASKED });
  get('search:save', { name: 'All', asked: { ...ASKED, filter: {} } });
  expect(get('search:list', {})[0]).toEqual({ id: searchId, name: 'Old leaves', asked: ASKED });
  get('search:rename', { searchId, name: 'Leaves' });
  get('search:delete', { searchId });
  expect(names()).toEqual(['All']);
  get('change:undo', {});
  expect(names()).toEqual(['Leaves', 'All']);
  get('change:undo', {});
  get('change:undo', {});
  expect(names()).toEqual(['Old leaves']);
  get('change:undo', {});
  expect(names()).toEqual([]);
  get('change:redo', {});
  expect(get('search:list', {})[0]?.asked).toEqual(ASKED);
});

test('a missing search cannot be renamed or deleted', () => {
  const { fail } = openWorkshop();
  const searchId = NO_SUCH_ID as never;
  expect(fail('search:rename', { searchId, name: 'Any' })).toEqual({
    code: 'not-found',
    kind: 'stash-search',
  });
  expect(fail('search:delete', { searchId })).toEqual({ code: 'not-found', kind: 'stash-search' });
});
