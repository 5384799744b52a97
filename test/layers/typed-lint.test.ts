import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import tseslint from 'typescript-eslint';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '#test/helpers/project-root';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';

const PREFIX = 'typescript/';

function oxlint(...args: readonly string[]): string {
  const program = path.join(projectRoot, 'node_modules/oxlint/bin/oxlint');
  const config = path.join(projectRoot, '.oxlintrc.json');
  return spawnSync(process.execPath, [program, '--config', config, ...args], {
    cwd: projectRoot,
    encoding: 'utf8',
  }).stdout;
}

interface Diagnostic {
  readonly code?: string;
  readonly message: string;
  readonly filename: string;
}

/** What each of these files breaks, in a small strict project of their own; what has no rule's name is its message. */
const brokenRules = (files: Readonly<Record<string, string>>): Promise<Readonly<Record<string, string[]>>> =>
  withTemporaryFolder(async (folder) => {
    const compilerOptions = { strict: true, noEmit: true, allowJs: true, checkJs: true, target: 'ES2023' };
    await writeFile(path.join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions }));
    for (const [name, text] of Object.entries(files)) await writeFile(path.join(folder, name), text);
    const { diagnostics } = JSON.parse(oxlint('--format', 'json', folder)) as { diagnostics: Diagnostic[] };
    const broken: Record<string, string[]> = Object.fromEntries(Object.keys(files).map((name) => [name, []]));
    for (const { code = '', message, filename } of diagnostics)
      broken[path.basename(filename)]?.push(/\(([\w-]+)\)/.exec(code)?.[1] ?? message);
    return broken;
  });

describe('the rules that need types', () => {
  test('are all of the strict and the stylistic set, and two more', () => {
    const sets = [...tseslint.configs.strictTypeCheckedOnly, ...tseslint.configs.stylisticTypeCheckedOnly];
    const inSets = sets
      .flatMap(({ rules = {} }) => Object.entries(rules))
      .filter(([name, setting]) => name.includes('/') && setting !== 'off')
      .map(([name]) => name.replace('@typescript-eslint/', PREFIX));
    // This one has no counterpart yet.
    const missing = [`${PREFIX}no-unsafe-class-instance-assignment`];
    const more = [`${PREFIX}consistent-type-exports`, `${PREFIX}switch-exhaustiveness-check`];
    const { rules } = JSON.parse(oxlint('--print-config')) as { rules: Readonly<Record<string, unknown>> };
    const denied = Object.entries(rules).filter(([, setting]) => [setting].flat()[0] === 'deny');
    const expected = [...new Set(inSets), ...more].filter((name) => !missing.includes(name));
    expect(denied.map(([name]) => name).sort()).toEqual(expected.sort());
  });

  test('refuse what breaks them', async () => {
    const cases: Readonly<Record<string, readonly [text: string, rule: string]>> = {
      'promise-left-alone.ts': ['Promise.resolve(1);', 'no-floating-promises'],
      'promise-handed-on.ts': [
        '[1].forEach(async () => { await Promise.resolve(1); });',
        'no-misused-promises',
      ],
      'nothing-to-wait-for.ts': ['export const a = async () => { await 1; };', 'await-thenable'],
      'always-true.ts': ['export const a = (b: string[]) => (b ? 1 : 2);', 'no-unnecessary-condition'],
      'any-let-in.ts': ['export const a: string = JSON.parse("1");', 'no-unsafe-assignment'],
      'any-called.ts': ['export const a = (b: any) => { b(); };', 'no-unsafe-call'],
      'object-as-text.ts': ['export const a = String({});', 'no-base-to-string'],
      'object-in-text.ts': ['export const a = (b: string[]) => `${b}`;', 'restrict-template-expressions'],
      'number-added-to-text.ts': ['export const a = (b: number) => "a" + b;', 'restrict-plus-operands'],
      'forgotten-case.ts': [
        'export function a(b: 1 | 2) { switch (b) { case 1: return; } }',
        'switch-exhaustiveness-check',
      ],
      'nothing-as-value.ts': [
        'export const a = (b: () => void) => { const c = b(); return c; };',
        'no-confusing-void-expression',
      ],
      'deprecated.ts': ['export const a = escape("a");', 'no-deprecated'],
      'idle-comment.ts': [
        '// oxlint-disable-next-line typescript/no-deprecated\nexport const a = 1;',
        'Unused oxlint-disable directive (no problems were reported).',
      ],
      'script.mjs': ['Promise.resolve(1);', 'no-floating-promises'],
    };
    const texts = Object.fromEntries(Object.entries(cases).map(([name, [text]]) => [name, text]));
    const rules = Object.fromEntries(Object.entries(cases).map(([name, [, rule]]) => [name, [rule]]));
    expect(await brokenRules(texts)).toEqual(rules);
  });

  test('let pass a number in a text, an arrow that hands on nothing, and a JSDoc cast in a script', async () => {
    const files = {
      'text.ts': 'export const a = (b: number) => `${b}`;',
      'arrow.ts': 'export const a = (b: () => void) => b();',
      'script.mjs': '/** @type {string} */\nexport const a = JSON.parse("1");',
    };
    expect(await brokenRules(files)).toEqual({ 'text.ts': [], 'arrow.ts': [], 'script.mjs': [] });
  });
});
