// knip finds the files, exports, types and packages that nobody uses. An export that only its own file uses is unused;
// one that only a test uses is not. What only tests use is listed by `npx knip --production`: the program starts at the
// entries that end in `!`.

/** @param {string} text */
const styleImports = (text) => [...text.matchAll(/(?<=@)import[^;]+/g)].join('\n');

/** @type {import('knip').KnipConfig} */
export default {
  entry: [
    'main/index.ts!',
    'main/preload/preload.ts!',
    'main/store/thread/worker.ts!',
    'main/command-line/calc.ts!',
    'main/icon/paint-icon.ts',
    // Loaded by their path: by the packager, the runtime, the mutation tool and a check of the addon.
    'main/setup/{after-pack,mutation-runner,mutation-tests,mutation-chance}.mjs',
    'main/setup/addon-smoke.cjs',
    'main/setup/default-app/main.mjs',
    'renderer/main.tsx!',
    // Loaded by their path from the list of screens.
    'renderer/features/**/*-page.tsx!',
    // Declares a type and is imported by nobody.
    'renderer/ui/base/css-variables.ts!',
    'renderer/**/*-worker.ts!',
    'test/{bench/bench,tour/tour}.ts',
    'test/types/*.types.ts',
    // Run in a process of their own.
    'test/helpers/{die-in-migration,more-runs}.ts',
    'test/e2e/*.cjs',
  ],
  project: [
    '{main,renderer,shared-core}/**/*.{ts,tsx,mjs,cjs,css}!',
    'test/**/*.{ts,tsx,mjs,cjs}',
    '!main/setup/**!',
  ],
  compilers: { css: styleImports },
  ignoreDependencies: [
    // Run by their path in node_modules.
    '@stryker-mutator/core',
    'electron-builder',
    'oxlint',
    'oxlint-tsgolint',
    'prettier',
    'typescript-native',
  ],
  // Its runner is a file of ours, not a package.
  stryker: false,
  ignoreBinaries: ['Xvfb', 'unshare'],
};
