import { runInForeground } from './command.mjs';
import { root } from './paths.mjs';

/**
 * Runs a TypeScript file of the project in the foreground and gives its exit code.
 *
 * @param {string} file
 * @param {NodeJS.ProcessEnv} [env]
 */
export const runTypeScript = (file, env = process.env) =>
  runInForeground(process.execPath, ['--import', 'tsx', file, ...process.argv.slice(2)], { cwd: root, env });
