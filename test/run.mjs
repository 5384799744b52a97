// Everything that proves the program, in one run: `npm test`, or the part without windows: `npm run check`.
//
// `npm test` trusts no earlier result. `npm run check` does what little changed asks for: types, lint, layers and format
// keep what they found for each file under .cache/checks, and only unit tests that a change can reach are run again
// (last-green.mjs). The lint that needs types has no cache.
import fs from 'node:fs';
import { run, lastLines } from '#setup/command';
import { buildProgram } from '#setup/build';
import { setUpDependencies } from '#setup/dependencies';
import { withDisplay } from '#setup/display';
import { runtimeEnvironment } from '#setup/electron-runtime';
import { packProgram } from '#setup/package';
import { inCache, inRoot, root } from '#setup/paths';
import { runProgram, secondsSince } from '#setup/report';
import { setUp } from '#setup/setup';
import { filesToTest, keepAsGreen, sumsAtLastGreen, sumsOfFiles } from './last-green.mjs';

/** @typedef {Readonly<{ passed: number, failed: number, skipped: number }>} Counts */

const noTests = { passed: 0, failed: 0, skipped: 0 };
const longestOutput = 400;

const reports = { unit: inCache('test/unit.json'), windows: inCache('test/windows.json') };

/** @param {string} name */
const kept = (name) => inCache('checks', name);

/**
 * One step: a tool of node_modules and its arguments; `counts` reads how many tests it ran from its report.
 *
 * @typedef {Readonly<{ title: string, tool: string, args: readonly string[], counts?: () => Counts }>} Step
 */

/** @type {readonly Step[]} */
const checks = [
  {
    title: 'types',
    tool: 'typescript-native/bin/tsc',
    // With more threads than this the native compiler takes several times as long on two cores.
    args: ['-b', '--pretty', 'false', '--builders', '2', '--checkers', '1'],
  },
  { title: 'lint by types', tool: 'oxlint/bin/oxlint', args: ['--deny-warnings'] },
  {
    title: 'lint',
    tool: 'eslint/bin/eslint.js',
    args: [
      '.',
      '--max-warnings',
      '0',
      '--cache',
      '--cache-strategy',
      'content',
      '--cache-location',
      kept('eslint'),
    ],
  },
  {
    title: 'nothing unused',
    tool: 'knip/bin/knip.js',
    args: ['--no-progress', '--treat-config-hints-as-errors', '--cache', '--cache-location', kept('knip')],
  },
  {
    title: 'layers',
    tool: 'dependency-cruiser/bin/dependency-cruise.mjs',
    args: [
      ...['--config', '.dependency-cruiser.mjs', '--cache', kept('layers'), '--cache-strategy', 'content'],
      ...['shared-core', 'main', 'renderer', 'test'],
    ],
  },
  {
    title: 'format',
    tool: 'prettier/bin/prettier.cjs',
    args: [
      ...['--check', '--log-level', 'warn', '.'],
      ...['--cache', '--cache-strategy', 'content', '--cache-location', kept('prettier')],
    ],
  },
];

/**
 * The unit tests that these files can reach; null stands for all.
 *
 * @param {readonly string[] | null} files
 * @returns {Step}
 */
const unitTests = (files) => ({
  title: files === null ? 'unit tests' : 'unit tests that a change can reach',
  tool: 'vitest/vitest.mjs',
  args: [
    ...(files === null ? ['run'] : ['related', '--run', ...files]),
    ...['--reporter=dot', '--reporter=json', `--outputFile.json=${reports.unit}`],
  ],
  counts: () => {
    const report = readReport(reports.unit);
    return {
      passed: Number(report['numPassedTests']),
      failed: Number(report['numFailedTests']),
      skipped: Number(report['numPendingTests']) + Number(report['numTodoTests']),
    };
  },
});

/** @type {Step} */
const windowTests = {
  title: 'tests in real windows',
  tool: '@playwright/test/cli.js',
  args: ['test', '--reporter=dot,json'],
  counts: () => {
    const stats = /** @type {Record<string, number>} */ (readReport(reports.windows)['stats']);
    return {
      passed: stats['expected'] ?? 0,
      failed: stats['unexpected'] ?? 0,
      skipped: stats['skipped'] ?? 0,
    };
  },
};

