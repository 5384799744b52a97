import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { _electron, type ElectronApplication, type Page } from '@playwright/test';
import { projectRoot } from './project-root';

/** The program in a real window, with its own workshop and user folder. */
export interface RunningProgram {
  readonly page: Page;
  /** The folder that holds the workshop file, photos and backups. */
  readonly workshop: string;
  /** Closes the window and resolves when the program has ended. */
  readonly close: () => Promise<void>;
}

/** The program as developers start it. Tests can also reach its main process. */
export interface DevelopedProgram extends RunningProgram {
  readonly electron: ElectronApplication;
}

export interface LaunchOptions {
  /** A folder to open again. Without it the program gets an empty one, which is removed when it closes. */
  readonly workshop?: string;
  /** The user folder to use again. Without it the program gets a new one. */
  readonly user?: string;
  readonly args?: readonly string[];
}

/** The folders of one run. `remove` deletes what the run made, but not a workshop passed to it. */
export interface RunFolders {
  readonly workshop: string;
  readonly user: string;
  readonly remove: () => Promise<void>;
}

/** Makes the temporary folders of one run. */
export async function makeRunFolders(workshop: string | undefined): Promise<RunFolders> {
  const base = await mkdtemp(path.join(os.tmpdir(), 'ringbound-test-'));
  return {
    workshop: workshop ?? path.join(base, 'workshop'),
    user: path.join(base, 'user'),
    // Child processes of a killed program may still be writing.
    remove: () => rm(base, { recursive: true, force: true, maxRetries: 10 }),
  };
}

/** Command-line arguments for a run that does not share anything with another running copy. */
export const programArguments = (folders: RunFolders): readonly string[] => [
  `--user-data-dir=${folders.user}`,
  '--workshop',
  folders.workshop,
];

/** Chromium refuses to use its sandbox for the administrator. */
export const isAdministrator = process.getuid?.() === 0;

/** Starts the built program like `npm start` does and waits for its first window. */
export async function launchProgram(options: LaunchOptions = {}): Promise<DevelopedProgram> {
  const made = await makeRunFolders(options.workshop);
  const folders = { ...made, user: options.user ?? made.user };
  const electron = await _electron.launch({
    cwd: projectRoot,
    args: [
      ...(isAdministrator ? ['--no-sandbox'] : []),
      '.',
      ...programArguments(folders),
      ...(options.args ?? []),
    ],
  });
  const page = await electron.firstWindow();
  return {
    electron,
    page,
    workshop: folders.workshop,
    close: async () => {
      await electron.close();
      await folders.remove();
    },
  };
}
