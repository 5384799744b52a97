import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { aliases } from './vite.alias.js';

// Set to 20, every property is tried twenty times as often as it asks for, and each test may take as much longer.
const propertyTimes = process.env['PROPERTY_TIMES'];

// Two projects, so that only the renderer's tests pay for a document.
export default defineConfig({
  plugins: [react()],
  resolve: { alias: aliases },
  test: {
    // Generous for a busy machine: a test that hangs fails all the same.
    testTimeout: 60_000 * Number(propertyTimes ?? 1),
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
          exclude: ['test/renderer/**'],
          setupFiles: propertyTimes === undefined ? [] : ['test/helpers/more-runs.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'renderer',
          environment: 'jsdom',
          include: ['test/renderer/**/*.test.{ts,tsx}'],
          setupFiles: ['test/helpers/renderer-setup.ts'],
        },
      },
    ],
  },
});
