import path from 'node:path';
import { mkdir } from 'node:fs/promises';
import { BrowserWindow, dialog, shell } from 'electron';
import { writeCalendar } from '#core/calendar-file/write-calendar';
import type { ChannelAnswer, ChannelInput, ShellChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { failure, success } from '#core/result';
import { makeSheetPdf } from '../sheet-pdf';
import type { Session } from '../session';
import { saveFile } from './save-file';

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
  'shell:open-pattern': async ({ projectId }, { session }) => {
    const found = await session.store().findPatternFile(projectId);
    return found.ok ? show(found.value.file) : found;
  },
  'shell:show-folder': async ({ which }, { session }) => {
    const folder = path.dirname(session.file());
    const shown = which === 'backups' ? path.join(folder, 'backups') : folder;
    await mkdir(shown, { recursive: true });
    return show(shown);
  },
  'shell:print-sheet': async ({ path: sheetPath, name }, { contents }) => {
    const bytes = await makeSheetPdf(sheetPath);
    return saveFile(contents, { name, extension: 'pdf', kind: 'PDF', bytes });
  },
  'shell:save-calendar': async ({ on }, { session, contents }) => {
    const days = await session.store().call('dates:days-to-remember', { on });
    if (!days.ok) return days;
    const text = writeCalendar({ name: 'Ringbound', stamp: stampOf(new Date()), days: days.value });
    return saveFile(contents, { name: 'Workshop days', extension: 'ics', kind: 'Calendar', bytes: text });
  },
  'shell:choose-table': async (_input, { session, contents }) => {
    const options: Electron.OpenDialogOptions = {
      properties: ['openFile'],
      filters: [{ name: 'Spreadsheets and stash files', extensions: ['csv', 'tsv', 'txt', 'json'] }],
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
    const kind = as === 'csv' ? 'Spreadsheet' : 'Stash file';
    return saveFile(contents, { name: 'Stash', extension: as, kind, bytes: text.value });
  },
};

/** Lets the system show a file or folder of the notebook. */
async function show(file: string): Promise<ChannelAnswer<'shell:show-folder'>> {
  const error = await shell.openPath(file);
  return error === '' ? success(null) : failure<Problem>({ code: 'file-unreadable', detail: error });
}

/** An instant in the form of a calendar file: `20270912T081500Z`. */
function stampOf(at: Date): string {
  return `${at.toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
}
