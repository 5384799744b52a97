// Runs our tests for the mutation tool: they are loaded once, together, and then run again for each mutant in one process.
// Starting the test tool for each of thousands of mutants would take a hundred times as long.
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  determineHitLimitReached,
  DryRunStatus,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { build } from 'vite';
import { aliases } from '#root/vite.alias.js';

/** @typedef {import('@stryker-mutator/api/test-runner').TestResult} TestResult */
/** @typedef {import('./mutation-tests.mjs').CollectedTest} CollectedTest */

/** @typedef {import('@stryker-mutator/api/core').InstrumenterContext} Switchboard */

/** What the mutated code reads and writes: which mutant is meant, and what it has come past. */
const switchboard = switchboardOf(globalThis);

/**
 * @param {object} world
 * @returns {Switchboard}
 */
function switchboardOf(world) {
  /** @type {Switchboard} */
  const fresh = {};
  Object.defineProperty(world, INSTRUMENTER_CONSTANTS.NAMESPACE, { value: fresh });
  return fresh;
}

/** These hold for every calculator, so they judge each of them. */
const OF_EVERY_CALCULATOR = ['registry', 'written-answers', 'working', 'drawings', 'one-value'];

class InProcessRunner {
  /** Takes nothing of the mutation tool. @type {[]} */
  static inject = [];
  /** @type {readonly CollectedTest[]} */
  tests = [];
  /** Milliseconds of each test, so that the quick ones are asked first. @type {Map<string, number>} */
  times = new Map();

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init() {
    this.tests = await loadTests(testFilesOf(process.env['MUTATION_PART'] ?? 'units'));
  }

  /** @returns {Promise<import('@stryker-mutator/api/test-runner').CompleteDryRunResult>} */
  async dryRun() {
    delete switchboard.activeMutant;
    /** @type {TestResult[]} */
    const results = [];
    for (const test of this.tests) {
      switchboard.currentTestId = test.id;
      results.push(await resultOf(test));
      delete switchboard.currentTestId;
    }
    results.forEach(({ id, timeSpentMs }) => this.times.set(id, timeSpentMs));
    return {
      status: DryRunStatus.Complete,
      tests: results,
      mutantCoverage: switchboard.mutantCoverage ?? { static: {}, perTest: {} },
    };
  }

  /** @param {import('@stryker-mutator/api/test-runner').MutantRunOptions} options */
  async mutantRun({ activeMutant, hitLimit, testFilter, disableBail }) {
    Object.assign(switchboard, { activeMutant: activeMutant.id, hitLimit, hitCount: 0 });
    const asked = new Set(testFilter ?? this.tests.map(({ id }) => id));
    const time = (/** @type {CollectedTest} */ { id }) => this.times.get(id) ?? 0;
    /** @type {TestResult[]} */
    const results = [];
    for (const test of this.tests.filter(({ id }) => asked.has(id)).sort((a, b) => time(a) - time(b))) {
      const result = await resultOf(test);
      results.push(result);
      if (result.status === TestStatus.Failed && !disableBail) break;
    }
    const tooOften = determineHitLimitReached(switchboard.hitCount, hitLimit);
    delete switchboard.activeMutant;
    return toMutantRunResult(tooOften ?? { status: DryRunStatus.Complete, tests: results });
  }
}

/**
 * @param {CollectedTest} test
 * @returns {Promise<TestResult>}
 */
async function resultOf({ id, name, file, body }) {
  const start = performance.now();
  const common = () => ({ id, name, fileName: path.resolve(file), timeSpentMs: performance.now() - start });
  try {
    await body();
    return { ...common(), status: TestStatus.Success };
  } catch (error) {
    return { ...common(), status: TestStatus.Failed, failureMessage: String(error) };
  }
}

/**
 * A folder's own tests; for a calculator also the tests that every calculator must pass.
 *
 * @param {string} part
 */
function testFilesOf(part) {
  const folder = `test/shared-core/${part}`;
  const isDeep = part !== 'calculators';
  const own = readdirSync(folder, { recursive: isDeep, encoding: 'utf8' })
    .filter((name) => name.endsWith('.test.ts') && !name.endsWith('.zones.test.ts'))
    .map((name) => `${folder}/${name.replaceAll(path.sep, '/')}`);
  if (!part.startsWith('calculators/')) return own;
  return [...own, ...OF_EVERY_CALCULATOR.map((name) => `test/shared-core/calculators/${name}.test.ts`)];
}

/** @param {readonly string[]} files */
async function loadTests(files) {
  const standIns = new Map([
    ['vitest', path.resolve('main/setup/mutation-tests.mjs')],
    ['fast-check', path.resolve('main/setup/mutation-chance.mjs')],
  ]);
  const lines = files.map((file) => `await collectFrom('${file}', () => import('/${file}'));`);
  const entry = [
    `import { collectFrom } from 'vitest';`,
    ...lines,
    `export { collected } from 'vitest';`,
  ].join('\n');
  const outDir = path.resolve('.mutation-tests', String(process.pid));
  await build({
    root: process.cwd(),
    configFile: false,
    logLevel: 'error',
    resolve: { alias: aliases },
    plugins: [
      {
        name: 'tests-in-process',
        enforce: 'pre',
        resolveId: (id, importer) => {
          if (id === 'virtual:entry') return id;
          const standIn = standIns.get(id);
          return standIn === importer ? null : standIn;
        },
        load: (id) => (id === 'virtual:entry' ? entry : null),
      },
    ],
    build: {
      ssr: true,
      outDir,
      target: 'esnext',
      minify: false,
      rolldownOptions: {
        input: { tests: 'virtual:entry' },
        treeshake: false,
        output: { entryFileNames: 'tests.mjs' },
      },
    },
  });
  /** @type {{ collected: readonly CollectedTest[] }} */
  const { collected } = await import(pathToFileURL(path.join(outDir, 'tests.mjs')).href);
  return collected;
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'in-process', InProcessRunner)];
