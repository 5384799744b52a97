import { spawn } from 'node:child_process';
import { isOnPath } from './command.mjs';
import { SetupProblem } from './report.mjs';

const startLimitMs = 15_000;

/** Whether this session has a screen to open a window on. */
export const hasDisplay = () =>
  process.platform !== 'linux' || Boolean(process.env['DISPLAY']) || Boolean(process.env['WAYLAND_DISPLAY']);

/** Whether a virtual display can be started here. */
const canStartDisplay = () => process.platform === 'linux' && isOnPath('Xvfb');

/**
 * Starts a virtual display of its own number, which ends with this process or by `stop`.
 *
 * @returns {Promise<{ name: string, stop: () => void }>}
 */
function startDisplay() {
  return new Promise((resolve, reject) => {
    const args = ['-displayfd', '3', '-screen', '0', '1600x1200x24', '-nolisten', 'tcp', '-noreset'];
    const server = spawn('Xvfb', args, { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] });
    const stop = () => void server.kill();
    const fail = (/** @type {string} */ why) => {
      stop();
      reject(
        new SetupProblem(`No virtual display: ${why}`, 'apt-get install xvfb, or run in a desktop session'),
      );
    };
    const limit = setTimeout(() => fail('Xvfb did not answer'), startLimitMs);
    server.on('error', (error) => fail(error.message));
    server.on('exit', (code) => fail(`Xvfb ended with code ${code}`));
    process.on('exit', stop);
    server.stdio[3]?.once('data', (/** @type {Buffer} */ number) => {
      clearTimeout(limit);
      server.unref();
      resolve({ name: `:${number.toString().trim()}`, stop });
    });
  });
}

/**
 * Runs `work` with an environment that has a screen: a virtual one if it can be started, else the session's own.
 *
 * @template T
 * @param {NodeJS.ProcessEnv} env
 * @param {(env: NodeJS.ProcessEnv) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withDisplay(env, work) {
  if (!canStartDisplay() && hasDisplay()) return work(env);
  const display = await startDisplay();
  try {
    // Without the Wayland name, or a program might open its windows on the real screen after all.
    return await work({ ...env, DISPLAY: display.name, WAYLAND_DISPLAY: undefined, XDG_SESSION_TYPE: 'x11' });
  } finally {
    display.stop();
  }
}
