import { runtimeEnvironment } from './electron-runtime.mjs';
import { runProgram } from './report.mjs';
import { setUp } from './setup.mjs';
import { buildProgram } from './build.mjs';
import { runTypeScript } from './typescript-program.mjs';
import { withDisplay } from './display.mjs';

await runProgram(async () => {
  const runtime = await setUp({ needsDisplay: true });
  await buildProgram();
  return withDisplay(runtimeEnvironment(runtime), (env) => runTypeScript('test/bench/bench.ts', env));
});
