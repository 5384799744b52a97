import { ESLint } from 'eslint';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '#test/helpers/project-root';

const overrideConfig = { rules: { '@typescript-eslint/no-unused-vars': 'off' } } as const;
const eslint = new ESLint({ cwd: projectRoot, overrideConfig });

/** The rules that a text breaks when it stands at this path. */
async function brokenRules(filePath: string, text: string): Promise<readonly (string | null)[]> {
  const [result] = await eslint.lintText(text, { filePath });
  return (result?.messages ?? []).map(({ ruleId, message }) => ruleId ?? message);
}

const lines = (count: number): string => 'export const one = 1;\n' + '// line\n'.repeat(count - 1);

describe('the house bans', () => {
  test.for([
    [
      'a bare rounding in a calculator',
      'shared-core/calculators/a.ts',
      'export const a = Math.round(1.5);',
      'no-restricted-properties',
    ],
    [
      'a bare rounding up in a calculator',
      'shared-core/calculators/b/a.ts',
      'export const a = Math.ceil(1.5);',
      'no-restricted-properties',
    ],
    [
      'a bare rounding down in a calculator',
      'shared-core/calculators/a.ts',
      'export const a = Math.floor(1.5);',
      'no-restricted-properties',
    ],
    [
      'chance in the core',
      'shared-core/units/a.ts',
      'export const a = Math.random();',
      'no-restricted-properties',
    ],
    [
      'the clock in the core',
      'shared-core/units/a.ts',
      'export const a = new Date();',
      'no-restricted-globals',
    ],
    [
      'state in the core',
      'shared-core/units/a.ts',
      'let a = 1;\nexport const next = () => (a += 1);',
      'no-restricted-syntax',
    ],
    [
      'exported state in the core',
      'shared-core/units/a.ts',
      'export let a = 1;\na = 2;',
      'no-restricted-syntax',
    ],
    ['a default export', 'renderer/ui/a.ts', 'export default 1;', 'no-restricted-syntax'],
    ['a barrel', 'renderer/ui/a.ts', "export * from './b';", 'no-restricted-syntax'],
    [
      'markup from text',
      'renderer/ui/a.tsx',
      "export const A = () => <p dangerouslySetInnerHTML={{ __html: '' }} />;",
      'no-restricted-syntax',
    ],
    [
      'listening to the page outside its door',
      'main/menu.ts',
      "import { ipcMain } from 'electron';\nipcMain.removeAllListeners();",
      'no-restricted-imports',
    ],
    [
      'listening to the page in the preload script',
      'main/preload/a.ts',
      "import { ipcMain } from 'electron';\nipcMain.removeAllListeners();",
      'no-restricted-imports',
    ],
    [
      'speaking to the main process outside the preload script',
      'main/ipc/a.ts',
      "import { ipcRenderer } from 'electron';\nipcRenderer.send('x');",
      'no-restricted-imports',
    ],
    [
      'climbing two folders',
      'main/store/stash/a.ts',
      "import { a } from '../../window';\nexport const b = a;",
      'no-restricted-imports',
    ],
    [
      'reading the preload API outside the bridge',
      'renderer/ui/a.ts',
      'export const a = window.ringbound;',
      'no-restricted-properties',
    ],
    [
      'a hook under a condition',
      'renderer/ui/a.tsx',
      "import { useState } from 'react';\nexport function A({ b }: { b: boolean }) {\n  if (b) useState(1);\n  return null;\n}",
      'react-hooks/rules-of-hooks',
    ],
    ['a long file', 'main/a.ts', lines(301), 'max-lines'],
    ['a long test', 'test/main/a.test.ts', lines(401), 'max-lines'],
  ] as const)('refuse %s', async ([, path, text, rule]) => {
    expect(await brokenRules(path, text)).toContain(rule);
  });

  test.for([
    ['rounding outside the calculators', 'shared-core/units/a.ts', 'export const a = Math.round(1.5);'],
    [
      'a local variable in the core',
      'shared-core/units/a.ts',
      'export function a() {\n  let b = 1;\n  b += 1;\n  return b;\n}',
    ],
    [
      'listening to the page at its door',
      'main/ipc/a.ts',
      "import { ipcMain } from 'electron';\nipcMain.removeAllListeners();",
    ],
    [
      'speaking to the main process in the preload script',
      'main/preload/a.ts',
      "import { ipcRenderer } from 'electron';\nipcRenderer.send('x');",
    ],
    ['climbing one folder', 'main/store/a.ts', "import { a } from '../window';\nexport const b = a;"],
    ['reading the preload API in the bridge', 'renderer/bridge/a.ts', 'export const a = window.ringbound;'],
    ['a file of three hundred lines', 'main/a.ts', lines(300)],
    ['a test of four hundred lines', 'test/main/a.test.ts', lines(400)],
  ] as const)('let pass %s', async ([, path, text]) => {
    expect(await brokenRules(path, text)).toEqual([]);
  });
});
