import { setUpDependencies } from './dependencies.mjs';
import { runProgram } from './report.mjs';
import { runTypeScript } from './typescript-program.mjs';

await runProgram(async () => {
  await setUpDependencies();
  return runTypeScript('main/command-line/calc.ts');
});
