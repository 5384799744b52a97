import { once } from 'node:events';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { type DevelopedProgram, launchProgram } from '#test/helpers/launch';
import { enterRing, goTo, openStage, title } from '#test/helpers/notebook-steps';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';

/** Waits until the text is in the files of the user folder: only then does it outlast a crash. */
async function untilOnDisk(user: string, text: string): Promise<void> {
  const folder = path.join(user, 'Local Storage', 'leveldb');
  await expect
    .poll(async () => {
      const names = await readdir(folder);
      const files = await Promise.all(names.map((name) => readFile(path.join(folder, name)).catch(() => '')));
      return files.some((file) => file.includes(text));
    })
    .toBe(true);
}

async function kill({ electron, close }: DevelopedProgram): Promise<void> {
  const main = electron.process();
  const ended = once(main, 'exit');
  main.kill('SIGKILL');
  await ended;
  await close();
}

const field = (page: Page, name: string | RegExp) => page.getByRole('textbox', { name });

async function openNewProject(page: Page): Promise<void> {
  await goTo(page, 'Projects');
  await page.getByRole('link', { name: 'New project' }).click();
  await expect(title(page, 'New project')).toBeVisible();
}

async function openNewContact(page: Page): Promise<void> {
  await goTo(page, 'At the quilter');
  await page.getByRole('button', { name: 'Add a contact' }).first().click();
}

async function openNewFabric(page: Page): Promise<void> {
  await goTo(page, 'Stash');
  await page.getByRole('button', { name: 'Add fabric' }).first().click();
}

test('what was typed in several forms is there again after the program was killed', async () => {
  const user = await mkdtemp(path.join(os.tmpdir(), 'ringbound-user-'));
  await withTemporaryFolder(async (workshop) => {
    const first = await launchProgram({ workshop, user });
    const { page } = first;
    await enterRing(page, 'Harvest round');
    await openNewProject(page);
    await field(page, 'Name').fill('Ring for the hall');
    await field(page, /^Across/).fill('5 x');
    await openNewContact(page);
    await field(page, 'Name').fill('Copper Needle');
    await page.keyboard.press('Escape');
    await openStage(page, 'Harvest round', 'Trim the edge, cut slit and hole');
    await field(page, 'One more thing to check').fill('Ask about the slit');
    await openNewFabric(page);
    await field(page, 'Name').fill('Kettle blue');
    await untilOnDisk(user, 'Kettle blue');
    await kill(first);

    const second = await launchProgram({ workshop, user });
    await openNewProject(second.page);
    await expect(field(second.page, 'Name')).toHaveValue('Ring for the hall');
    await expect(field(second.page, /^Across/)).toHaveValue('5 x');
    await openNewContact(second.page);
    await expect(field(second.page, 'Name')).toHaveValue('Copper Needle');
    await second.page.getByRole('button', { name: 'Discard what you entered' }).click();
    await expect(field(second.page, 'Name')).toHaveValue('');
    await second.page.keyboard.press('Escape');
    await openStage(second.page, 'Harvest round', 'Trim the edge, cut slit and hole');
    await expect(field(second.page, 'One more thing to check')).toHaveValue('Ask about the slit');
    await openNewFabric(second.page);
    await expect(field(second.page, 'Name')).toHaveValue('Kettle blue');
    await second.close();
  });
  await rm(user, { recursive: true, force: true, maxRetries: 10 });
});
