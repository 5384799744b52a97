import fs from 'node:fs';
import { isOnPath, lastLines, run } from './command.mjs';
import { hasDisplay } from './display.mjs';
import { SetupProblem, step } from './report.mjs';

const libraries = ['libgtk-3-0', 'libnss3', 'libasound2', 'libgbm1', 'fonts-dejavu-core'];
// Debian 13 and Ubuntu 24.04 renamed these when they widened their time type.
const renamed = ['libgtk-3-0', 'libasound2'];

/**
 * The shared libraries that `ldd` could not find, from its output.
 *
 * @param {string} lddOutput
 * @returns {string[]}
 */
export const missingLibraries = (lddOutput) =>
  [...lddOutput.matchAll(/^\s*(\S+) => not found/gm)].flatMap(([, name]) =>
    name === undefined ? [] : [name],
  );

/** @param {readonly string[]} packages */
async function aptInstall(packages) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const update = await run('apt-get', ['update', '-qq'], { env });
  const hasNewNames = (await run('apt-cache', ['show', 'libasound2t64'], { env })).code === 0;
  const names = packages.map((name) => (hasNewNames && renamed.includes(name) ? `${name}t64` : name));
  const install = await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...names], {
    env,
  });
  if (install.code !== 0) {
    throw new SetupProblem(
      `apt-get could not install what Electron needs:\n${lastLines(update.output + install.output)}`,
      `apt-get update && apt-get install ${names.join(' ')}`,
    );
  }
}

/**
 * On Linux, provides the shared libraries of Electron, and what else is asked for: a virtual display where there is
 * no real one, a compiler. Other systems bring the libraries themselves.
 *
 * @param {{ executable: string, needsDisplay: boolean }} needs
 */
export async function setUpSystemLibraries({ executable, needsDisplay }) {
  if (process.platform !== 'linux') return;
  const missing = missingLibraries((await run('ldd', [executable])).output);
  const wanted = [
    ...(missing.length > 0 ? libraries : []),
    ...(needsDisplay && !hasDisplay() && !isOnPath('Xvfb') ? ['xvfb', 'fonts-dejavu-core'] : []),
  ];
  if (wanted.length > 0) await provide([...new Set(wanted)], missing);
}

/** Provides a C and a C++ compiler on Linux. */
export async function setUpCompiler() {
  if (!isOnPath('cc') || !isOnPath('c++')) await provide(['g++'], []);
}

/**
 * @param {readonly string[]} packages
 * @param {readonly string[]} missing
 */
async function provide(packages, missing) {
  const isAdministrator = process.getuid?.() === 0;
  if (isAdministrator && fs.existsSync('/usr/bin/apt-get')) {
    await step(`Installing ${packages.join(', ')} by apt-get`, () => aptInstall(packages));
    return;
  }
  throw new SetupProblem(
    `This system lacks ${[...packages, ...missing].join(', ')}.`,
    `sudo apt-get install ${packages.join(' ')} (or the same by your system's own package manager)`,
  );
}
