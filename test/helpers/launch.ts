import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { _electron, type ElectronApplication, type Page } from '@playwright/test';
import { projectRoot } from './project-root';

/** A program under test in a real window, with a workshop and a user's folder of its own. */
export interface RunningProgram {
  readonly page: Page;
  /** The folder that holds the workshop file, photos and backups. */
  readonly workshop: string;
  /** Closes the window as a person would, and answers when the program has ended by itself. */
  readonly close: () => Promise<void>;
}

/** The program as developers start it, whose main process can be asked as well. */
export interface DevelopedProgram extends RunningProgram {
  readonly electron: ElectronApplication;
}

export interface LaunchOptions {
  /** A folder to open again; without it the program starts with an empty one, which goes when the program is closed. */
  readonly workshop?: string;
  readonly args?: readonly string[];
}

/** The folders of one run. `remove` takes away what the run made, not a workshop that it was given. */
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
    // The children of a killed program may still be writing.
    remove: () => rm(base, { recursive: true, force: true, maxRetries: 10 }),
  };
}

/** The command line that opens a workshop apart from any other running copy of the program. */
export const programArguments = (folders: RunFolders): readonly string[] => [
  `--user-data-dir=${folders.user}`,
  '--workshop',
  folders.workshop,
];

/** Whether this process is the administrator, to whom Chromium refuses its sandbox. */
export const isAdministrator = process.getuid?.() === 0;

/** Starts the built program the way `npm start` does and waits for its first window. */
export async function launchProgram(options: LaunchOptions = {}): Promise<DevelopedProgram> {
  const folders = await makeRunFolders(options.workshop);
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
