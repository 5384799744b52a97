import { app, type WebContents } from 'electron';
import { APP_ORIGIN } from './app-scheme';

/** Whether this is an address of our own page. It is compared by origin, never by part of the text. */
export function isOwnAddress(address: string): boolean {
  try {
    const url = new URL(address);
    return `${url.protocol}//${url.host}` === APP_ORIGIN;
  } catch {
    return false;
  }
}

/** Refuses navigation to other addresses, new windows and embedded views, for every page. */
export function refuseNavigation(): void {
  app.on('web-contents-created', (_event, contents) => {
    refuseFor(contents);
  });
}

function refuseFor(contents: WebContents): void {
  contents.on('will-navigate', (event, address) => {
    if (!isOwnAddress(address)) event.preventDefault();
  });
  contents.on('will-redirect', (event, address) => {
    if (!isOwnAddress(address)) event.preventDefault();
  });
  contents.on('will-attach-webview', (event) => {
    event.preventDefault();
  });
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}
