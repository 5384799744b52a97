import path from 'node:path';
import { expect, test } from 'vitest';
import { createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

test('every older file becomes a file of its own, and stays it', () => {
  const ids = ['one', 'two'].map((name) => {
    const file = path.join(temporaryFolder(), `${name}.sqlite`);
    createStoreAt(210, file).close();
    const { fileId } = openWorkshop(file).get('workshop:opening', {});
    expect(fileId).toMatch(/^[0-9a-f]{32}$/);
    expect(openWorkshop(file).get('workshop:opening', {}).fileId).toBe(fileId);
    return fileId;
  });
  expect(new Set(ids).size).toBe(2);
});
