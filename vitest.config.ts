import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { aliases } from './vite.alias.js';

// With PROPERTY_TIMES=20 every property is tried twenty times as often, and each test may take twenty times as long.
const propertyTimes = process.env['PROPERTY_TIMES'];

// Two projects, so that only tests that draw pay for a document: in test/renderer those are the .tsx files.
export default defineConfig({
  plugins: [react()],
  resolve: { alias: aliases },
  test: {
    // Long, for a busy machine: a test that hangs still fails.
    testTimeout: 60_000 * Number(propertyTimes ?? 1),
    // All cores: by default vitest leaves one of them out, and would use one of two.
    maxWorkers: '100%',
    coverage: { reportsDirectory: '.cache/coverage' },
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          // Files share what their worker has loaded: loading it again for each file takes another 60 % of the time, and it is
          // safe because no module of ours keeps state.
          isolate: false,
          include: ['test/**/*.test.ts'],
          setupFiles: propertyTimes === undefined ? [] : ['test/helpers/more-runs.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'renderer',
          environment: 'jsdom',
          include: ['test/renderer/**/*.test.tsx'],
          setupFiles: ['test/helpers/renderer-setup.ts'],
        },
      },
    ],
  },
});