/** @param {string} file */
function readReport(file) {
  /** @type {Record<string, unknown>} */
  const report = JSON.parse(fs.readFileSync(file, 'utf8'));
  return report;
}

/**
 * @param {Step} step
 * @param {number | null} code
 * @returns {Counts}
 */
function countsOf({ counts }, code) {
  const failedStep = { ...noTests, failed: code === 0 ? 0 : 1 };
  if (counts === undefined) return failedStep;
  try {
    const counted = counts();
    return counted.failed === 0 ? { ...counted, failed: failedStep.failed } : counted;
  } catch {
    return failedStep;
  }
}

/**
 * Runs one step and says how it went on one line; what it printed is shown when it failed.
 *
 * @param {Step} step
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {Promise<Counts>}
 */
async function runStep(step, env = process.env) {
  const start = performance.now();
  const { code, output } = await run(process.execPath, [inRoot('node_modules', step.tool), ...step.args], {
    cwd: root,
    env: { ...env, FORCE_COLOR: '0', NO_COLOR: '1', PLAYWRIGHT_JSON_OUTPUT_NAME: reports.windows },
  });
  const counts = countsOf(step, code);
  const total = step.counts === undefined ? '' : `, ${counts.passed + counts.failed} run`;
  console.log(`  ${step.title}: ${code === 0 ? 'passed' : 'FAILED'} in ${secondsSince(start)}${total}`);
  if (code !== 0) console.log(`\n${lastLines(output, longestOutput)}\n`);
  return counts;
}

async function runChecks() {
  const all = [];
  for (const step of checks) all.push(await runStep(step));
  return all;
}

/** @param {boolean} isEverything */
async function runUnitTests(isEverything) {
  const now = sumsOfFiles();
  const files = isEverything
    ? null
    : filesToTest(sumsAtLastGreen(), now, (file) => fs.readFileSync(inRoot(file), 'utf8'));
  if (files?.length === 0) {
    console.log('  unit tests: nothing changed since they passed');
    return noTests;
  }
  const counts = await runStep(unitTests(files));
  if (counts.failed === 0) keepAsGreen(now);
  return counts;
}

/**
 * Builds and packs the program; a failure is a count, so that the other lane is heard to its end.
 *
 * @param {Promise<import('#setup/electron-runtime').Runtime>} runtime
 */
async function buildAndPack(runtime) {
  const ready = await runtime;
  try {
    await buildProgram();
    await packProgram(ready);
    return noTests;
  } catch (error) {
    console.log(`\n${error instanceof Error ? error.message : String(error)}\n`);
    return { ...noTests, failed: 1 };
  }
}

/** @param {import('#setup/electron-runtime').Runtime} runtime */
const runWindowTests = (runtime) =>
  withDisplay(runtimeEnvironment(runtime), (env) => runStep(windowTests, env));

await runProgram(async () => {
  const start = performance.now();
  const hasWindows = !process.argv.includes('--check');
  for (const file of Object.values(reports)) fs.rmSync(file, { force: true });
  if (hasWindows) fs.rmSync(inCache('checks'), { recursive: true, force: true });

  // Two lanes keep two cores busy. Only tests wait for what is set up after the packages. Nothing runs beside the windows,
  // whose tests wait for what they see.
  await setUpDependencies();
  const runtime = setUp({ needsDisplay: hasWindows });
  const [unit, checked] = await Promise.all([
    runtime.then(() => runUnitTests(hasWindows)),
    runChecks().then(async (results) => [...results, ...(hasWindows ? [await buildAndPack(runtime)] : [])]),
  ]);
  const results = [unit, ...checked];
  const isBuilt = results.at(-1)?.failed === 0;
  if (hasWindows && isBuilt) results.push(await runWindowTests(await runtime));

  const sum = (/** @type {keyof Counts} */ key) => results.reduce((total, counts) => total + counts[key], 0);
  console.log(`Done in ${secondsSince(start)}.`);
  console.log(`${sum('passed')} passed, ${sum('failed')} failed, ${sum('skipped')} skipped`);
  return sum('failed') === 0 ? 0 : 1;
});
