import { rmSync, statSync } from 'node:fs';
import path from 'node:path';
import type { Problem } from '#core/contract/problem';
import { type Result, success } from '#core/result';
import { startStore, type StoreClient } from './store/thread/store-client';
import { makeThumbnail } from './thumbnail';

/** The open workshop: the maker's own, or the demo, which is a separate file beside it. */
export interface Session {
  readonly store: () => StoreClient;
  readonly file: () => string;
  readonly enterDemo: () => Promise<Result<{ readonly file: string }, Problem>>;
  readonly leaveDemo: () => Promise<Result<{ readonly file: string }, Problem>>;
  readonly close: () => Promise<void>;
}

/** Opens the maker's workshop. If the file cannot be used, returns a problem and changes nothing. */
export async function openSession(file: string, programVersion: string): Promise<Result<Session, Problem>> {
  const demoFile = path.join(path.dirname(file), 'demo', 'workshop.sqlite');
  const opened = await startStore({ file, programVersion, isDemo: false, makeThumbnail });
  if (!opened.ok) return opened;
  let current = { client: opened.value, file };

  const switchTo = async (
    to: string,
    isDemo: boolean,
  ): Promise<Result<{ readonly file: string }, Problem>> => {
    if (to === current.file) return success({ file: to });
    const next = await startStore({ file: to, programVersion, isDemo, makeThumbnail });
    if (!next.ok) return next;
    const before = current.client;
    current = { client: next.value, file: to };
    await before.close();
    return success({ file: to });
  };

  return success({
    store: () => current.client,
    file: () => current.file,
    enterDemo: () => {
      // The demo is made again each time, so that its days count from today.
      if (current.file !== demoFile) rmSync(path.dirname(demoFile), { recursive: true, force: true });
      return switchTo(demoFile, true);
    },
    leaveDemo: () => switchTo(file, false),
    close: () => current.client.close(),
  });
}

/** The workshop file: the one named on the command line, otherwise the one in the user's data folder. */
export function workshopFile(args: readonly string[], userDataFolder: string): string {
  const withEquals = args.find((arg) => arg.startsWith('--workshop='))?.slice('--workshop='.length);
  const at = args.indexOf('--workshop');
  const named = withEquals ?? (at === -1 ? undefined : args[at + 1]);
  if (named === undefined || named === '') return path.join(userDataFolder, 'workshop.sqlite');
  const full = path.resolve(named);
  const found = statSync(full, { throwIfNoEntry: false });
  const isFile = found === undefined ? path.extname(full) !== '' : !found.isDirectory();
  return isFile ? full : path.join(full, 'workshop.sqlite');
}
