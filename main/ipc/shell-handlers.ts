import path from 'node:path';
import { mkdir, writeFile } from 'node:fs/promises';
import { BrowserWindow, dialog, shell } from 'electron';
import type { ChannelAnswer, ChannelInput, ShellChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';
import { makeSheetPdf } from '../sheet-pdf';
import type { Session } from '../session';

export interface ShellContext {
  readonly session: Session;
  readonly contents: Electron.WebContents;
}

type ShellHandlers = {
  readonly [Name in ShellChannelName]: (
    input: ChannelInput<Name>,
    context: ShellContext,
  ) => Promise<ChannelAnswer<Name>>;
};

export const shellHandlers: ShellHandlers = {
  'shell:enter-demo': (_input, { session }) => session.enterDemo(),
  'shell:leave-demo': (_input, { session }) => session.leaveDemo(),
  'shell:show-folder': async ({ which }, { session }) => {
    const folder = path.dirname(session.file());
    const shown = which === 'backups' ? path.join(folder, 'backups') : folder;
    await mkdir(shown, { recursive: true });
    const complaint = await shell.openPath(shown);
    return complaint === ''
      ? success(null)
      : failure<Problem>({ code: 'file-unreadable', detail: complaint });
  },
  'shell:print-sheet': async ({ path: sheetPath, name }, { contents }) => {
    const pdf = await makeSheetPdf(sheetPath);
    const filters = [{ name: 'PDF', extensions: ['pdf'] }];
    return keepFile(contents, { defaultPath: `${safeFileName(name)}.pdf`, filters }, pdf);
  },
  'shell:choose-table': async (_input, { session, contents }) => {
    const options: Electron.OpenDialogOptions = {
      properties: ['openFile'],
      filters: [{ name: 'Tables', extensions: ['csv', 'tsv', 'txt', 'json'] }],
    };
    const window = BrowserWindow.fromWebContents(contents);
    const chosen =
      window === null ? await dialog.showOpenDialog(options) : await dialog.showOpenDialog(window, options);
    const [file] = chosen.filePaths;
    if (chosen.canceled || file === undefined) return success(null);
    const offered = await session.store().offerTable(file);
    return offered.ok ? success({ ...offered.value, name: path.basename(file) }) : offered;
  },
  'shell:export-stash': async ({ as }, { session, contents }) => {
    const text = await session.store().exportStash(as);
    if (!text.ok) return text;
    const filters = [{ name: as === 'csv' ? 'Table' : 'Data', extensions: [as] }];
    return keepFile(contents, { defaultPath: `Stash.${as}`, filters }, text.value);
  },
};

/** Asks where to keep a file and writes it; null when the maker thinks better of it. */
async function keepFile(
  contents: Electron.WebContents,
  options: Electron.SaveDialogOptions,
  content: Buffer | string,
): Promise<Result<{ readonly file: string } | null, Problem>> {
  const window = BrowserWindow.fromWebContents(contents);
  const chosen =
    window === null ? await dialog.showSaveDialog(options) : await dialog.showSaveDialog(window, options);
  if (chosen.canceled || chosen.filePath === '') return success(null);
  try {
    await writeFile(chosen.filePath, content);
  } catch (error) {
    return failure<Problem>({
      code: 'file-unreadable',
      detail: error instanceof Error ? error.message : String(error),
    });
  }
  return success({ file: chosen.filePath });
}

/** A file name that every system takes: letters, digits, spaces, dots and dashes, at most 80 characters. */
function safeFileName(name: string): string {
  const kept = name
    .replace(/[^\p{L}\p{N} .-]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, 80);
  return kept === '' ? 'Sheet' : kept;
}
