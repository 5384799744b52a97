import react from '@vitejs/plugin-react';
import { aliases } from '#root/vite.alias.js';
import { inRoot } from './paths.mjs';

/**
 * The three parts of the program. Each is built from its folders into its own place under dist.
 *
 * @typedef {'main' | 'preload' | 'renderer'} Part
 */

const external = [/^node:/, 'electron', 'better-sqlite3'];

// How long a plug-in took says more about the machine than about the program.
const checks = { bundlerTimings: false };

/** @type {import('vite').InlineConfig} */
const shared = { root: inRoot(), configFile: false, logLevel: 'warn', resolve: { alias: aliases } };

/**
 * @param {Record<string, string>} input
 * @param {import('vite').Rolldown.OutputOptions} output
 * @param {string} outDir
 * @returns {import('vite').InlineConfig}
 */
const nodeConfig = (input, output, outDir) => ({
  ...shared,
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir,
    emptyOutDir: true,
    sourcemap: true,
    minify: false,
    rolldownOptions: { input, external, output, checks },
  },
});

/**
 * How to build one part into a folder. `dist/main` is flat, so that the worker is in the same folder as the file that starts it; a
 * sandboxed preload must be one CommonJS file.
 *
 * @type {Record<Part, (outDir: string) => import('vite').InlineConfig>}
 */
export const configs = {
  main: (outDir) =>
    nodeConfig(
      { index: inRoot('main/index.ts'), worker: inRoot('main/store/thread/worker.ts') },
      { format: 'es', entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
      outDir,
    ),
  preload: (outDir) =>
    nodeConfig(
      { preload: inRoot('main/preload/preload.ts') },
      { format: 'cjs', entryFileNames: '[name].cjs', codeSplitting: false },
      outDir,
    ),
  renderer: (outDir) => ({
    ...shared,
    root: inRoot('renderer'),
    base: './',
    plugins: [react()],
    worker: { format: 'es' },
    build: {
      // The oldest Chromium among the runtimes in use.
      target: 'chrome130',
      outDir,
      emptyOutDir: true,
      sourcemap: true,
      // The content security policy allows fonts and scripts from files only.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      rolldownOptions: { checks },
    },
  }),
};
