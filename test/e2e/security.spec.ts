import { expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';

test('every window is made with the preferences that keep the page away from Node', async () => {
  const { electron, close } = await launchProgram();
  const preferences = await electron.evaluate(({ BrowserWindow }) =>
    BrowserWindow.getAllWindows().map(({ webContents }) =>
      // Not in the published types, but the one place that says what a window was really made with.
      (
        webContents as unknown as { getLastWebPreferences: () => Record<string, unknown> }
      ).getLastWebPreferences(),
    ),
  );
  expect(preferences).toHaveLength(1);
  expect(preferences[0]).toMatchObject({
    contextIsolation: true,
    nodeIntegration: false,
    nodeIntegrationInSubFrames: false,
    sandbox: true,
    webSecurity: true,
    webviewTag: false,
  });
  expect(preferences[0]).not.toHaveProperty('nodeIntegrationInWorker', true);
  await close();
});

test('a script written into the page is refused', async () => {
  const { page, close } = await launchProgram();
  const ran = await page.evaluate(() => {
    const script = document.createElement('script');
    try {
      script.textContent = 'globalThis.hasRun = true';
      document.body.append(script);
    } catch {
      return false;
    }
    return Reflect.has(globalThis, 'hasRun');
  });
  expect(ran).toBe(false);
  await close();
});
