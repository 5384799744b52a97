import { expect, test } from '@playwright/test';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { goTo } from '#test/helpers/notebook-steps';
import { lengthFromInches } from '#core/units/length';

test('a setting is saved when its field is left, and a value that is not allowed is reported at the field', async () => {
  const { page, close } = await launchProgram();
  await goTo(page, 'Workshop');
  const seam = page.getByRole('textbox', { name: 'Seam allowance' });
  await seam.fill('3/8');
  await seam.press('Enter');
  await expect
    .poll(async () => (await askStore(page, 'workshop:opening', {})).workshop.settings.seamAllowance)
    .toBe(lengthFromInches(3 / 8));
  await seam.fill('9 yd');
  await seam.press('Enter');
  await expect(seam).toHaveAttribute('aria-invalid', 'true');
  await expect(seam).toHaveValue('9 yd');
  await page.getByText('Dark (evening light)').click();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await close();
});

test('a stage plan is copied, changed, offered for a new project, and its deletion undone', async () => {
  const { page, close } = await launchProgram();
  await goTo(page, 'Workshop');
  await page.getByRole('button', { name: 'Copy Table topper with a hole' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox', { name: 'Name of the plan' }).fill('Topper with a label');
  await dialog.getByRole('button', { name: 'Add a stage' }).click();
  await dialog.getByRole('textbox', { name: 'Stage 7' }).fill('Sew on the label');
  await dialog.getByRole('button', { name: 'Stage 7 earlier' }).click();
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog).toHaveCount(0);

  const plans = page.getByRole('region', { name: 'Stage plans' });
  await expect(plans.getByText('Sew on the label, Finish by hand')).toBeVisible();
  await goTo(page, 'Projects');
  await page.getByRole('link', { name: 'New project' }).click();
  await page.getByRole('checkbox', { name: 'It has a hole in the middle' }).check();
  await expect(page.getByRole('radio', { name: /Topper with a label/ })).toBeVisible();

  await goTo(page, 'Workshop');
  await plans.getByRole('button', { name: 'Delete Topper with a label' }).click();
  await expect(plans.getByText('Topper with a label')).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(plans.getByText('Topper with a label')).toBeVisible();
  await close();
});
