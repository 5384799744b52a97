// Everything that proves the program, in one run: `npm test`, or the part without windows: `npm run check`.
import fs from 'node:fs';
import { run, lastLines } from '#setup/command';
import { buildProgram } from '#setup/build';
import { withDisplay } from '#setup/display';
import { runtimeEnvironment } from '#setup/electron-runtime';
import { packProgram } from '#setup/package';
import { inCache, inRoot, root } from '#setup/paths';
import { runProgram, secondsSince } from '#setup/report';
import { setUp } from '#setup/setup';

/**
 * `wavering` tests passed, but only at a second try.
 *
 * @typedef {Readonly<{ passed: number, failed: number, skipped: number, wavering: number }>} Counts
 */

const noTests = { passed: 0, failed: 0, skipped: 0, wavering: 0 };
const longestOutput = 400;

const reports = { unit: inCache('test/unit.json'), windows: inCache('test/windows.json') };

/**
 * One step: a tool of node_modules and its arguments; `counts` reads how many tests it ran from its report.
 *
 * @typedef {Readonly<{ title: string, tool: string, args: readonly string[], counts?: () => Counts }>} Step
 */

/** @type {readonly Step[]} */
const checks = [
  { title: 'types', tool: 'typescript/bin/tsc', args: ['-b', '--pretty', 'false'] },
  { title: 'lint', tool: 'eslint/bin/eslint.js', args: ['.', '--max-warnings', '0'] },
  {
    title: 'layers',
    tool: 'dependency-cruiser/bin/dependency-cruise.mjs',
    args: ['--config', '.dependency-cruiser.mjs', 'shared-core', 'main', 'renderer', 'test'],
  },
  { title: 'format', tool: 'prettier/bin/prettier.cjs', args: ['--check', '--log-level', 'warn', '.'] },
];

/** @type {Step} */
const unitTests = {
  title: 'unit tests',
  tool: 'vitest/vitest.mjs',
  args: ['run', '--reporter=dot', '--reporter=json', `--outputFile.json=${reports.unit}`],
  counts: () => {
    const report = readReport(reports.unit);
    return {
      passed: Number(report['numPassedTests']),
      failed: Number(report['numFailedTests']),
      skipped: Number(report['numPendingTests']) + Number(report['numTodoTests']),
      wavering: 0,
    };
  },
};

/** @type {Step} */
const windowTests = {
  title: 'tests in real windows',
  tool: '@playwright/test/cli.js',
  args: ['test', '--reporter=dot,json'],
  counts: () => {
    const stats = /** @type {Record<string, number>} */ (readReport(reports.windows)['stats']);
    const wavering = stats['flaky'] ?? 0;
    return {
      passed: (stats['expected'] ?? 0) + wavering,
      failed: stats['unexpected'] ?? 0,
      skipped: stats['skipped'] ?? 0,
      wavering,
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
 * Runs one step and says how it went on one line; what it printed is shown when it failed or wavered.
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
  if (counts.wavering > 0) console.log(`  ${counts.wavering} of them only at a second try`);
  if (code !== 0 || counts.wavering > 0) console.log(`\n${lastLines(output, longestOutput)}\n`);
  return counts;
}

/**
 * @param {readonly Step[]} steps
 * @returns {Promise<Counts[]>}
 */
async function inTurn(steps) {
  const all = [];
  for (const step of steps) all.push(await runStep(step));
  return all;
}

/** @param {import('#setup/electron-runtime').Runtime} runtime */
async function buildAndTestWindows(runtime) {
  await buildProgram();
  await packProgram(runtime);
  return withDisplay(runtimeEnvironment(runtime), (env) => runStep(windowTests, env));
}

await runProgram(async () => {
  const start = performance.now();
  const hasWindows = !process.argv.includes('--check');
  const runtime = await setUp({ needsDisplay: hasWindows });
  for (const file of Object.values(reports)) fs.rmSync(file, { force: true });

  // Two lanes, one for each core of a small machine.
  const [checked, unit] = await Promise.all([inTurn(checks), runStep(unitTests)]);
  const results = [...checked, unit];
  if (hasWindows) {
    results.push(
      await buildAndTestWindows(runtime).catch((/** @type {unknown} */ error) => {
        console.log(`\n${error instanceof Error ? error.message : String(error)}\n`);
        return { ...noTests, failed: 1 };
      }),
    );
  }

  const sum = (/** @type {keyof Counts} */ key) => results.reduce((total, counts) => total + counts[key], 0);
  console.log(`Done in ${secondsSince(start)}.`);
  console.log(`${sum('passed')} passed, ${sum('failed')} failed, ${sum('skipped')} skipped`);
  return sum('failed') === 0 ? 0 : 1;
});
