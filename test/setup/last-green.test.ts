import { describe, expect, test } from 'vitest';
import { filesToTest } from '../last-green.mjs';

const texts: Readonly<Record<string, string>> = {
  'package.json': '{}',
  'main/menu.ts': 'export const a = 1;',
  'renderer/page.css': 'p {}',
  'renderer/README.md': '# Page',
  'test/main/menu.test.ts': "import { a } from '#main/menu';",
  'test/main/program.test.ts': "import { spawnSync } from 'node:child_process';",
  'test/helpers/project-root.ts': 'export const projectRoot = import.meta.dirname;',
};
const read = (file: string): string => texts[file] ?? '';
const readsFiles = ['test/main/program.test.ts', 'test/helpers/project-root.ts'];

describe('the unit tests of a quick check', () => {
  test('are all tests until all have passed once', () => {
    expect(filesToTest(null, texts, read)).toBeNull();
  });

  test('are none when nothing changed, or only what people read', () => {
    expect(filesToTest(texts, texts, read)).toEqual([]);
    expect(filesToTest(texts, { ...texts, 'renderer/README.md': '# The page' }, read)).toEqual([]);
  });

  test.for(['main/menu.ts', 'main/new.ts'])(
    'are those that %s can reach when it is new or changed, and those that read files or start programs',
    (file) => {
      expect(filesToTest(texts, { ...texts, [file]: 'export const b = 2;' }, read)).toEqual([
        file,
        ...readsFiles,
      ]);
    },
  );

  test.for(['package.json', 'renderer/page.css', 'test/fixtures/sample.json', 'vitest.config.ts'])(
    'are all tests when %s changed: no import shows who needs it',
    (file) => {
      expect(filesToTest(texts, { ...texts, [file]: 'changed' }, read)).toBeNull();
    },
  );

  test('are all tests when a file is gone', () => {
    const { 'main/menu.ts': _, ...rest } = texts;
    expect(filesToTest(texts, rest, read)).toBeNull();
  });
});
