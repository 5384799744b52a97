import { expect, type Page, test } from '@playwright/test';
import { askStore } from '#test/helpers/ask-store';
import { fillCuttingNotebook } from '#test/helpers/cutting-notebook';
import { launchProgram } from '#test/helpers/launch';
import { title } from '#test/helpers/notebook-steps';
import { axeFaults } from './axe-faults';

const LIST = `Lantern Street
Finished size: 54" x 66"
Fabric requirements
Pebble Dot: 1 5/8 yd
Salt White (1 yd)
Cutting
From the Pebble Dot cut (3) strips 2 1/2 in x width of fabric; subcut into (48) 2 1/2 in squares
From the Salt White cut (12) 3 7/8 in squares; cut once on the diagonal to make (24) half-square triangles
Set the rest aside for 2 or 3 flowers`;

const go = (page: Page, hash: string) =>
  page.evaluate((to) => {
    window.location.hash = to;
  }, `#${hash}`);

test('a cutting list is pasted on the piecing stage, mended, and cut from the cutting page', async () => {
  const { page, close } = await launchProgram();
  const { projectId } = await fillCuttingNotebook(page);
  const { stages } = await askStore(page, 'project:open', { projectId });
  const piecing = stages.find(({ kind }) => kind === 'piecing');
  await go(page, `/projects/${projectId}/stages/${piecing?.id ?? ''}`);
  await page.getByRole('link', { name: 'Paste a cutting list' }).click();
  await expect(title(page, 'Pattern')).toBeVisible();
  await page.getByRole('textbox', { name: 'Cutting list' }).fill(LIST);
  await expect(page.getByRole('status').filter({ hasText: 'lines' })).toContainText('2 lines need a look');
  expect(await axeFaults(page)).toEqual([]);
  await page.getByRole('button', { name: /^Leave out “Set the rest/u }).click();
  await page.getByRole('button', { name: /^Mend “Lantern/u }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Cancel' }).click();
  await page.getByRole('button', { name: /^Leave out “Lantern/u }).click();
  await page.getByRole('button', { name: 'Save the pattern' }).click();
  await expect(page.getByText('Saved the pattern of')).toBeVisible();
  await go(page, `/projects/${projectId}/cutting`);
  await expect(page.getByText('Pebble Dot').first()).toBeVisible();
  await close();
});
