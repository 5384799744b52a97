import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmod, chown, cp, mkdir, mkdtemp, readdir, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { type Browser, chromium, expect, type Page } from '@playwright/test';
import {
  isAdministrator,
  type LaunchOptions,
  makeRunFolders,
  programArguments,
  type RunFolders,
  type RunningProgram,
} from './launch';
import { projectRoot } from './project-root';

const startLimitMs = 30_000;
const endLimitMs = 15_000;
/** An account without rights. The administrator runs the program under it, so that Chromium's sandbox is on. */
const nobody = { uid: 65_534, gid: 65_534 };

/** The packaged program. `processId` is the id of its main process. */
export interface PackagedProgram extends RunningProgram {
  readonly processId: number;
}

/** Whether an account without rights can create the namespaces that Chromium's sandbox needs. */
export const canSandbox = (): boolean =>
  process.platform !== 'linux' ||
  spawnSync('unshare', ['--user', 'true'], isAdministrator ? nobody : {}).status === 0;

async function packagedFolder(): Promise<string> {
  const names = await readdir(path.join(projectRoot, 'out'));
  const found = names.find((name) => /^(linux|win|mac)(-\w+)?(-unpacked)?$/.test(name));
  if (found === undefined) throw new Error('nothing is packaged: run npm run package');
  return path.join(projectRoot, 'out', found);
}

const executableIn = (folder: string): string =>
  ({
    darwin: path.join(folder, 'Ringbound.app/Contents/MacOS/Ringbound'),
    win32: path.join(folder, 'Ringbound.exe'),
  })[process.platform as string] ?? path.join(folder, 'ringbound');

/** A copy of the packaged program that any account can read. The project itself may be in a private folder. */
export async function copyPackaged(): Promise<{ folder: string; remove: () => Promise<void> }> {
  const base = await mkdtemp(path.join(os.tmpdir(), 'ringbound-packaged-'));
  await chmod(base, 0o755);
  const folder = path.join(base, 'program');
  await cp(await packagedFolder(), folder, { recursive: true });
  return { folder, remove: () => rm(base, { recursive: true, force: true }) };
}

async function giveTo({ uid, gid }: typeof nobody, folders: RunFolders): Promise<void> {
  await chown(path.dirname(folders.user), uid, gid);
  for (const folder of [folders.user, folders.workshop]) {
    await mkdir(folder, { recursive: true });
    const within = await readdir(folder, { recursive: true });
    for (const name of ['', ...within]) await chown(path.join(folder, name), uid, gid);
  }
}

/** The debugger address that Chromium prints. */
function debuggerAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    child.stderr?.on('data', (chunk: Buffer) => {
      printed += chunk.toString();
      const address = /DevTools listening on (ws:\S+)/.exec(printed)?.[1];
      if (address !== undefined) resolve(address);
    });
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`the program ended with ${String(code)}:\n${printed}`)));
  });
}

interface Target {
  readonly type: string;
  readonly url: string;
}

/** Attaching before the window exists can hang, so this waits for the window's page first. */
async function attach(address: string): Promise<Browser> {
  const list = `http://${new URL(address).host}/json/list`;
  const hasPage = async (): Promise<boolean> => {
    const targets = (await (await fetch(list)).json()) as readonly Target[];
    return targets.some(({ type, url }) => type === 'page' && url.startsWith('app:'));
  };
  const message = 'the program shows its page (if it does not, it may be showing an error dialog)';
  await expect.poll(hasPage, { message, timeout: startLimitMs, intervals: [100] }).toBe(true);
  return chromium.connectOverCDP(address);
}

async function closeWindow(page: Page, child: ChildProcess): Promise<void> {
  const ended = child.exitCode === null ? once(child, 'exit') : Promise.resolve([child.exitCode]);
  const limit = setTimeout(() => child.kill('SIGKILL'), endLimitMs);
  await page.close();
  // On macOS the program keeps running after its last window closes.
  if (process.platform === 'darwin') child.kill();
  const [code] = (await ended) as [number | null];
  clearTimeout(limit);
  if (code !== 0) throw new Error(`the program ended with ${String(code)}`);
}

/**
 * Starts the packaged program from `folder` and waits for its window. Its fuses forbid Node's inspector, so the test drives only
 * the window, through Chromium's debugger.
 */
export async function launchPackaged(folder: string, options: LaunchOptions = {}): Promise<PackagedProgram> {
  const folders = await makeRunFolders(options.workshop);
  if (isAdministrator) await giveTo(nobody, folders);
  const child = spawn(
    executableIn(folder),
    ['--remote-debugging-port=0', ...programArguments(folders), ...(options.args ?? [])],
    {
      ...(isAdministrator ? nobody : {}),
      cwd: folder,
      env: { ...process.env, HOME: path.dirname(folders.user), XDG_RUNTIME_DIR: undefined },
      stdio: ['ignore', 'ignore', 'pipe'],
    },
  );
  // A failed test must not leave a program running.
  process.once('exit', () => child.kill('SIGKILL'));
  const browser = await attach(await debuggerAddress(child));
  const [context] = browser.contexts();
  if (context === undefined || child.pid === undefined) throw new Error('the program has no window');
  const page = context.pages()[0] ?? (await context.waitForEvent('page'));
  return {
    page,
    processId: child.pid,
    workshop: folders.workshop,
    close: async () => {
      await closeWindow(page, child);
      await folders.remove();
    },
  };
}
