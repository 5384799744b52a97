import fs from 'node:fs';
import { lastLines, npm } from './command.mjs';
import { inRoot, root } from './paths.mjs';
import { SetupProblem, step } from './report.mjs';

/** @typedef {Readonly<Record<string, { version?: string, optional?: boolean }>>} LockedPackages */

/**
 * The packages of the lock file that node_modules lacks or holds in another version. Optional ones may be absent:
 * npm leaves out those of other platforms.
 *
 * @param {LockedPackages} locked
 * @param {LockedPackages} installed
 * @returns {string[]}
 */
export function missingPackages(locked, installed) {
  return Object.entries(locked)
    .filter(([place]) => place !== '')
    .filter(([place, { version, optional }]) => {
      const here = installed[place];
      return here === undefined ? optional !== true : here.version !== version;
    })
    .map(([place]) => place);
}

/**
 * @param {string} file
 * @returns {LockedPackages}
 */
function packagesOf(file) {
  try {
    const lock = /** @type {{ packages: LockedPackages }} */ (JSON.parse(fs.readFileSync(file, 'utf8')));
    return lock.packages;
  } catch {
    return {};
  }
}

/** Brings node_modules to what package-lock.json says; npm's own record of what it installed tells whether it is. */
export async function setUpDependencies() {
  const locked = packagesOf(inRoot('package-lock.json'));
  if (missingPackages(locked, packagesOf(inRoot('node_modules/.package-lock.json'))).length === 0) return;
  await step('Installing the packages of package-lock.json', async () => {
    const { code, output } = await npm(['ci', '--no-audit', '--no-fund', '--loglevel=error'], { cwd: root });
    if (code !== 0) {
      throw new SetupProblem(`The packages could not be installed:\n${lastLines(output)}`, 'npm ci');
    }
  });
}
