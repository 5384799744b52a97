import { expect, test } from '@playwright/test';
import { press, tabTo, type } from '#test/helpers/keys';
import { launchProgram } from '#test/helpers/launch';
import { title } from '#test/helpers/notebook-steps';

test('keys alone start a notebook, add a project, record a cut, and finish and undo a stage', async () => {
  const { page, close } = await launchProgram();
  const status = page.getByRole('status').first();
  await test.step('start the notebook', async () => {
    await press(page, page.getByRole('button', { name: 'Start my notebook' }));
    await type(page, 'Name of the workshop', 'Attic table');
    await page.keyboard.press('Enter');
    await expect(title(page, 'New project')).toBeFocused();
  });
  await test.step('add a ring', async () => {
    await type(page, 'Name', 'Hearth round');
    await tabTo(page, page.getByRole('radio', { name: 'Gift' }));
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('radio', { name: 'Commission' })).toBeChecked();
    await type(page, 'Across', '120 cm');
    await press(page, page.getByRole('checkbox', { name: 'It has a hole in the middle' }), 'Space');
    await type(page, 'Hole across', '6 1/2');
    await press(page, page.getByRole('checkbox', { name: /A slit runs/ }), 'Space');
    await page.keyboard.press('Control+Enter');
    await expect(title(page, 'Hearth round')).toBeFocused();
  });
  await test.step('buy a fabric', async () => {
    await press(page, page.getByRole('link', { name: 'Stash' }));
    await expect(title(page, 'Stash')).toBeFocused();
    await page.keyboard.press('Control+Enter');
    await expect(page.getByRole('dialog').getByRole('textbox', { name: 'Name' })).toBeFocused();
    await page.keyboard.type('Rust stripe');
    await type(page, 'Size', '2 yd');
    await page.keyboard.press('Enter');
    await expect(title(page, 'Rust stripe')).toBeFocused();
    await press(page, page.getByRole('navigation').getByRole('link', { name: 'Bench' }));
    await expect(title(page, 'Bench')).toBeFocused();
    await press(page, page.getByRole('main').getByRole('link', { name: 'Hearth round' }));
    await expect(title(page, 'Hearth round')).toBeFocused();
  });
  await test.step('open its first stage and save an answer', async () => {
    await page.keyboard.press('Control+Enter');
    await expect(page.getByRole('button', { name: 'The top is done' })).toBeVisible();
    await press(page, page.getByRole('main').getByRole('link', { name: 'Piece the top' }));
    await expect(title(page, 'Piece the top')).toBeFocused();
    await press(page, page.getByRole('button', { name: 'Save this answer' }));
    await expect(page.getByText(/^Saved \S+ \S+$/)).toBeVisible();
  });
  await test.step('record a cut', async () => {
    const fabric = page.getByRole('region', { name: 'Fabric' });
    const recordCut = fabric.getByRole('button', { name: 'Record a cut' });
    await press(page, recordCut);
    const dialog = page.getByRole('dialog', { name: 'Record a cut' });
    await expect(dialog.getByRole('textbox', { name: 'Find the fabric' })).toBeFocused();
    await page.keyboard.type('rust');
    await press(page, dialog.getByRole('radio', { name: /Rust stripe/ }), 'Space');
    await type(page, 'How long a cut', '1/4 yd');
    await page.keyboard.press('Enter');
    await expect(dialog).toBeHidden();
    await expect(recordCut).toBeFocused();
    await expect(fabric.getByRole('listitem')).toContainText('9 in cut');
  });
  await test.step('finish the stage, and undo that', async () => {
    await page.keyboard.press('Control+Enter');
    await expect(page.getByRole('link', { name: 'On to “Quilting, sent out”' })).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(status).toHaveText(/^Undone: /);
    await expect(page.getByRole('button', { name: 'The top is done' })).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(page.getByRole('region', { name: 'Fabric' }).getByRole('listitem')).toHaveCount(0);
    await page.keyboard.press('Control+Shift+z');
    await expect(page.getByRole('region', { name: 'Fabric' }).getByRole('listitem')).toContainText(
      '9 in cut',
    );
    await page.keyboard.press('Control+Enter');
    await page.getByRole('link', { name: 'On to “Quilting, sent out”' }).waitFor();
    await page.keyboard.press('Control+Enter');
    await expect(title(page, 'Quilting, sent out')).toBeFocused();
  });
  await close();
});
