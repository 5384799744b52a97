import { setUpDependencies } from './dependencies.mjs';
import { setUpRuntime } from './electron-runtime.mjs';
import { runProgram } from './report.mjs';
import { setUpSqliteAddon } from './sqlite-addon.mjs';
import { setUpSystemLibraries } from './system-libraries.mjs';

/**
 * Provides whatever this machine lacks to build and run the program, and gives the Electron runtime to use. If
 * nothing is missing, it takes a moment and prints nothing.
 *
 * @param {{ needsDisplay?: boolean }} [needs] whether a virtual display will be started, as tests and tours do
 */
export async function setUp({ needsDisplay = false } = {}) {
  await setUpDependencies();
  const runtime = await setUpRuntime();
  await setUpSystemLibraries({ executable: runtime.executable, needsDisplay });
  await setUpSqliteAddon(runtime);
  return runtime;
}

if (process.argv[1] === import.meta.filename) {
  await runProgram(async () => {
    const runtime = await setUp({ needsDisplay: true });
    console.log(`Ready: Electron ${runtime.version} (${runtime.origin}), Node ${process.version}.`);
    return 0;
  });
}
