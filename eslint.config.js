import js from '@eslint/js';
import reactHooks from 'eslint-plugin-react-hooks';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import tseslint from 'typescript-eslint';

const source = ['**/*.{ts,tsx,mjs,js}'];
const configuration = ['*.config.{ts,js}', '.*.mjs'];

const houseSyntax = [
  { selector: 'ExportDefaultDeclaration', message: 'Export by name: a name is found by searching for it.' },
  { selector: 'ExportAllDeclaration', message: 'No barrels: import from the file that says it.' },
  {
    selector: 'JSXAttribute[name.name="dangerouslySetInnerHTML"]',
    message: 'Build elements, not HTML text: the page takes no markup from data.',
  },
];

const pureSyntax = ['Program', 'Program > ExportNamedDeclaration'].map((place) => ({
  selector: `${place} > VariableDeclaration[kind=/let|var/]`,
  message: 'shared-core keeps no state between calls: pass it in and hand it back.',
}));

const ipcEnds = {
  main: {
    name: 'electron',
    importNames: ['ipcMain'],
    message: 'Only main/ipc listens to the page: it checks sender and input for every call.',
  },
  preload: {
    name: 'electron',
    importNames: ['ipcRenderer'],
    message: 'Only main/preload speaks to the main process: the page goes through the contract.',
  },
};

/**
 * @param {readonly { name: string, importNames: string[], message: string }[]} paths
 * @returns {import('eslint').Linter.RuleEntry}
 */
const restrictedImports = (paths) => [
  'error',
  {
    paths: [...paths],
    patterns: [
      {
        regex: String.raw`^(\.\./){2,}`,
        message: 'Climb one level at most: use #core, #main, #renderer or #test.',
      },
    ],
  },
];

/** @param {string[]} names */
const bannedMath = (names) =>
  names.map((property) => ({
    object: 'Math',
    property,
    message:
      property === 'random'
        ? 'Chance arrives as an argument: the same input must give the same answer.'
        : 'A rounding has a name and a direction: use shared-core/units/rounding.',
  }));

export default defineConfig(
  globalIgnores([
    'node_modules',
    '.cache',
    'dist',
    'out',
    'test-results',
    'playwright-report',
    '.stryker-tmp',
    'reports',
  ]),
  {
    files: source,
    extends: [js.configs.recommended, tseslint.configs.strict, tseslint.configs.stylistic],
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'max-lines': ['error', { max: 300 }],
      'no-console': 'error',
      'no-eval': 'error',
      'no-param-reassign': 'error',
      'no-restricted-syntax': ['error', ...houseSyntax],
      'no-restricted-imports': restrictedImports([ipcEnds.main, ipcEnds.preload]),
      'object-shorthand': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'separate-type-imports' }],
      '@typescript-eslint/consistent-type-definitions': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['shared-core/**'],
    rules: {
      'no-restricted-globals': [
        'error',
        { name: 'Date', message: 'The time arrives as an argument: shared-core has no clock.' },
      ],
      'no-restricted-properties': ['error', ...bannedMath(['random'])],
      'no-restricted-syntax': ['error', ...houseSyntax, ...pureSyntax],
    },
  },
  {
    files: ['shared-core/calculators/**'],
    rules: {
      'no-restricted-properties': ['error', ...bannedMath(['random', 'round', 'ceil', 'floor', 'trunc'])],
    },
  },
  {
    // The planners' inner loops run over typed arrays, which never hold undefined inside their length.
    files: ['shared-core/cutting/**', 'shared-core/planner/**'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: ['main/ipc/**'],
    rules: { 'no-restricted-imports': restrictedImports([ipcEnds.preload]) },
  },
  {
    files: ['main/preload/**'],
    rules: { 'no-restricted-imports': restrictedImports([ipcEnds.main]) },
  },
  {
    files: ['renderer/**', 'test/renderer/**'],
    extends: [reactHooks.configs.flat.recommended],
  },
  {
    files: ['renderer/**'],
    ignores: ['renderer/bridge/**'],
    rules: {
      'no-restricted-properties': [
        'error',
        { property: 'ringbound', message: 'Only renderer/bridge reads what the preload script hands over.' },
      ],
    },
  },
  {
    files: ['main/setup/**', 'main/command-line/**', 'test/run.mjs', 'test/bench/**', 'test/tour/**'],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['**/*.{mjs,js}'],
    languageOptions: { globals: globals.node },
  },
  {
    files: ['test/**'],
    rules: { 'max-lines': ['error', { max: 400 }], '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: configuration,
    rules: { 'no-restricted-syntax': 'off' },
  },
);
