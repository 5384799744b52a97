import path from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { guardCell, unguardCell } from '#core/stash/table/formula-guard';
import { guessMapping } from '#core/stash/table/column-titles';
import { stashFile } from '#core/stash/table/stash-file';

const SCHEMA = path.resolve(import.meta.dirname, '../../../shared-core/stash/stash-file.schema.json');

test('the JSON Schema file matches the schema in the code', async () => {
  await expect(`${JSON.stringify(z.toJSONSchema(stashFile), null, 2)}\n`).toMatchFileSnapshot(SCHEMA);
});

test.each(['=1+2', '+1', '-1', '@a', '\t=1', '\r', '＝1', "'=1", "''@a"])(
  '“%s” can open no formula once it is guarded',
  (text) => {
    expect(guardCell(text)).toMatch(/^'/);
    expect(unguardCell(guardCell(text))).toBe(text);
  },
);

test('a column is recognized by its title in any case, and only the first with a meaning gets it', () => {
  expect(guessMapping(['FABRIC NAME', 'Colour', 'colors', 'w.o.f.', 'How much?', 'lot'])).toEqual([
    'name',
    'color-words',
    null,
    null,
    'size',
    null,
  ]);
});
