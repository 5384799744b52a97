import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { projectRoot } from '#test/helpers/project-root';

/** The paths of all files of the project that people write, from its folder, with forward slashes. */
export async function sourceFiles(): Promise<readonly string[]> {
  const folders = await Promise.all(
    ['main', 'renderer', 'shared-core', 'test'].map(async (folder) => {
      const found = await readdir(path.join(projectRoot, folder), { recursive: true, withFileTypes: true });
      return found
        .filter((entry) => entry.isFile())
        .map((entry) => path.relative(projectRoot, path.join(entry.parentPath, entry.name)));
    }),
  );
  return folders.flat().map((file) => file.split(path.sep).join('/'));
}
