import { expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { goTo, openPiece, stageRow, title } from '#test/helpers/notebook-steps';
import { writeDownTops } from '#test/helpers/tops';
import { axeFaults } from './axe-faults';

test('pieces are moved on the board by keys and by dragging, a closed gate stops them, and what was done is listed and taken back', async () => {
  const { page, close } = await launchProgram();
  await writeDownTops(page, ['Alder throw', 'Birch throw']);
  const column = (name: string) => page.getByRole('region', { name, exact: true });
  await test.step('open it from the bench', async () => {
    await page.getByRole('main').getByRole('link', { name: 'Board' }).click();
    await expect(title(page, 'Board')).toBeFocused();
    await expect(column('Quilting, sent out').getByRole('listitem')).toHaveCount(2);
    expect(await axeFaults(page)).toEqual([]);
  });
  await test.step('back and on by keys, the focus stays with the piece', async () => {
    const alder = page.getByRole('link', { name: 'Alder throw' });
    await alder.focus();
    await page.keyboard.press('Alt+ArrowLeft');
    await expect(column('Piecing').getByRole('link', { name: 'Alder throw' })).toBeFocused();
    await page.keyboard.press('Alt+ArrowRight');
    await expect(column('Quilting, sent out').getByRole('link', { name: 'Alder throw' })).toBeFocused();
  });
  await test.step('drag one to the binding', async () => {
    const card = column('Quilting, sent out').getByRole('listitem').filter({ hasText: 'Birch throw' });
    await card.dragTo(column('Outer binding'));
    await expect(column('Outer binding').getByRole('link', { name: 'Birch throw' })).toBeVisible();
    await expect(
      page.getByRole('status').filter({ hasText: 'Moved “Birch throw” to “Bind the outside”' }),
    ).toBeVisible();
  });
  await test.step('its gate is open, so it goes no further', async () => {
    await page.getByRole('button', { name: 'Birch throw on to Finish by hand' }).click();
    await expect(
      page.getByRole('alert').filter({ hasText: 'Quilting finished and ends secured' }),
    ).toBeVisible();
    await expect(column('Outer binding').getByRole('link', { name: 'Birch throw' })).toBeVisible();
  });
  await test.step('what was done, and back to before it', async () => {
    await page.getByRole('button', { name: 'What was done' }).click();
    const dialog = page.getByRole('dialog', { name: 'What was done' });
    await expect(dialog.getByText('Moved “Birch throw” to “Bind the outside”')).toBeVisible();
    await dialog
      .getByRole('button', { name: 'Take back to here: Moved “Birch throw” to “Bind the outside”' })
      .click();
    await expect(dialog.getByRole('region', { name: 'Taken back' })).toContainText('Birch throw');
    expect(await axeFaults(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect(column('Quilting, sent out').getByRole('link', { name: 'Birch throw' })).toBeVisible();
  });
  await close();
});

test('a running piece follows another plan and keeps what was recorded of it', async () => {
  const { page, close } = await launchProgram();
  await writeDownTops(page, ['Alder throw']);
  await goTo(page, 'Bench');
  await openPiece(page, 'Alder throw');
  await page.getByRole('button', { name: 'Follow another plan' }).click();
  const dialog = page.getByRole('dialog', { name: 'Follow another plan' });
  await dialog.getByRole('radio', { name: /^Runner/ }).check();
  await test.step('what it would change is said before it is followed', async () => {
    const foreseen = dialog.getByRole('region', { name: 'What would change' });
    const of = (words: string) => foreseen.locator('dt', { hasText: words }).locator('+ dd');
    await expect(of('Stays, with all that is recorded')).toContainText('Piece the top');
    await expect(of('New')).toContainText('Quilt at home');
    await expect(of('Not in the plan, kept in the history')).toContainText('Quilting, sent out');
    expect(await axeFaults(page)).toEqual([]);
  });
  await dialog.getByRole('button', { name: 'Follow this plan' }).click();
  await expect(dialog).toBeHidden();
  await expect(stageRow(page, 'Piece the top')).toContainText('done');
  await expect(stageRow(page, 'Quilting, sent out')).toContainText('skipped');
  await expect(stageRow(page, 'Quilt at home')).toContainText('planned');
  await page.getByRole('button', { name: 'Change the stage Quilt at home' }).click();
  const stage = page.getByRole('dialog', { name: 'Quilt at home' });
  await stage.getByRole('checkbox', { name: /side by side/ }).check();
  await expect(stage.getByRole('checkbox', { name: /side by side/ })).toBeChecked();
  await stage.getByRole('button', { name: 'Close' }).click();
  await expect(stageRow(page, 'Quilt at home')).toContainText('beside the one before');
  await close();
});
