import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import configuration from '#root/.dependency-cruiser.mjs';

/** The files of a small made-up project: path and text. */
export type Files = Readonly<Record<string, string>>;

// Just enough of the packages to be found.
const packages: Files = Object.fromEntries(
  ['zod', 'electron', 'better-sqlite3', 'react'].flatMap((name) => [
    [`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'index.js' })],
    [`node_modules/${name}/index.js`, 'module.exports = {};'],
  ]),
);

const settings: Files = {
  'package.json': JSON.stringify({
    name: 'made-up',
    type: 'module',
    imports: { '#core/*': './shared-core/*.ts', '#main/*': './main/*.ts' },
    dependencies: { zod: '1', electron: '1', 'better-sqlite3': '1', react: '1' },
  }),
  'tsconfig.json': JSON.stringify({
    compilerOptions: { baseUrl: '.', paths: { '#renderer/*': ['./renderer/*'] } },
  }),
};

/** Writes these files to a folder of their own and answers with the names of the import rules that they break. */
export async function brokenRules(files: Files): Promise<readonly string[]> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'ringbound-layers-'));
  try {
    for (const [name, text] of Object.entries({ ...settings, ...packages, ...files })) {
      await mkdir(path.dirname(path.join(folder, name)), { recursive: true });
      await writeFile(path.join(folder, name), text);
    }
    const { options = {}, forbidden = [] } = configuration;
    // `tsConfig` is read here but missing from the published type.
    const resolving = { ...options.enhancedResolveOptions, tsConfig: path.join(folder, 'tsconfig.json') };
    const { output } = await cruise(
      Object.keys(files),
      { ...options, baseDir: folder, validate: true, ruleSet: { forbidden } },
      resolving,
      { tsConfig: { options: { baseUrl: folder } } },
    );
    const { violations } = (output as ICruiseResult).summary;
    return [...new Set(violations.map(({ rule }) => rule.name))].sort();
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
