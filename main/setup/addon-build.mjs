import fs from 'node:fs';
import path from 'node:path';
import { lastLines, run } from './command.mjs';
import { inCache } from './paths.mjs';
import { SetupProblem } from './report.mjs';
import { setUpCompiler } from './system-libraries.mjs';

// Level 1 halves the compile time of SQLite's one large file and costs a few percent of its speed.
const common = ['-c', '-O1', '-fPIC', '-w', '-DNDEBUG'];
const addonDefines = [
  '-DNAPI_EXPERIMENTAL',
  '-DNAPI_VERSION=2147483647',
  '-DNAPI_DISABLE_CPP_EXCEPTIONS',
  '-DNODE_API_SWALLOW_UNTHROWABLE_EXCEPTIONS',
  '-DBUILDING_NODE_EXTENSION',
];

/**
 * The compiler switches for the `defines` list of a .gypi file.
 *
 * @param {string} gypi
 */
export const definesOf = (gypi) =>
  [...gypi.matchAll(/^\s*'([A-Z][A-Z0-9_]*(?:=[^']*)?)',?\s*$/gm)].map(([, define]) => `-D${define}`);

function nodeHeaders() {
  const places = [path.resolve(process.execPath, '../../include/node'), '/usr/include/node'];
  const found = places.find((place) => fs.existsSync(path.join(place, 'node_api.h')));
  if (found !== undefined) return found;
  throw new SetupProblem(
    'The SQLite addon must be built here, and the header files of Node are missing.',
    'install Node with its headers, or use Node 22.14 or newer, then npm run setup',
  );
}

/**
 * @param {string} command
 * @param {readonly string[]} args
 * @param {string} cwd
 */
async function compile(command, args, cwd) {
  const { code, output } = await run(command, args, { cwd });
  if (code !== 0) throw new SetupProblem(`${command} failed:\n${lastLines(output)}`, 'npm run setup');
}

/**
 * Compiles better-sqlite3 from its own sources, without node-gyp, which would fetch headers and take three times as
 * long.
 *
 * @param {string} packageFolder
 * @param {string} target
 */
export async function buildAddon(packageFolder, target) {
  if (process.platform !== 'linux') {
    throw new SetupProblem(
      `The prebuilt SQLite addon does not work in Node ${process.version}.`,
      'use Node 22.14 or newer, then npm run setup',
    );
  }
  await setUpCompiler();
  const headers = nodeHeaders();
  const defines = definesOf(fs.readFileSync(path.join(packageFolder, 'deps/defines.gypi'), 'utf8'));
  const work = fs.mkdtempSync(inCache('build-'));
  const [sqlite, addon, linked] = ['s.o', 'b.o', 'linked.node'].map((name) => path.join(work, name));
  const includes = ['-I', headers, '-I', '../node-addon-api', '-I', 'deps/sqlite3'];
  try {
    await Promise.all([
      compile(
        'cc',
        [...common, ...defines, '-Ideps/sqlite3', 'deps/sqlite3/sqlite3.c', '-o', `${sqlite}`],
        packageFolder,
      ),
      compile(
        'c++',
        [
          ...common,
          ...['-std=c++20', '-fno-exceptions', '-fvisibility=hidden'],
          ...addonDefines,
          ...includes,
          ...['src/better_sqlite3.cpp', '-o', `${addon}`],
        ],
        packageFolder,
      ),
    ]);
    const link = [
      '-shared',
      '-Wl,-Bsymbolic',
      '-Wl,--exclude-libs,ALL',
      '-o',
      `${linked}`,
      `${addon}`,
      `${sqlite}`,
    ];
    await compile('c++', [...link, '-ldl', '-lm', '-lpthread'], packageFolder);
    fs.copyFileSync(`${linked}`, target);
  } finally {
    fs.rmSync(work, { recursive: true, force: true });
  }
}
