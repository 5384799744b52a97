import fs from 'node:fs';
import path from 'node:path';
import { buildAddon } from './addon-build.mjs';
import { lastLines, run } from './command.mjs';
import { inCache, inRoot } from './paths.mjs';
import { SetupProblem, step } from './report.mjs';

const packageFolder = inRoot('node_modules/better-sqlite3');
const builtPlace = path.join(packageFolder, 'build/Release/better_sqlite3.node');
const verifiedFile = inCache('addon-verified.txt');

/**
 * What was verified: the addon in use and the two programs that load it. Any change asks for a new smoke test.
 *
 * @param {string} electronVersion
 */
function verificationKey(electronVersion) {
  const addon = fs.existsSync(builtPlace) ? fs.statSync(builtPlace) : undefined;
  const inUse = addon === undefined ? 'prebuilt' : `${addon.size} ${addon.mtimeMs}`;
  return `better-sqlite3 ${packageVersion()} ${inUse}, node ${process.version}, electron ${electronVersion}`;
}

function packageVersion() {
  const about = fs.readFileSync(path.join(packageFolder, 'package.json'), 'utf8');
  return /** @type {{ version: string }} */ (JSON.parse(about)).version;
}

/**
 * Whether the addon works in this Node and in Electron; the answer is what failed, if anything did.
 *
 * @param {string} electron
 * @returns {Promise<string | undefined>}
 */
async function smokeTest(electron) {
  const script = inRoot('main/setup/addon-smoke.cjs');
  for (const program of [process.execPath, electron]) {
    const env = { ...process.env, ELECTRON_RUN_AS_NODE: '1' };
    const { code, output } = await run(program, ['--expose-gc', script], { env, timeoutMs: 30_000 });
    if (code !== 0) return `${path.basename(program)}: ${lastLines(output, 6)}`;
  }
  return undefined;
}

async function placeBuiltAddon() {
  const kept = inCache(`better-sqlite3-${packageVersion()}-${process.platform}-${process.arch}.node`);
  if (!fs.existsSync(kept)) {
    await step('Building the SQLite addon (the prebuilt one is for newer runtimes)', () =>
      buildAddon(packageFolder, kept),
    );
  }
  fs.mkdirSync(path.dirname(builtPlace), { recursive: true });
  fs.copyFileSync(kept, builtPlace);
  return kept;
}

/**
 * Provides a SQLite addon that works in this Node and in Electron: the prebuilt one where both are new enough, else one
 * built here and kept in .cache.
 *
 * @param {{ executable: string, version: string }} runtime
 */
export async function setUpSqliteAddon({ executable, version }) {
  const verified = fs.existsSync(verifiedFile) ? fs.readFileSync(verifiedFile, 'utf8') : '';
  if (verified === verificationKey(version)) return;
  if ((await smokeTest(executable)) !== undefined) {
    const kept = await placeBuiltAddon();
    const failure = await smokeTest(executable);
    if (failure !== undefined) {
      fs.rmSync(kept);
      fs.rmSync(builtPlace);
      throw new SetupProblem(
        `The SQLite addon that was built here does not work in ${failure}`,
        'use Node 22.14 or newer, whose prebuilt addon is used as it is, then npm run setup',
      );
    }
  }
  fs.mkdirSync(inCache(), { recursive: true });
  fs.writeFileSync(verifiedFile, verificationKey(version));
}
