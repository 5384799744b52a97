import { expect, test } from '@playwright/test';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { askStore } from '#test/helpers/ask-store';
import { fillCuttingNotebook, RING } from '#test/helpers/cutting-notebook';
import { press, tabTo, type } from '#test/helpers/keys';
import { launchProgram } from '#test/helpers/launch';
import { title } from '#test/helpers/notebook-steps';

test('the cutting is planned, compared, saved, bought for, checked off and undone with the keyboard alone', async () => {
  const { page, close } = await launchProgram();
  await fillCuttingNotebook(page);
  await askStore(page, 'project:create', {
    details: { ...RING, name: 'Sill runner' },
    stagePlanId: STARTING_PLANS[0]!.id,
  });
  // The page does not notice changes made through the store directly, so it is read again.
  await page.reload();
  const button = (name: string | RegExp) => page.getByRole('button', { name });
  const plan = page.getByRole('region', { name: 'The plan' });
  const drawing = page.getByRole('group', { name: /^Kettle blue, yardage.*arrow keys/ });
  const caption = page.locator('figcaption').filter({ hasText: 'from the near end' });
  await test.step('open the page', async () => {
    await press(page, page.getByRole('navigation').getByRole('link', { name: 'Projects' }));
    await expect(title(page, 'Projects')).toBeFocused();
    await press(page, page.getByRole('link', { name: 'Autumn ring' }));
    await expect(title(page, 'Autumn ring')).toBeFocused();
    await press(page, page.getByRole('link', { name: 'Plan the cutting' }));
    await expect(title(page, 'Plan the cutting')).toBeFocused();
  });
  await test.step('choose patches', async () => {
    const list = page.getByRole('checkbox', { name: /^The whole top/ });
    await expect(list).toBeChecked();
    await press(page, list, 'Space');
    await expect(page.getByText('Nothing to cut yet')).toBeVisible();
    await page.keyboard.press('Space');
    await expect(list).toBeChecked();
    await press(page, button('Add patches by hand'));
    await expect(page.getByRole('dialog')).toBeVisible();
    await type(page, 'Across the fabric', '4 3/8');
    await type(page, 'Along the fabric', '5 7/8');
    await type(page, 'How many', '23');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('dialog')).toBeHidden();
    await expect(button('Add patches by hand')).toBeFocused();
    await expect(button(/^Change [A-Z], 23 of /)).toBeVisible();
  });
  await test.step('cut for another project too, and leave it out again', async () => {
    const other = page.getByRole('heading', { name: 'Sill runner' });
    await press(page, button('Cut for another project too'));
    const dialog = page.getByRole('dialog');
    await press(page, dialog.getByRole('radio', { name: 'Sill runner' }), 'Space');
    await expect(dialog.getByRole('status')).toBeVisible();
    await press(page, dialog.getByRole('button', { name: 'Add project' }));
    await expect(dialog).toBeHidden();
    await expect(button('Cut for another project too')).toBeFocused();
    await expect(other).toBeVisible();
    await press(page, button('Add patches by hand'));
    await tabTo(page, dialog.getByRole('combobox', { name: 'Project' }));
    await page.keyboard.press('ArrowDown');
    await tabTo(page, dialog.getByRole('combobox', { name: 'Fabric' }));
    await page.keyboard.type('Sill linen');
    await type(page, 'Across the fabric', '6');
    await type(page, 'Along the fabric', '9');
    await type(page, 'How many', '4');
    await page.keyboard.press('Enter');
    await expect(dialog).toBeHidden();
    await expect(plan.getByRole('group', { name: /^Sill linen, to buy.*: 4 patches/ })).toBeVisible();
    await press(page, button('Leave out'));
    await expect(other).toHaveCount(0);
    await expect(plan.getByRole('group', { name: /^Sill linen/ })).toHaveCount(0);
  });
  await test.step('choose the fabric', async () => {
    await press(page, button('Choose the fabric for Dark'));
    const dialog = page.getByRole('dialog');
    await expect(dialog.getByRole('textbox', { name: 'Find the fabric' })).toBeFocused();
    await page.keyboard.type('kettle');
    await press(page, dialog.getByRole('radio', { name: /Kettle blue/ }), 'Space');
    await press(page, dialog.getByRole('button', { name: 'Cut from this fabric' }));
    await expect(dialog).toBeHidden();
    await expect(button('Choose the fabric for Dark')).toBeFocused();
    await expect(drawing).toBeVisible();
  });
  await test.step('search longer, stop, and compare', async () => {
    await press(page, button('Search 10 more seconds'));
    await expect(button('Stop')).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(plan.getByText(/^Searched for/)).toBeVisible();
    await expect(button('Search 10 more seconds')).toBeFocused();
    await press(page, button('Compare with buying it all new'));
    await expect(page.getByRole('columnheader', { name: 'All bought new' })).toBeVisible();
    await expect(button('Close the comparison')).toBeFocused();
    await tabTo(page, plan.getByRole('radio', { checked: true }));
    // The planner decides which of the two is chosen at first.
    for (const name of [/^Least fabric/, /^Simplest cuts/]) {
      const radio = plan.getByRole('radio', { name });
      if (!(await radio.isChecked())) await page.keyboard.press('ArrowDown');
      await expect(radio).toBeChecked();
    }
  });
  await test.step('see where a patch goes', async () => {
    await tabTo(page, drawing);
    await page.keyboard.press('ArrowRight');
    await expect(caption).toHaveText(/for (“The whole top” of )?Autumn ring, Dark: strip 1/);
    const first = await caption.textContent();
    await page.keyboard.press('ArrowDown');
    await expect(caption).not.toHaveText(first ?? '');
    await page.keyboard.press('Home');
    await expect(caption).toHaveText(first ?? '');
  });
  await test.step('save the plan and record what was bought', async () => {
    await page.keyboard.press('Control+Enter');
    await expect(title(page, 'Cut by the plan')).toBeFocused();
    const toBuy = page.getByRole('region', { name: 'To buy' });
    const lines = toBuy.getByRole('listitem');
    const before = await lines.count();
    expect(before).toBeGreaterThan(0);
    await press(page, toBuy.getByRole('button', { name: /^Record as bought/ }).first());
    await expect(lines).toHaveCount(before - 1);
    await page.keyboard.press('Control+z');
    await expect(lines).toHaveCount(before);
    await expect(page.getByText('Out of date')).toHaveCount(0);
  });
  await test.step('check off cuts, and undo one', async () => {
    const firstCut = page.getByRole('checkbox', { name: 'Kettle blue, step 1', exact: true });
    await press(page, firstCut, 'Space');
    await expect(firstCut).toBeChecked();
    await expect(firstCut).toBeFocused();
    await expect(button('Check off step 2 of Kettle blue')).toBeEnabled();
    await page.keyboard.press('Control+Enter');
    await expect(page.getByText(/^2 of/)).toBeVisible();
    await page.keyboard.press('Control+z');
    await expect(page.getByText(/^1 of/)).toBeVisible();
  });
  await test.step('lock what is cut and plan the rest again', async () => {
    await press(page, button('Change the plan'));
    await expect(title(page, 'Plan the cutting')).toBeFocused();
    await press(page, button('Leave this piece of Kettle blue alone'));
    await expect(drawing).toBeVisible();
    await page.keyboard.press('Control+Enter');
    await expect(title(page, 'Cut by the plan')).toBeFocused();
    await expect(page.getByText(/^1 of/)).toBeVisible();
  });
  await close();
});
