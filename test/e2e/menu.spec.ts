import { type ElectronApplication, expect, test } from '@playwright/test';
import { calendarDate } from '#core/units/calendar-date';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { dayFromNow, goTo, title, writeDownRing } from '#test/helpers/notebook-steps';

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
      item.click({}, window, window.webContents);
    },
    { menu, entry },
  );
}

test('every place has an entry in the menu with a key of its own, and the entry opens it', async () => {
  const { page, electron, close } = await launchProgram();
  await writeDownRing(page, 'Harvest round');
  const places = await entriesOf(electron, 'Go');
  expect(places).toEqual(
    ['Bench', 'Projects', 'Days', 'Out', 'Stash', 'Workshop'].map((label, place) => ({
      label,
      key: `CmdOrCtrl+${String(place + 1)}`,
    })),
  );
  for (const { label } of places.toReversed()) {
    await choose(electron, 'Go', label);
    await expect(title(page, label)).toBeVisible();
  }
  expect(await entriesOf(electron, 'Help')).toEqual([{ label: 'Keys', key: 'F1' }]);
  await choose(electron, 'Help', 'Keys');
  const keys = page.getByRole('dialog', { name: 'Keys' });
  await expect(keys).toContainText('Begin a piece');
  await keys.getByRole('button', { name: 'Close' }).click();
  await choose(electron, 'Edit', 'Undo');
  await expect(page.getByRole('status').first()).toHaveText('Undone: Began “Harvest round”');
  await choose(electron, 'Notebook', 'New project');
  await expect(title(page, 'A new piece')).toBeVisible();
  await close();
});

test('whoever wants to be reminded is, on the desktop, as soon as it is switched on; nobody is before', async () => {
  const { page, electron, close } = await launchProgram();
  await writeDownRing(page, 'Harvest round');
  const { items } = await askStore(page, 'project:list', { archived: false });
  const { id: projectId } = items[0]!.project;
  const dues = [{ projectId, dueOn: calendarDate(dayFromNow(1)) }];
  await askStore(page, 'dates:move', { moves: { dues, promises: [] } });
  await electron.evaluate(({ Notification }) => {
    const show = Notification.prototype.show;
    const told: string[] = [];
    Object.assign(globalThis, { told });
    Notification.prototype.show = function shown(this: Electron.Notification) {
      told.push(`asked: ${this.title}, ${this.body}, supported ${String(Notification.isSupported())}`);
      this.once('show', () => told.push(`shown: ${this.title}, ${this.body}`));
      this.once('failed', (_event, error) => told.push(`failed: ${error}`));
      show.call(this);
    };
  });
  const told = () =>
    electron.evaluate(() => (globalThis as unknown as { told: readonly string[] }).told.join('\n'));
  await goTo(page, 'Workshop');
  expect(await told()).toBe('');
  const reminds = page.getByRole('checkbox', { name: 'Remind me on the desktop' });
  await reminds.click();
  await expect(reminds).toBeChecked();
  await expect.poll(told).toContain('shown: Tomorrow in the workshop, Due tomorrow: Harvest round');
  await close();
});
