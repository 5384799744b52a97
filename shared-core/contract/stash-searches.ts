import { z } from 'zod';
import { type StashSearchId, stashSearchIdSchema } from '#core/domain/ids';
import { type SavedSearch, searchNameSchema, stashSearchSchema } from '#core/domain/stash-filter';
import { reads, writes } from './channel';
import type { Changed } from './projects';

export const stashSearchChannels = {
  /** In the order they were saved. */
  'search:list': reads<readonly SavedSearch[]>()(z.object({})),
  'search:save': writes<Changed & { readonly searchId: StashSearchId }>()(
    z.object({ name: searchNameSchema, asked: stashSearchSchema }),
  ),
  'search:rename': writes<Changed>()(z.object({ searchId: stashSearchIdSchema, name: searchNameSchema })),
  'search:delete': writes<Changed>()(z.object({ searchId: stashSearchIdSchema })),
};
