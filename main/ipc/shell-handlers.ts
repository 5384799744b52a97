import path from 'node:path';
import { mkdir, writeFile } from 'node:fs/promises';
import { BrowserWindow, dialog, shell } from 'electron';
import type { ChannelAnswer, ChannelInput, ShellChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { failure, success } from '#core/result';
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
    const window = BrowserWindow.fromWebContents(contents);
    const pdf = await makeSheetPdf(sheetPath);
    const options = {
      defaultPath: `${safeFileName(name)}.pdf`,
      filters: [{ name: 'PDF', extensions: ['pdf'] }],
    };
    const chosen =
      window === null ? await dialog.showSaveDialog(options) : await dialog.showSaveDialog(window, options);
    if (chosen.canceled || chosen.filePath === '') return success(null);
    try {
      await writeFile(chosen.filePath, pdf);
    } catch (error) {
      return failure<Problem>({
        code: 'file-unreadable',
        detail: error instanceof Error ? error.message : String(error),
      });
    }
    return success({ file: chosen.filePath });
  },
};

/** A file name that every system takes: letters, digits, spaces, dots and dashes, at most 80 characters. */
function safeFileName(name: string): string {
  const kept = name
    .replace(/[^\p{L}\p{N} .-]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, 80);
  return kept === '' ? 'Sheet' : kept;
}
