import fs from 'node:fs';
import { stripVTControlCharacters } from 'node:util';
import { fingerprint } from './fingerprint.mjs';
import { inRoot } from './paths.mjs';
import { runProgram, SetupProblem, step } from './report.mjs';
import { setUp } from './setup.mjs';

/** @typedef {import('./vite-configs.mjs').Part} Part */

const tools = ['package-lock.json', 'tsconfig.json', 'vite.alias.js', 'main/setup/vite-configs.mjs'];

/** @type {Readonly<Record<Part, readonly string[]>>} */
const sources = {
  main: ['main', 'shared-core', ...tools],
  preload: ['main/preload', 'shared-core', ...tools],
  renderer: ['renderer', 'shared-core', ...tools],
};

/** @param {Part} part */
const stampFile = (part) => inRoot('dist', `.${part}.built`);

/** @param {Part} part */
const sourceFingerprint = (part) => fingerprint(sources[part].map((place) => inRoot(place)));

/** @param {Part} part */
function isCurrent(part) {
  const stamp = stampFile(part);
  if (!fs.existsSync(stamp) || !fs.existsSync(inRoot('dist', part))) return false;
  return fs.readFileSync(stamp, 'utf8') === sourceFingerprint(part);
}

/**
 * Builds next to the old output and swaps the two at once: a program that starts meanwhile finds the old or the new, never
 * half of one.
 *
 * @param {Part} part
 */
async function buildPart(part) {
  const [{ build }, { configs }] = await Promise.all([import('vite'), import('./vite-configs.mjs')]);
  // Taken before the work: a file saved meanwhile makes the output stale, not current.
  const before = sourceFingerprint(part);
  const scratch = inRoot('dist', `.${part}-${process.pid}`);
  try {
    await build(configs[part](scratch)).catch((/** @type {unknown} */ error) => {
      throw new SetupProblem(
        `${part} could not be built.\n${stripVTControlCharacters(String(error))}`,
        'correct what it names, then npm run build',
      );
    });
    fs.rmSync(inRoot('dist', part), { recursive: true, force: true });
    fs.renameSync(scratch, inRoot('dist', part));
    fs.writeFileSync(stampFile(part), before);
  } finally {
    fs.rmSync(scratch, { recursive: true, force: true });
  }
}

/** Builds the parts of the program whose sources have changed since they were last built, into dist. */
export async function buildProgram() {
  const stale = /** @type {Part[]} */ (['main', 'preload', 'renderer']).filter((part) => !isCurrent(part));
  if (stale.length === 0) return;
  fs.mkdirSync(inRoot('dist'), { recursive: true });
  await step(`Building ${stale.join(', ')}`, async () => {
    for (const part of stale) await buildPart(part);
  });
}

if (process.argv[1] === import.meta.filename) {
  await runProgram(async () => {
    await setUp();
    await buildProgram();
    return 0;
  });
}
