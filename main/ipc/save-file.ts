import { writeFile } from 'node:fs/promises';
import { BrowserWindow, dialog } from 'electron';
import type { Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';

interface FileToSave {
  /** What the file is called unless the maker says otherwise, without its extension. */
  readonly name: string;
  readonly extension: string;
  /** What files of this kind are called in the dialog. */
  readonly kind: string;
  readonly bytes: string | Uint8Array;
}

/** Asks over the page where to keep a file and writes it; null when the maker thinks better of it. */
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
