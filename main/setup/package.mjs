import fs from 'node:fs';
import { buildProgram } from './build.mjs';
import { fingerprint } from './fingerprint.mjs';
import { lastLines, run, runInForeground } from './command.mjs';
import { inRoot, root } from './paths.mjs';
import { runProgram, SetupProblem, step } from './report.mjs';
import { setUp } from './setup.mjs';

/** @typedef {import('./electron-runtime.mjs').Runtime} Runtime */

const stampFile = inRoot('out', '.packaged');
const sources = ['dist/main', 'dist/preload', 'dist/renderer', 'package.json', 'electron-builder.yml'];
const builder = inRoot('node_modules/electron-builder/cli.js');

/** @param {Runtime} runtime */
const builderArguments = ({ origin, folder, version }) =>
  origin === 'carried' ? [`-c.electronDist=${folder}`, `-c.electronVersion=${version}`] : [];

/**
 * Packs the built program for this machine into a folder under out, from which it runs; does nothing when that folder
 * is of this build.
 *
 * @param {Runtime} runtime
 */
export async function packProgram(runtime) {
  const content = `${runtime.origin} ${runtime.version} ${fingerprint(sources.map((place) => inRoot(place)))}`;
  if (fs.existsSync(stampFile) && fs.readFileSync(stampFile, 'utf8') === content) return;
  await step('Packaging the program into out', async () => {
    const { code, output } = await run(process.execPath, [builder, '--dir', ...builderArguments(runtime)], {
      cwd: root,
    });
    if (code !== 0) throw new SetupProblem(`Packaging failed:\n${lastLines(output, 30)}`, 'npm run package');
    fs.writeFileSync(stampFile, content);
  });
}

/** @param {Runtime} runtime */
function makeInstallers(runtime) {
  if (runtime.origin === 'carried') {
    throw new SetupProblem(
      'This machine runs an Electron from a package that carries a runtime, for development and tests: no installer is made from it.',
      'remove .cache/electron-runtime and run npm run package -- --installers where Electron’s releases can be reached',
    );
  }
  return runInForeground(process.execPath, [builder, '--publish', 'never'], { cwd: root });
}

if (process.argv[1] === import.meta.filename) {
  await runProgram(async () => {
    const runtime = await setUp();
    await buildProgram();
    if (process.argv.includes('--installers')) return makeInstallers(runtime);
    await packProgram(runtime);
    console.log(
      `The program is in out/${process.platform === 'linux' ? 'linux-unpacked' : ''}.` +
        (runtime.origin === 'carried'
          ? ' It carries a runtime that is for tests only: do not share it.'
          : ''),
    );
    return 0;
  });
}
