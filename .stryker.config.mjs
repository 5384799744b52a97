// `npm run mutation` breaks the arithmetic of the core in every way it knows and reports what no test notices. One part of it:
// `npm run mutation -- --mutate 'shared-core/calculators/backing/*.ts'`. The report is out/mutation/index.html.

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
const config = {
  mutate: ['shared-core/{units,calculators}/**/*.ts'],
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'vitest.mutation.config.ts', related: true },
  coverageAnalysis: 'perTest',
  // Not mutated: words (labels, help and notes are read by people, codes by the compiler), and values made once when a module is
  // loaded (schemas and tables), for which every test would have to start anew; registry.test.ts and the charts prove those.
  mutator: { excludedMutations: ['StringLiteral'] },
  ignoreStatic: true,
  ignorePatterns: ['out', 'dist', '.cache', 'test-results', 'playwright-report'],
  concurrency: 2,
  timeoutMS: 20_000,
  tempDirName: '.cache/stryker',
  reporters: ['clear-text', 'progress', 'html', 'json'],
  htmlReporter: { fileName: 'out/mutation/index.html' },
  jsonReporter: { fileName: 'out/mutation/mutation.json' },
  clearTextReporter: { allowColor: false, logTests: false },
  thresholds: { high: 95, low: 90, break: 90 },
};

export default config;
