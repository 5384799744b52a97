import path from 'node:path';
import { expect, test } from 'vitest';
import { NEWEST_VERSION } from '#main/store/migrations/migrations';
import { schemaSnapshot } from '#main/store/opening/schema-snapshot';
import {
  addStock,
  addProject,
  createStoreAt,
  openWorkshop,
  temporaryFolder,
  TODAY,
} from '#test/helpers/workshop';

test('an empty file becomes a workshop with every table', () => {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  createStoreAt(0, file).close();
  const workshop = openWorkshop(file);
  const { projectId } = addProject(workshop);
  const { pieceId } = addStock(workshop);
  workshop.get('ledger:set-aside', { pieceId, projectId, length: 8128 as never, on: TODAY, note: '' });
  expect(schemaSnapshot(workshop.context.store.database).version).toBe(NEWEST_VERSION);
});

test('every table is strict, so that no column holds a wrong type', () => {
  const { context } = openWorkshop();
  const loose = context.store.database
    .prepare(
      `SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0
      AND name NOT LIKE 'sqlite_%'`,
    )
    .all();
  expect(loose).toEqual([]);
});
