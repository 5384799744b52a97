import { z } from 'zod';
import { type StashSearchId, stashSearchId } from '#core/domain/ids';
import { type SavedSearch, searchName, stashSearch } from '#core/domain/stash-filter';
import { reads, writes } from './channel';
import type { Changed } from './projects';

export const stashSearchChannels = {
  /** In the order they were saved. */
  'search:list': reads<readonly SavedSearch[]>()(z.object({})),
  'search:save': writes<Changed & { readonly searchId: StashSearchId }>()(
    z.object({ name: searchName, asked: stashSearch }),
  ),
  'search:rename': writes<Changed>()(z.object({ searchId: stashSearchId, name: searchName })),
  'search:delete': writes<Changed>()(z.object({ searchId: stashSearchId })),
};
