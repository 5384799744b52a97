import { buildProgram } from './build.mjs';
import { withDisplay } from './display.mjs';
import { runtimeEnvironment } from './electron-runtime.mjs';
import { runProgram } from './report.mjs';
import { setUp } from './setup.mjs';
import { runTypeScript } from './typescript-program.mjs';

/** Sets up, builds and drives the program through its tour, on a virtual display where one can be had. */
export async function takeTour() {
  const runtime = await setUp({ needsDisplay: true });
  await buildProgram();
  return withDisplay(runtimeEnvironment(runtime), (env) => runTypeScript('test/tour/tour.ts', env));
}

if (process.argv[1] === import.meta.filename) await runProgram(takeTour);
