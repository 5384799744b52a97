import { expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { axeFaults } from './axe-faults';
import { openStage, title, enterRing } from '#test/helpers/notebook-steps';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';

test('an empty notebook offers two ways to start, and all its pages pass the accessibility checks', async () => {
  const { page, close } = await launchProgram();
  await expect(page.getByRole('button', { name: 'Look around the demo workshop' })).toBeVisible();
  expect(await axeFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Start my notebook' }).click();
  expect(await axeFaults(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Start my notebook' })).toBeFocused();
  await enterRing(page, 'Harvest round');
  expect(await axeFaults(page)).toEqual([]);
  for (const place of ['Bench', 'Projects', 'Stash', 'Workshop']) {
    await page.getByRole('navigation').getByRole('link', { name: place }).click();
    await expect(title(page, place)).toBeFocused();
    expect(await axeFaults(page), place).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await axeFaults(page), `${place}, dark`).toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
  }
  await close();
});

test('a length that cannot be read stays as typed, stops the project from being saved, and shows how to write it', async () => {
  const { page, close } = await launchProgram();
  await page.getByRole('link', { name: 'Projects' }).click();
  await page.getByRole('link', { name: 'New project' }).click();
  await page.getByRole('textbox', { name: 'Name' }).fill('Unmeasured');
  const across = page.getByRole('textbox', { name: 'Across' });
  await across.fill('about a yard');
  await page.getByRole('button', { name: 'Start this project' }).click();
  await expect(across).toBeFocused();
  await expect(across).toHaveValue('about a yard');
  await expect(across).toHaveAccessibleDescription(/“about a yard”.*Write it like/);
  await page.getByRole('navigation').getByRole('link', { name: 'Bench' }).click();
  await page.getByRole('link', { name: 'Projects' }).click();
  await page.getByRole('link', { name: 'New project' }).click();
  await expect(page.getByRole('textbox', { name: 'Name' })).toHaveValue('Unmeasured');
  await close();
});

test('keys undo and redo the last change, but in a text field they belong to the field', async () => {
  const { page, close } = await launchProgram();
  await enterRing(page, 'Harvest round');
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(title(page, 'Projects')).toBeFocused();
  const row = page.getByRole('link', { name: 'Harvest round' });
  await expect(row).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(row).toHaveCount(1);
  await page.keyboard.press('Control+Shift+z');
  await expect(row).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(row).toHaveCount(1);
  const find = page.getByRole('textbox', { name: 'Find' });
  await find.pressSequentially('harv');
  await expect(find).toBeFocused();
  await expect(find).toHaveValue('harv');
  await page.keyboard.press('Control+z');
  await expect(row).toHaveCount(1);
  await close();
});

test('keys alone move through the stages of a project and reorder them', async () => {
  const { page, close } = await launchProgram();
  await enterRing(page, 'Harvest round');
  const stages = page.getByRole('region', { name: 'What is next' }).getByRole('listitem').getByRole('link');
  const first = await stages.nth(0).textContent();
  const second = await stages.nth(1).textContent();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('button', { name: 'The top is done' })).toBeVisible();
  await stages.nth(0).focus();
  await page.keyboard.press('Alt+ArrowDown');
  await expect(stages.nth(1)).toHaveText(first ?? '');
  await expect(stages.nth(1)).toBeFocused();
  await page.keyboard.press('Alt+ArrowUp');
  await expect(stages.nth(1)).toHaveText(second ?? '');
  await expect(page.getByRole('img', { name: /Now: .*, in progress\./ })).toBeVisible();
  await close();
});

test('the last typed words are saved when the window closes with the caret still in the field', async () => {
  await withTemporaryFolder(async (workshop) => {
    const first = await launchProgram({ workshop });
    await enterRing(first.page, 'Harvest round');
    await openStage(first.page, 'Harvest round', 'Piece the top');
    await first.page.getByRole('textbox', { name: 'Notes' }).fill('Rust ones first');
    await first.close();
    const second = await launchProgram({ workshop });
    await openStage(second.page, 'Harvest round', 'Piece the top');
    await expect(second.page.getByRole('textbox', { name: 'Notes' })).toHaveValue('Rust ones first');
    await second.close();
  });
});

test('recording a cut from an empty stash offers to add the first fabric', async () => {
  const { page, close } = await launchProgram();
  await enterRing(page, 'Harvest round');
  await openStage(page, 'Harvest round', 'Piece the top');
  await page.getByRole('button', { name: 'Record a cut' }).click();
  await page.getByRole('dialog').getByRole('link', { name: 'Add fabric' }).click();
  await expect(page.getByRole('dialog', { name: 'Add fabric' })).toBeVisible();
  await close();
});
