import { writeFile } from 'node:fs/promises';
import { BrowserWindow, dialog } from 'electron';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result, success } from '#core/result';

interface FileToSave {
  /** The suggested file name, without its extension. */
  readonly name: string;
  readonly extension: string;
  /** The name of this kind of file in the dialog. */
  readonly kind: string;
  readonly bytes: string | Uint8Array;
}

/** Asks where to save a file and writes it; null if the maker cancels. */
export async function saveFile(
  contents: Electron.WebContents,
  { name, extension, kind, bytes }: FileToSave,
): Promise<Result<{ readonly file: string } | null, Problem>> {
  const window = BrowserWindow.fromWebContents(contents);
  const options = {
    defaultPath: `${safeFileName(name)}.${extension}`,
    filters: [{ name: kind, extensions: [extension] }],
  };
  const chosen =
    window === null ? await dialog.showSaveDialog(options) : await dialog.showSaveDialog(window, options);
  if (chosen.canceled || chosen.filePath === '') return success(null);
  try {
    await writeFile(chosen.filePath, bytes);
  } catch (error) {
    return failure<Problem>({
      code: 'file-unreadable',
      detail: messageOf(error),
    });
  }
  return success({ file: chosen.filePath });
}

/** A file name that is valid on every system: letters, digits, spaces, dots and dashes, at most 80 characters. */
function safeFileName(name: string): string {
  const safe = name
    .replace(/[^\p{L}\p{N} .-]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, 80);
  return safe === '' ? 'Sheet' : safe;
}
