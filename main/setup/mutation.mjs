import { readdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { run, lastLines } from './command.mjs';
import { setUpDependencies } from './dependencies.mjs';
import { inRoot, root } from './paths.mjs';
import { runProgram, SetupProblem, step } from './report.mjs';

/** Of a hundred mutants of a folder, as many must be noticed by its tests. */
const LEAST_SCORE = 90;

/** @typedef {{ status: string, location: { start: { line: number } }, mutatorName: string, replacement?: string, statusReason?: string }} Mutant */
/** @typedef {{ name: string, found: number, missed: string[], argued: number }} Score */

/** Mutation testing of the whole core, or of the folders named behind the command, such as `units` or `calculators/backing`. */
await runProgram(async () => {
  await setUpDependencies();
  const asked = process.argv.slice(2);
  const parts = allParts().filter((part) => asked.length === 0 || asked.includes(part));
  if (parts.length === 0)
    throw new SetupProblem('No such folder of the core.', `name some of ${allParts().join(', ')}`);
  /** @type {Score[]} */
  const scores = [];
  for (const part of parts) scores.push(await step(part, () => mutate(part)));
  for (const { missed } of scores) missed.forEach((line) => console.log(line));
  console.log();
  scores.forEach((score) => console.log(wordsOf(score)));
  const all = scores.reduce(added, { name: 'all', found: 0, missed: [], argued: 0 });
  console.log(wordsOf(all));
  return scores.every((score) => percentOf(score) >= LEAST_SCORE) ? 0 : 1;
});

function allParts() {
  const folders = readdirSync(inRoot('shared-core', 'calculators'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => `calculators/${entry.name}`);
  return ['units', 'geometry', 'calculators', ...folders];
}

/** @param {string} part */
async function mutate(part) {
  const report = inRoot('out', 'mutation', `${part.replace('/', '-')}.json`);
  rmSync(report, { force: true });
  const program = path.join('node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js');
  const env = { ...process.env, MUTATION_PART: part };
  const { code, output } = await run(process.execPath, [program, 'run', '.stryker.config.mjs'], {
    cwd: root,
    env,
  });
  if (code !== 0) throw new Error(lastLines(output, 40));
  return scoreOf(part, report);
}

/**
 * @param {string} name
 * @param {string} report
 * @returns {Score}
 */
function scoreOf(name, report) {
  /** @type {{ files: Record<string, { mutants: Mutant[] }> }} */
  const { files } = JSON.parse(readFileSync(report, 'utf8'));
  const mutants = Object.entries(files).flatMap(([file, { mutants: own }]) =>
    own.map((mutant) => ({ file, ...mutant })),
  );
  const isFound = (/** @type {Mutant} */ { status }) => status === 'Killed' || status === 'Timeout';
  const isMissed = (/** @type {Mutant} */ { status }) => status === 'Survived' || status === 'NoCoverage';
  const isArgued = (/** @type {Mutant} */ { status, statusReason = '' }) =>
    status === 'Ignored' && !isOutOfScope(statusReason);
  return {
    name,
    found: mutants.filter(isFound).length,
    argued: mutants.filter(isArgued).length,
    missed: mutants
      .filter(isMissed)
      .map(({ file, location, mutatorName, replacement = '' }) =>
        [
          `${file}:${location.start.line}`,
          mutatorName,
          replacement.replaceAll(/\s+/g, ' ').slice(0, 90),
        ].join('  '),
      ),
  };
}

/**
 * Left out by the configuration for all files alike, not by a comment in one.
 *
 * @param {string} reason
 */
function isOutOfScope(reason) {
  return reason.startsWith('Static mutant') || reason.startsWith('Ignored because of excluded mutation');
}

/**
 * @param {Score} one
 * @param {Score} other
 * @returns {Score}
 */
function added(one, other) {
  return {
    name: one.name,
    found: one.found + other.found,
    missed: [...one.missed, ...other.missed],
    argued: one.argued + other.argued,
  };
}

/** @param {Score} score */
function percentOf({ found, missed }) {
  const all = found + missed.length;
  return all === 0 ? 100 : (100 * found) / all;
}

/** @param {Score} score */
function wordsOf(score) {
  const { name, found, missed, argued } = score;
  return `${name.padEnd(28)} ${percentOf(score).toFixed(1).padStart(5)} %  ${found} of ${found + missed.length}, ${argued} argued away`;
}
