import { once } from 'node:events';
import { BrowserWindow } from 'electron';
import { APP_ORIGIN } from './security/app-scheme';
import { pagePreferences } from './window';

/** The page title of a sheet once everything on it is drawn. */
const READY_TITLE = 'Sheet ready';

/**
 * Makes a PDF of a sheet (`/sheets/…`) in a hidden window. The sheet's own `@page` rule sets the paper size; nothing is scaled.
 */
export async function makeSheetPdf(sheetPath: string): Promise<Buffer> {
  const window = new BrowserWindow({ show: false, webPreferences: pagePreferences() });
  try {
    const ready = sheetIsReady(window);
    await window.loadURL(`${APP_ORIGIN}/#${sheetPath}`);
    await ready;
    return await window.webContents.printToPDF({ preferCSSPageSize: true, printBackground: true });
  } finally {
    window.destroy();
  }
}

async function sheetIsReady(window: BrowserWindow): Promise<void> {
  const limit = AbortSignal.timeout(20_000);
  while (window.webContents.getTitle() !== READY_TITLE) {
    await once(window.webContents, 'page-title-updated', { signal: limit });
  }
}
