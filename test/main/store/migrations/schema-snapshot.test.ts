import path from 'node:path';
import { expect, test } from 'vitest';
import { schemaSnapshot } from '#main/store/opening/schema-snapshot';
import { openWorkshop } from '#test/helpers/workshop';

const SNAPSHOT = path.resolve(import.meta.dirname, '../../../../main/store/migrations/schema-snapshot.json');

test('the schema matches its snapshot: to change it, add a migration and run vitest -u', async () => {
  const { context } = openWorkshop();
  const now = schemaSnapshot(context.store.database);
  await expect(`${JSON.stringify(now, null, 2)}\n`).toMatchFileSnapshot(SNAPSHOT);
});
