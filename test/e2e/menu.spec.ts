import { type ElectronApplication, expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { title, enterRing } from '#test/helpers/notebook-steps';

interface MenuEntry {
  readonly label: string;
  readonly key: string | null;
}

/** Every entry of a menu of the program's own bar, with its key. */
function entriesOf(electron: ElectronApplication, menu: string): Promise<readonly MenuEntry[]> {
  return electron.evaluate(({ Menu }, wanted) => {
    const own = Menu.getApplicationMenu()?.items.find(({ label }) => label === wanted);
    return (own?.submenu?.items ?? []).map(({ label, accelerator }) => ({ label, key: accelerator ?? null }));
  }, menu);
}

/** Chooses an entry as a click on it does. */
function choose(electron: ElectronApplication, menu: string, entry: string): Promise<void> {
  return electron.evaluate(
    ({ Menu, BrowserWindow }, wanted) => {
      const own = Menu.getApplicationMenu()?.items.find(({ label }) => label === wanted.menu);
      const item = own?.submenu?.items.find(({ label }) => label === wanted.entry);
      const [window] = BrowserWindow.getAllWindows();
      if (item === undefined || window === undefined) throw new Error(`There is no ${wanted.entry}`);
      // The program's types know it only as some function.
      (item.click as (event: object, window: Electron.BrowserWindow) => void)({}, window);
    },
    { menu, entry },
  );
}

test('every place has an entry in the menu with a key of its own, and the entry opens it', async () => {
  const { page, electron, close } = await launchProgram();
  await enterRing(page, 'Harvest round');
  const places = await entriesOf(electron, 'Go');
  expect(places).toEqual(
    ['Bench', 'Projects', 'Days', 'At the quilter', 'Stash', 'Shopping', 'Workshop'].map((label, place) => ({
      label,
      key: `CmdOrCtrl+${String(place + 1)}`,
    })),
  );
  for (const { label } of places.toReversed()) {
    await choose(electron, 'Go', label);
    await expect(title(page, label === 'At the quilter' ? 'Sent out' : label)).toBeVisible();
  }
  expect(await entriesOf(electron, 'Help')).toEqual([{ label: 'Keyboard shortcuts', key: 'F1' }]);
  await choose(electron, 'Help', 'Keyboard shortcuts');
  const keys = page.getByRole('dialog', { name: 'Keyboard shortcuts' });
  await expect(keys).toContainText('New project');
  await keys.getByRole('button', { name: 'Close' }).click();
  await choose(electron, 'Edit', 'Undo');
  await expect(page.getByRole('status').first()).toHaveText('Undone: Started “Harvest round”');
  await choose(electron, 'Notebook', 'New project');
  await expect(title(page, 'New project')).toBeVisible();
  await close();
});
