import { expect, test } from '@playwright/test';
import { lengthFromInches as inches } from '#core/units/length';
import { calendarDate } from '#core/units/calendar-date';
import { askStore } from '#test/helpers/ask-store';
import { BLUE, fillCuttingNotebook } from '#test/helpers/cutting-notebook';
import { launchProgram } from '#test/helpers/launch';
import { title } from '#test/helpers/notebook-steps';
import { axeFaults } from './axe-faults';

test('a pack counted in sheets is chosen, planned, drawn, checked off and undone', async () => {
  const { page, close } = await launchProgram();
  const { projectId } = await fillCuttingNotebook(page);
  const { fabricId } = await askStore(page, 'fabric:create', { details: { ...BLUE, name: 'Meadow mix' } });
  await askStore(page, 'ledger:buy', {
    fabricId,
    kind: 'precut-squares',
    unitLength: inches(10),
    costMinor: 4200,
    note: '',
    size: { width: inches(10), length: inches(420) },
    on: calendarDate('2027-02-28'),
  });
  const pieces = async () => {
    const { pieces: all } = await askStore(page, 'fabric:open', { fabricId });
    return all.map(({ kind, there, unitLength }) => [kind, there / inches(1), (unitLength ?? 0) / inches(1)]);
  };
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, `#/projects/${projectId}/cutting`);
  await expect(title(page, 'Plan the cutting')).toBeVisible();
  const what = page.getByRole('region', { name: 'What to cut' });
  await what.getByRole('button', { name: 'Choose the fabric for Dark' }).click();
  await page.getByRole('radio', { name: /Meadow mix/ }).check();
  await page.getByRole('button', { name: 'Cut from this fabric' }).click();
  await expect(what.getByText('1 piece may be cut')).toBeVisible();
  await what.getByText('1 piece may be cut').click();
  await expect(what.getByRole('checkbox', { name: 'Precut squares, 42 of 10 × 10 in' })).toBeChecked();
  const plan = page.getByRole('region', { name: 'The plan' });
  const drawn = plan.getByRole('group', { name: /^Meadow mix, precut squares, \d+ of 10 × 10 in/ }).first();
  await expect(drawn).toBeVisible();
  await expect(plan.getByText(/Searched for|Everything worth trying/)).toBeVisible();
  await page.getByRole('button', { name: 'Save this plan' }).click();
  await expect(title(page, 'Cut by the plan')).toBeVisible();
  const first = page.getByRole('checkbox', { name: 'Meadow mix, step 1', exact: true });
  await expect(first).toHaveAccessibleDescription(/^Take 4 from the pack and stack them\./);
  await first.click();
  await expect(page.getByText(/^1 of/)).toBeVisible();
  expect((await pieces())[0]).toEqual(['precut-squares', 380, 10]);
  await expect(page.getByText('Out of date')).toHaveCount(0);
  expect(await axeFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Change the plan' }).click();
  await expect(drawn).toBeVisible();
  await page.getByRole('button', { name: 'Save this plan' }).click();
  await expect(page.getByText(/^1 of/)).toBeVisible();
  await first.click();
  await expect(page.getByText(/^0 of/)).toBeVisible();
  expect(await pieces()).toEqual([['precut-squares', 420, 10]]);
  await close();
});
