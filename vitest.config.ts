import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { aliases } from './vite.alias.js';

// Set to 20, every property is tried twenty times as often as it asks for, and each test may take as much longer.
const propertyTimes = process.env['PROPERTY_TIMES'];

// Two projects, so that only tests that draw pay for a document: in test/renderer those are the .tsx files.
export default defineConfig({
  plugins: [react()],
  resolve: { alias: aliases },
  test: {
    // Generous for a busy machine: a test that hangs fails all the same.
    testTimeout: 60_000 * Number(propertyTimes ?? 1),
    // All cores. By its own count vitest would use one of two.
    maxWorkers: '100%',
    coverage: { reportsDirectory: '.cache/coverage' },
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          // What one file loads the next uses again: loading took longer than testing.
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
