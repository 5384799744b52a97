// Breaks the arithmetic of one folder of the core in every way it knows and reports what no test of that folder notices.
// `npm run mutation` goes through all folders with it (main/setup/mutation.mjs), which names the folder here.
const part = process.env['MUTATION_PART'] ?? 'units';
const report = `out/mutation/${part.replace('/', '-')}`;

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
const config = {
  mutate: [part === 'calculators' ? 'shared-core/calculators/*.ts' : `shared-core/${part}/**/*.ts`],
  testRunner: 'in-process',
  plugins: ['./main/setup/mutation-runner.mjs'],
  coverageAnalysis: 'perTest',
  // Not mutated: words (labels, help and notes are read by people, codes by the compiler), and values made once when a module is
  // loaded (schemas and tables), for which every test would have to start anew; registry.test.ts and the charts prove those.
  mutator: { excludedMutations: ['StringLiteral'] },
  ignoreStatic: true,
  ignorePatterns: ['out', 'dist', '.cache', 'test-results', 'playwright-report'],
  concurrency: 2,
  // An endless loop is stopped by counting; this is only for one in code that is not mutated, and must outlast a busy machine.
  timeoutMS: 120_000,
  // A run that was broken off, or a test that was added, costs only what it changes.
  incremental: true,
  incrementalFile: `.cache/mutation/${part.replace('/', '-')}.json`,
  tempDirName: '.cache/stryker',
  reporters: ['html', 'json'],
  htmlReporter: { fileName: `${report}.html` },
  jsonReporter: { fileName: `${report}.json` },
};

export default config;
