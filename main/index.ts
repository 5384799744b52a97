import path from 'node:path';
import { app, BrowserWindow, dialog } from 'electron';
import { answerFrom } from './ipc/answer';
import { registerCalls } from './ipc/register';
import { setMenu } from './menu';
import { wordsForStart } from './start-problem';
import { remindOfDays } from './reminders';
import { registerAppScheme, serveApp } from './security/app-scheme';
import { refuseNavigation } from './security/navigation';
import { refusePermissions } from './security/permissions';
import { openSession, type Session, workshopFile } from './session';
import { openWindow } from './window';

registerAppScheme();
// A process started as root has no sandbox to enter; switching it on all the same would end every page at once.
if (!app.commandLine.hasSwitch('no-sandbox')) app.enableSandbox();

if (app.requestSingleInstanceLock()) {
  void app.whenReady().then(start);
} else {
  app.quit();
}

async function start(): Promise<void> {
  const opened = await openSession(workshopFile(process.argv, app.getPath('userData')), app.getVersion());
  if (!opened.ok) {
    const words = wordsForStart(opened.error);
    // For whoever started it from a terminal: the box may be on a screen that nobody sees.
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
  const reminders = remindOfDays(session);
  registerCalls(answerFrom(session, reminders));
  setMenu();
  await openWindow();
  comeForwardWhenAskedAgain();
  closeInGoodOrder(session);
}

function comeForwardWhenAskedAgain(): void {
  app.on('second-instance', () => {
    const [window] = BrowserWindow.getAllWindows();
    if (window?.isMinimized() === true) window.restore();
    window?.focus();
  });
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) void openWindow();
  });
}

/** The store is closed before the program ends. Quitting again from a microtask would hang it, hence the turn of the loop. */
function closeInGoodOrder(session: Session): void {
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
