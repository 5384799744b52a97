import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { askStore } from '#test/helpers/ask-store';
import { isAdministrator, launchProgram, makeRunFolders, programArguments } from '#test/helpers/launch';
import { projectRoot } from '#test/helpers/project-root';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import { goTo, mainAction, openProject, title, enterRing } from '#test/helpers/notebook-steps';

const row = (page: Page, name: string) => page.getByRole('main').getByRole('link', { name, exact: true });

async function deleteProject(page: Page, name: string): Promise<void> {
  await openProject(page, name);
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(title(page, 'Projects')).toBeFocused();
  await expect(row(page, name)).toHaveCount(0);
}

/** Restores the newest backup of a kind on the Workshop page. */
async function restoreBackup(page: Page, why: string): Promise<void> {
  await goTo(page, 'Workshop');
  const backup = page.getByRole('region', { name: 'Backups' }).getByRole('listitem').filter({ hasText: why });
  await backup.first().getByRole('button', { name: 'Restore' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Restore' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await goTo(page, 'Projects');
}

test('a backup made by hand restores what was changed since, and backs up what it replaces', async () => {
  const { page, close } = await launchProgram();
  await enterRing(page, 'Harvest round');
  await goTo(page, 'Workshop');
  await mainAction(page, 'Back up now').click();
  await expect(page.getByRole('region', { name: 'Backups' })).toContainText('Made by you');
  await deleteProject(page, 'Harvest round');
  await enterRing(page, 'Frost round');
  await restoreBackup(page, 'Made by you');
  await expect(row(page, 'Harvest round')).toBeVisible();
  await expect(row(page, 'Frost round')).toHaveCount(0);

  await restoreBackup(page, 'Before an older backup was restored');
  await expect(row(page, 'Frost round')).toBeVisible();
  await expect(row(page, 'Harvest round')).toHaveCount(0);
  await close();
});

test('a damaged backup is refused and changes nothing', async () => {
  await withTemporaryFolder(async (workshop) => {
    const { page, close } = await launchProgram({ workshop });
    await enterRing(page, 'Harvest round');
    const { name } = await askStore(page, 'backup:make', {});
    const file = path.join(workshop, 'backups', name);
    const bytes = await readFile(file);
    await writeFile(file, bytes.fill(0x7a, 4_096));
    await enterRing(page, 'Frost round');
    const before = await askStore(page, 'backup:list', {});
    await expect(askStore(page, 'backup:restore', { name })).rejects.toThrow('backup-unusable');
    expect(await askStore(page, 'backup:list', {})).toEqual(before);
    await page.reload();
    await goTo(page, 'Projects');
    await expect(row(page, 'Harvest round')).toBeVisible();
    await expect(row(page, 'Frost round')).toBeVisible();
    await deleteProject(page, 'Frost round');
    await close();
  });
});

test('a workshop from a newer program is refused in words, and its files stay byte for byte', async () => {
  await withTemporaryFolder(async (workshop) => {
    const { page, close } = await launchProgram({ workshop });
    await enterRing(page, 'Harvest round');
    await close();
    const file = path.join(workshop, 'workshop.sqlite');
    const newer = await readFile(file);
    // The user version of a SQLite file is its bytes 60 to 63 (SQLite, Database File Format, section 1.3).
    newer.writeUInt32BE(99_990_101, 60);
    await writeFile(file, newer);
    const before = await contents(workshop);

    const { code, words } = await startAndWaitForEnd(workshop);
    expect(words).toContain('Ringbound cannot open this workshop');
    expect(words).toContain('last saved by a newer Ringbound (workshop format 99990101');
    expect(words).toContain('Nothing was changed.');
    expect(code).toBe(1);
    expect(await contents(workshop)).toEqual(before);
    expect(await readFile(file)).toEqual(newer);
  });
});

const contents = async (folder: string): Promise<readonly string[]> =>
  (await readdir(folder, { recursive: true })).toSorted();

/** Runs the real program; only the system's error box, which waits for a click, is answered by a script. */
async function startAndWaitForEnd(workshop: string): Promise<{ code: number | null; words: string }> {
  const folders = await makeRunFolders(workshop);
  const electron = createRequire(import.meta.url)('electron') as string;
  const answersBox = path.join(import.meta.dirname, 'press-error-box.cjs');
  const sandbox = isAdministrator ? ['--no-sandbox'] : [];
  const child = spawn(electron, [...sandbox, '--require', answersBox, '.', ...programArguments(folders)], {
    cwd: projectRoot,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let words = '';
  child.stderr.on('data', (chunk: Buffer) => {
    words += chunk.toString();
  });
  const [code] = (await once(child, 'close')) as [number | null];
  await folders.remove();
  return { code, words };
}
