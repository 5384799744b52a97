import { expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { goTo, openProject, stageRow, title } from '#test/helpers/notebook-steps';
import { writeDownTops } from '#test/helpers/tops';
import { axeFaults } from './axe-faults';

test('a project moves along its line by keys, by buttons and by sliding the needle; an open checklist stops it, and History takes it back', async () => {
  const { page, close } = await launchProgram();
  await writeDownTops(page, ['Alder throw', 'Birch throw']);
  const needle = (project: string) => page.getByRole('slider', { name: `Stage of ${project}` });
  const isAt = (project: string, stage: string | RegExp) =>
    expect(needle(project)).toHaveAttribute('aria-valuetext', stage);
  await test.step('open it from the bench', async () => {
    await page.getByRole('main').getByRole('link', { name: 'Line-up' }).click();
    await expect(title(page, 'Line-up')).toBeFocused();
    await isAt('Alder throw', /^Stage 2 of \d, Quilting, sent out, in progress$/);
    expect(await axeFaults(page)).toEqual([]);
  });
  await test.step('back and on by keys, the focus stays with the needle', async () => {
    await needle('Alder throw').focus();
    await page.keyboard.press('ArrowLeft');
    await isAt('Alder throw', /^Stage 1 of \d, Piece the top, in progress$/);
    await expect(needle('Alder throw')).toBeFocused();
    await page.keyboard.press('ArrowRight');
    await isAt('Alder throw', /^Stage 2 of \d, Quilting, sent out/);
    await expect(needle('Alder throw')).toBeFocused();
  });
  await test.step('slide the other to the binding', async () => {
    const from = (await needle('Birch throw').boundingBox())!;
    const row = page.getByRole('listitem').filter({ has: needle('Birch throw') });
    const to = (await row.getByText('Bind the outside').boundingBox())!;
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(to.x + to.width / 2, from.y + from.height / 2, { steps: 8 });
    await page.mouse.up();
    await isAt('Birch throw', /^Stage 3 of \d, Bind the outside, planned$/);
    await expect(
      page.getByRole('status').filter({ hasText: 'Moved “Birch throw” to “Bind the outside”' }),
    ).toBeVisible();
  });
  await test.step('Escape puts a dragged needle back', async () => {
    const from = (await needle('Birch throw').boundingBox())!;
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(from.x - 150, from.y + from.height / 2, { steps: 4 });
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await isAt('Birch throw', /^Stage 3 of \d, Bind the outside, planned$/);
  });
  await test.step('its checklist is open, so it goes no further, and the way to the checklist is offered', async () => {
    await page.getByRole('button', { name: 'Next stage: Birch throw to Finish by hand' }).click();
    await expect(
      page.getByRole('alert').filter({ hasText: 'Quilting finished and ends secured' }),
    ).toBeVisible();
    await isAt('Birch throw', /^Stage 3 of \d, Bind the outside, planned$/);
    await expect(page.getByRole('link', { name: 'Open “Bind the outside”' })).toBeVisible();
    expect(await axeFaults(page)).toEqual([]);
  });
  await test.step('History, and back to before the move', async () => {
    await page.getByRole('button', { name: 'History' }).click();
    const dialog = page.getByRole('dialog', { name: 'History' });
    await expect(dialog.getByText('Moved “Birch throw” to “Bind the outside”')).toBeVisible();
    await dialog
      .getByRole('button', { name: 'Undo back to here: Moved “Birch throw” to “Bind the outside”' })
      .click();
    await expect(dialog.getByRole('region', { name: 'Undone' })).toContainText('Birch throw');
    expect(await axeFaults(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Close' }).click();
    await isAt('Birch throw', /^Stage 2 of \d, Quilting, sent out/);
  });
  await close();
});

test('a running project follows another plan and keeps what was recorded of it', async () => {
  const { page, close } = await launchProgram();
  await writeDownTops(page, ['Alder throw']);
  await goTo(page, 'Bench');
  await openProject(page, 'Alder throw');
  await page.getByRole('button', { name: 'Switch plan' }).click();
  const dialog = page.getByRole('dialog', { name: 'Switch plan' });
  await dialog.getByRole('radio', { name: /^Runner/ }).check();
  await test.step('what it would change is said before it is followed', async () => {
    const preview = dialog.getByRole('region', { name: 'What would change' });
    const of = (words: string) => preview.locator('dt', { hasText: words }).locator('+ dd');
    await expect(of('Stays, with everything recorded')).toContainText('Piece the top');
    await expect(of('New')).toContainText('Quilt at home');
    await expect(of('Not in the plan; stays because something is recorded')).toContainText(
      'Quilting, sent out',
    );
    expect(await axeFaults(page)).toEqual([]);
  });
  await dialog.getByRole('button', { name: 'Switch to this plan' }).click();
  await expect(dialog).toBeHidden();
  await expect(stageRow(page, 'Piece the top')).toContainText('done');
  await expect(stageRow(page, 'Quilting, sent out')).toContainText('skipped');
  await expect(stageRow(page, 'Quilt at home')).toContainText('planned');
  await page.getByRole('button', { name: 'Change the stage Quilt at home' }).click();
  const stage = page.getByRole('dialog', { name: 'Quilt at home' });
  await stage.getByRole('checkbox', { name: /alongside/ }).check();
  await expect(stage.getByRole('checkbox', { name: /alongside/ })).toBeChecked();
  await stage.getByRole('button', { name: 'Save' }).click();
  await expect(stageRow(page, 'Quilt at home')).toContainText('alongside the one before');
  await close();
});
