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
import { goTo, mainAction, openPiece, title, writeDownRing } from '#test/helpers/notebook-steps';

const row = (page: Page, name: string) => page.getByRole('main').getByRole('link', { name, exact: true });

async function deletePiece(page: Page, name: string): Promise<void> {
  await openPiece(page, name);
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(title(page, 'Projects')).toBeFocused();
  await expect(row(page, name)).toHaveCount(0);
}

/** Goes back to the newest backup of a kind by the Workshop page; the page then shows what was there at that time. */
async function goBackTo(page: Page, why: string): Promise<void> {
  await goTo(page, 'Workshop');
  const backup = page.getByRole('region', { name: 'Backups' }).getByRole('listitem').filter({ hasText: why });
  await backup.first().getByRole('button', { name: 'Go back to' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Go back to it' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await goTo(page, 'Projects');
}

test('a backup made by hand brings back what was changed since, and keeps what it replaced', async () => {
  const { page, close } = await launchProgram();
  await writeDownRing(page, 'Harvest round');
  await goTo(page, 'Workshop');
  await mainAction(page, 'Back up now').click();
  await expect(page.getByRole('region', { name: 'Backups' })).toContainText('Made by hand');
  await deletePiece(page, 'Harvest round');
  await writeDownRing(page, 'Frost round');
  await goBackTo(page, 'Made by hand');
  await expect(row(page, 'Harvest round')).toBeVisible();
  await expect(row(page, 'Frost round')).toHaveCount(0);

  await goBackTo(page, 'Before going back to an older one');
  await expect(row(page, 'Frost round')).toBeVisible();
  await expect(row(page, 'Harvest round')).toHaveCount(0);
  await close();
});

test('a damaged backup is refused, and what is there stays', async () => {
  await withTemporaryFolder(async (workshop) => {
    const { page, close } = await launchProgram({ workshop });
    await writeDownRing(page, 'Harvest round');
    const { name } = await askStore(page, 'backup:make', {});
    const file = path.join(workshop, 'backups', name);
    const bytes = await readFile(file);
    await writeFile(file, bytes.fill(0x7a, 4_096));
    await writeDownRing(page, 'Frost round');
    const before = await askStore(page, 'backup:list', {});
    await expect(askStore(page, 'backup:restore', { name })).rejects.toThrow('backup-unusable');
    expect(await askStore(page, 'backup:list', {})).toEqual(before);
    await page.reload();
    await goTo(page, 'Projects');
    await expect(row(page, 'Harvest round')).toBeVisible();
    await expect(row(page, 'Frost round')).toBeVisible();
    await deletePiece(page, 'Frost round');
    await close();
  });
});

test('a workshop of a newer program is refused in words, and left byte for byte as it is', async () => {
  await withTemporaryFolder(async (workshop) => {
    const { page, close } = await launchProgram({ workshop });
    await writeDownRing(page, 'Harvest round');
    await close();
    const file = path.join(workshop, 'workshop.sqlite');
    const newer = await readFile(file);
    // The user version of a SQLite file is its bytes 60 to 63 (SQLite, Database File Format, section 1.3).
    newer.writeUInt32BE(99_990_101, 60);
    await writeFile(file, newer);
    const before = await contents(workshop);

    const { code, words } = await startAndWaitForEnd(workshop);
    expect(words).toContain('Ringbound cannot open this workshop');
    expect(words).toContain('last written by a newer Ringbound (workshop format 99990101');
    expect(words).toContain('Nothing was changed.');
    expect(code).toBe(1);
    expect(await contents(workshop)).toEqual(before);
    expect(await readFile(file)).toEqual(newer);
  });
});

const contents = async (folder: string): Promise<readonly string[]> =>
  (await readdir(folder, { recursive: true })).toSorted();

/** Only the system's own box, which waits for a press, is answered for the maker; all else is the program as it is. */
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
