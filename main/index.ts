import path from 'node:path';
import { app, BrowserWindow, dialog } from 'electron';
import { answerFrom } from './ipc/answer';
import { registerCalls } from './ipc/register';
import { setMenu } from './menu';
import { startProblemWords } from './start-problem';
import { startReminders } from './reminders';
import { registerAppScheme, serveApp } from './security/app-scheme';
import { refuseNavigation } from './security/navigation';
import { refusePermissions } from './security/permissions';
import { openSession, type Session, workshopFile } from './session';
import { openWindow } from './window';

registerAppScheme();
// The sandbox does not work for root: switching it on would end every page at once.
if (!app.commandLine.hasSwitch('no-sandbox')) app.enableSandbox();

if (app.requestSingleInstanceLock()) {
  void app.whenReady().then(start);
} else {
  app.quit();
}

async function start(): Promise<void> {
  const opened = await openSession(workshopFile(process.argv, app.getPath('userData')), app.getVersion());
  if (!opened.ok) {
    const words = startProblemWords(opened.error);
    // Whoever started the program from a terminal may not see the dialog.
    process.stderr.write(`Ringbound cannot open this workshop\n${words}\n`);
    dialog.showErrorBox('Ringbound cannot open this workshop', words);
    app.exit(1);
    return;
  }
  const session = opened.value;
  refuseNavigation();
  refusePermissions();
  serveApp(path.join(import.meta.dirname, '../renderer'), (photoId, isThumbnail) =>
    session.store().readPhoto(photoId, isThumbnail),
  );
  const reminders = startReminders(session);
  registerCalls(answerFrom(session, reminders));
  setMenu();
  await openWindow();
  showWindowWhenStartedAgain();
  closeStoreBeforeQuitting(session);
}

function showWindowWhenStartedAgain(): void {
  app.on('second-instance', () => {
    const [window] = BrowserWindow.getAllWindows();
    if (window?.isMinimized() === true) window.restore();
    window?.focus();
  });
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) void openWindow();
  });
}

/** Closes the store before the program ends. Quitting from a microtask hangs Electron, so it waits for the next turn of the event loop. */
function closeStoreBeforeQuitting(session: Session): void {
  let isClosed = false;
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('will-quit', (event) => {
    if (isClosed) return;
    event.preventDefault();
    void session.close().finally(() => {
      isClosed = true;
      setImmediate(() => {
        app.quit();
      });
    });
  });
}
