import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const TESTS = path.resolve(import.meta.dirname, '..');
const keys = [
  ...fs.readFileSync(path.join(TESTS, 'sources.md'), 'utf8').matchAll(/^\| ([A-Z][A-Z0-9 -]*?) +\|/gm),
].map((row) => row[1] ?? '');

/** Every mention of a published figure in the tests of the core: the rest of its line and the line after it. */
function published(): readonly (readonly [string, string])[] {
  const files = fs.readdirSync(import.meta.dirname, { recursive: true, encoding: 'utf8' });
  return files
    .filter((file) => file.endsWith('.test.ts') && file !== path.basename(import.meta.filename))
    .flatMap((file) => {
      const text = fs.readFileSync(path.join(import.meta.dirname, file), 'utf8');
      return [...text.matchAll(/[Pp]ublished: .*\n.*/g)].map(([mention]) => [file, mention] as const);
    });
}

test('every published figure names a source of the list by its key', () => {
  expect(keys.length).toBeGreaterThan(25);
  expect(published().length).toBeGreaterThan(15);
  const named = (mention: string) => keys.some((key) => new RegExp(`\\b${key}\\b`).test(mention));
  expect(published().filter(([, mention]) => !named(mention))).toEqual([]);
});
