import { buildProgram } from './build.mjs';
import { runInForeground } from './command.mjs';
import { hasDisplay } from './display.mjs';
import { runtimeEnvironment } from './electron-runtime.mjs';
import { root } from './paths.mjs';
import { runProgram } from './report.mjs';
import { setUp } from './setup.mjs';
import { takeTour } from './tour.mjs';

await runProgram(async () => {
  if (!hasDisplay()) {
    console.log('There is no display here to open a window on: taking the tour on a virtual one instead.');
    return takeTour();
  }
  const runtime = await setUp();
  await buildProgram();
  // Chromium refuses its sandbox to the administrator.
  const args = [...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), '.', ...process.argv.slice(2)];
  return runInForeground(runtime.executable, args, { cwd: root, env: runtimeEnvironment(runtime) });
});
