import { defineConfig } from 'vitest/config';
import { aliases } from './vite.alias.js';

const part = process.env['MUTATION_PART'] ?? 'units';

const folder = `test/shared-core/${part}`;
const ofEveryCalculator = ['registry', 'written-answers', 'working', 'drawings'].map(
  (name) => `test/shared-core/calculators/${name}.test.ts`,
);

/** A mutant is judged by the tests of its own folder and by those of every calculator; no document or window is started for it. */
export default defineConfig({
  resolve: { alias: aliases },
  test: {
    environment: 'node',
    setupFiles: ['test/helpers/fixed-seed.ts'],
    include:
      part === 'calculators'
        ? [`${folder}/*.test.ts`]
        : [`${folder}/**/*.test.ts`, ...(part === 'units' ? [] : ofEveryCalculator)],
    // A thread cannot change its time zone.
    exclude: ['**/*.zones.test.ts'],
    // Instrumented code is slower; a mutant that never ends is stopped by the mutation runner's own clock.
    testTimeout: 60_000,
  },
});
