import path from 'node:path';
import { BrowserWindow } from 'electron';

/** Opens the one window on the built page. */
export async function openWindow(): Promise<void> {
  const window = new BrowserWindow({
    webPreferences: {
      preload: path.join(import.meta.dirname, '../preload/preload.cjs'),
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
    },
  });
  await window.loadFile(path.join(import.meta.dirname, '../renderer/index.html'));
}
