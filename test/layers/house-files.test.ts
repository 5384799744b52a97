import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '#test/helpers/project-root';
import { sourceFiles } from './source-files';

const lineLimit = (file: string): number => (file.startsWith('test/') ? 400 : 300);
const isCode = (file: string): boolean => /\.(tsx?|mjs|cjs|css)$/.test(file);

describe('the files of the house', () => {
  test('have names in kebab-case', async () => {
    const named = /^(README\.md|[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*)$/;
    const odd = (await sourceFiles()).filter((file) => !file.split('/').every((part) => named.test(part)));
    expect(odd).toEqual([]);
  });

  test('are never longer than the limit, style sheets and scripts included', async () => {
    const files = (await sourceFiles()).filter(isCode);
    const counted = await Promise.all(
      files.map(async (file) => {
        const text = await readFile(path.join(projectRoot, file), 'utf8');
        return { file, lines: text.split('\n').length - 1 };
      }),
    );
    expect(counted.length).toBeGreaterThan(0);
    const long = counted.filter(({ file, lines }) => lines > lineLimit(file));
    expect(long.map(({ file, lines }) => `${file}: ${lines} lines`)).toEqual([]);
  });

  test('stand in four folders, and the top level holds no others', async () => {
    const kept = new Set(['main', 'renderer', 'shared-core', 'test', '.git', '.ci']);
    const made = new Set([
      'node_modules',
      '.cache',
      'dist',
      'out',
      'test-results',
      '.stryker-tmp',
      'reports',
    ]);
    const top = await readdir(projectRoot, { withFileTypes: true });
    const odd = top.filter((entry) => entry.isDirectory() && !kept.has(entry.name) && !made.has(entry.name));
    expect(odd.map(({ name }) => name)).toEqual([]);
  });
});

describe('the lock file', () => {
  test('pins what every package is, and names no address where one was found', async () => {
    const text = await readFile(path.join(projectRoot, 'package-lock.json'), 'utf8');
    const { packages } = JSON.parse(text) as {
      packages: Readonly<Record<string, { resolved?: string; integrity?: string }>>;
    };
    const named = Object.entries(packages).filter(([place]) => place !== '');
    expect(named.length).toBeGreaterThan(100);
    expect(named.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
    expect(named.filter(([, { integrity }]) => integrity?.startsWith('sha512-') !== true)).toEqual([]);
    expect(text).not.toMatch(/\.tgz/);
  });
});
