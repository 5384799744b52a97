import { spawn, spawnSync } from 'node:child_process';

/** @typedef {{ cwd?: string, env?: NodeJS.ProcessEnv, timeoutMs?: number }} CommandOptions */

/**
 * Runs a program to its end and keeps what it printed; `code` is null when it was stopped or never started.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {CommandOptions} [options]
 * @returns {Promise<{ code: number | null, output: string }>}
 */
export function run(command, args, { cwd, env, timeoutMs } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd, env, timeout: timeoutMs, stdio: ['ignore', 'pipe', 'pipe'] });
    /** @type {Buffer[]} */
    const chunks = [];
    child.stdout.on('data', (/** @type {Buffer} */ chunk) => chunks.push(chunk));
    child.stderr.on('data', (/** @type {Buffer} */ chunk) => chunks.push(chunk));
    const end = (/** @type {number | null} */ code, note = '') =>
      resolve({ code, output: Buffer.concat(chunks).toString('utf8') + note });
    child.on('error', (error) => end(null, error.message));
    child.on('close', (code) => end(code));
  });
}

/**
 * Runs a program in the foreground, with the terminal's own input and output, and gives its exit code.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {CommandOptions} [options]
 * @returns {Promise<number>}
 */
export function runInForeground(command, args, { cwd, env } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd, env, stdio: 'inherit' });
    child.on('error', reject);
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/**
 * Whether a program is on the search path.
 *
 * @param {string} name
 */
export const isOnPath = (name) =>
  spawnSync(process.platform === 'win32' ? 'where' : 'which', [name], { stdio: 'ignore' }).status === 0;

/**
 * The program and first arguments that run npm: npm's own file when npm started us, so that no shell is needed.
 *
 * @returns {{ command: string, args: string[] }}
 */
function npmCommand() {
  const file = process.env['npm_execpath'];
  if (file?.endsWith('.js')) return { command: process.execPath, args: [file] };
  return process.platform === 'win32'
    ? { command: 'cmd.exe', args: ['/d', '/s', '/c', 'npm'] }
    : { command: 'npm', args: [] };
}

/**
 * Runs npm to its end.
 *
 * @param {readonly string[]} args
 * @param {CommandOptions} [options]
 */
export function npm(args, options) {
  const { command, args: first } = npmCommand();
  return run(command, [...first, ...args], options);
}

/**
 * The last lines of a program's output, for an error message.
 *
 * @param {string} output
 */
export const lastLines = (output, count = 12) => output.trim().split('\n').slice(-count).join('\n');
