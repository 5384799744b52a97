import { mkdir, rm, utimes, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { fingerprint } from '#setup/fingerprint';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';

describe('the fingerprint of a folder', () => {
  test('changes with every file added, written, touched or removed, and only then', async () => {
    await withTemporaryFolder(async (folder) => {
      const file = path.join(folder, 'deep', 'a.ts');
      const other = path.join(folder, 'b.ts');
      await mkdir(path.dirname(file));
      const steps = [
        () => writeFile(file, 'one'),
        () => writeFile(other, ''),
        () => writeFile(file, 'longer'),
        () => utimes(other, 1, 1),
        () => rm(other),
      ];
      const seen = new Set([fingerprint([folder])]);
      for (const change of steps) {
        await change();
        seen.add(fingerprint([folder]));
        expect(fingerprint([folder])).toBe(fingerprint([folder]));
      }
      expect(seen.size).toBe(steps.length + 1);
    });
  });

  test('takes a place that is not there as empty', () => {
    expect(fingerprint(['/no/such/place'])).toBe(fingerprint([]));
  });
});
