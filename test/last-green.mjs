// What the unit tests saw when they last passed, all of them or, after that, all that a change could reach. `npm run check`
// compares the files of today with it and runs the tests that the difference can reach; `npm test` runs them all.
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { inCache, root } from '#setup/paths';

const rooms = ['main', 'renderer', 'shared-core', 'test'];
const record = inCache('checks/unit-green.json');

const isCode = /\.(ts|tsx|mjs)$/;
const isReadByNoTest = /(^|\/)(README|DEVELOPERS)\.md$/;
// Test code with one of these words reads files or starts programs by itself, which no import shows.
const reachesFurther = /child_process|import\.meta\.dirname|process\.cwd/;

/** @typedef {Readonly<Record<string, string>>} Sums the content of each file as a sum, by its path */

/** @returns {Sums} */
export function sumsOfFiles() {
  const inRooms = rooms.flatMap((room) =>
    fs.readdirSync(path.join(root, room), { recursive: true, withFileTypes: true }),
  );
  const atRoot = fs.readdirSync(root, { withFileTypes: true });
  const files = [...inRooms, ...atRoot].filter((entry) => entry.isFile());
  return Object.fromEntries(
    files.map((entry) => {
      const file = path.join(entry.parentPath, entry.name);
      const sum = createHash('sha256').update(fs.readFileSync(file)).digest('base64');
      return [path.relative(root, file).split(path.sep).join('/'), sum];
    }),
  );
}

/** @returns {Sums | null} */
export function sumsAtLastGreen() {
  return fs.existsSync(record) ? /** @type {Sums} */ (JSON.parse(fs.readFileSync(record, 'utf8'))) : null;
}

/** @param {Sums} sums as they were before the tests began */
export function keepAsGreen(sums) {
  fs.mkdirSync(path.dirname(record), { recursive: true });
  fs.writeFileSync(record, JSON.stringify(sums));
}

/**
 * The files whose tests are to be run: code that changed, and test code that reaches further than its imports. Null
 * stands for all tests: nothing has passed yet, a file is gone, or one changed that is not code.
 *
 * @param {Sums | null} before
 * @param {Sums} now
 * @param {(file: string) => string} read
 * @returns {readonly string[] | null}
 */
export function filesToTest(before, now, read) {
  if (before === null || Object.keys(before).some((file) => !(file in now))) return null;
  const changed = Object.keys(now).filter((file) => now[file] !== before[file] && !isReadByNoTest.test(file));
  const isReachedByImports = (/** @type {string} */ file) => isCode.test(file) && file.includes('/');
  if (!changed.every(isReachedByImports)) return null;
  const further = Object.keys(now).filter(
    (file) => file.startsWith('test/') && isCode.test(file) && reachesFurther.test(read(file)),
  );
  return changed.length === 0 ? [] : [...new Set([...changed, ...further])];
}
