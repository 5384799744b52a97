import { defineConfig } from 'vitest/config';
import { aliases } from './vite.alias.js';

/** The tests of the core alone: a mutant is judged by them, and no document or window is started for it. */
export default defineConfig({
  resolve: { alias: aliases },
  test: {
    environment: 'node',
    setupFiles: ['test/helpers/fixed-seed.ts'],
    include: ['test/shared-core/{units,calculators,geometry}/**/*.test.ts'],
  },
});
