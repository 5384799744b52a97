import path from 'node:path';
import { expect, test } from 'vitest';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

const id = (last: string) => `00000000-0000-4000-8000-0000000000${last}`;

test('an older stash has no saved searches, can be searched in groups, and saves a first search', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(110, file);
  older.exec(`
    INSERT INTO change_log (seq, id, words, made_at, is_undone) VALUES (1, '${id('aa')}', 'Added it', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO fabric (seq, id, name, print, color_words, fiber, direction, width, is_washed, supplier, swatch, notes, created_at)
      VALUES (1, '${id('f1')}', 'Rust', '', 'warm brown', '', 'any', 341376, 0, 'A market', '#a0522d', '', 1);
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  const { get } = openWorkshop(file);
  expect(get('search:list', {})).toEqual([]);
  const groups = (by: 'color' | 'supplier') => get('fabric:groups', { search: '', by });
  expect(groups('color')).toEqual([{ key: 'brown', name: 'brown', fabrics: 1 }]);
  expect(groups('supplier')).toEqual([{ key: 'A market', name: 'A market', fabrics: 1 }]);
  const asked = { search: 'rust', filter: {}, order: 'name', grouping: null, view: 'list' } as const;
  get('search:save', { name: 'Rusts', asked });
  expect(get('search:list', {})).toMatchObject([{ name: 'Rusts', asked }]);
});
