import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { app, BrowserWindow, nativeTheme, session, type WebPreferences } from 'electron';
import { z } from 'zod';
import { APP_ORIGIN } from './security/app-scheme';

const bounds = z
  .object({ x: z.int(), y: z.int(), width: z.int().min(400), height: z.int().min(300) })
  .partial({ x: true, y: true });

/** The rights of every page of the program: nothing beyond the bridge. */
export function pagePreferences(): WebPreferences {
  return {
    preload: path.join(import.meta.dirname, '../preload/preload.cjs'),
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    webSecurity: true,
    disableBlinkFeatures: 'Auxclick',
    spellcheck: true,
  };
}

/** Opens the notebook's window where it was last closed. It is shown once it is drawn. */
export async function openWindow(): Promise<BrowserWindow> {
  const window = new BrowserWindow({
    ...lastBounds(),
    minWidth: 900,
    minHeight: 600,
    show: false,
    title: 'Ringbound',
    autoHideMenuBar: true,
    backgroundColor: nativeTheme.shouldUseDarkColors ? '#211c17' : '#f6f0e4',
    webPreferences: pagePreferences(),
  });
  window.once('ready-to-show', () => {
    window.show();
  });
  window.on('close', () => {
    writeFileSync(boundsFile(), JSON.stringify(window.getNormalBounds()));
  });
  keepDraftsOnDisk(window);
  await window.loadURL(`${APP_ORIGIN}/`);
  return window;
}

/** Chromium waits up to a minute before it writes what a page stores. What a maker types must outlast a crash of the program. */
function keepDraftsOnDisk(window: BrowserWindow): void {
  const timer = setInterval(() => session.defaultSession.flushStorageData(), 1_000);
  window.on('closed', () => clearInterval(timer));
}

function boundsFile(): string {
  return path.join(app.getPath('userData'), 'window.json');
}

function lastBounds(): { x?: number; y?: number; width: number; height: number } {
  const usual = { width: 1280, height: 860 };
  if (!existsSync(boundsFile())) return usual;
  try {
    const { x, y, ...size } = bounds.parse(JSON.parse(readFileSync(boundsFile(), 'utf8')));
    return x === undefined || y === undefined ? size : { x, y, ...size };
  } catch {
    return usual;
  }
}
