import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { lengthFromInches as inches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { fillCuttingNotebook } from '#test/helpers/cutting-notebook';
import { launchProgram } from '#test/helpers/launch';
import { goTo, title } from '#test/helpers/notebook-steps';
import { readPdf } from '#test/helpers/read-pdf';
import { axeFaults } from './axe-faults';

async function openPlan(page: Page, projectId: string, heading = 'Plan the cutting'): Promise<void> {
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, `#/projects/${projectId}/cutting`);
  await expect(title(page, heading)).toBeVisible();
}

test('the patches of a project are planned in their own thread, as they change', async () => {
  const { page, close } = await launchProgram();
  const refused: string[] = [];
  page.on('console', (message) => {
    if (/Content Security Policy|TrustedScript/i.test(message.text())) refused.push(message.text());
  });
  const { projectId } = await fillCuttingNotebook(page);
  await openPlan(page, projectId);
  const plan = page.getByRole('region', { name: 'The plan' });
  await expect(plan.getByRole('radio')).toHaveCount(2);
  expect(page.workers()).toHaveLength(1);
  await expect(plan.getByText(/Searched for|Everything worth trying/)).toBeVisible();
  const what = page.getByRole('region', { name: 'What to cut' });
  await what
    .getByRole('button', { name: /Choose the fabric for/ })
    .first()
    .click();
  await page.getByRole('radio', { name: /Kettle blue/ }).check();
  await page.getByRole('button', { name: 'Cut from this fabric' }).click();
  await expect(plan.getByText(/Kettle blue, yardage/)).toBeVisible();
  expect(await axeFaults(page)).toEqual([]);
  expect(refused).toEqual([]);
  await close();
});

test('the patches may change while the planner searches, and patches that fit no fabric are named with what would help', async () => {
  const { page, close } = await launchProgram();
  const { projectId } = await fillCuttingNotebook(page);
  await openPlan(page, projectId);
  const plan = page.getByRole('region', { name: 'The plan' });
  const button = (name: string) => page.getByRole('button', { name });
  const add = async (across: string, along: string, count: string, mayTurn: boolean) => {
    await button('Add patches by hand').click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('textbox', { name: 'Across the fabric' }).fill(across);
    await dialog.getByRole('textbox', { name: 'Along the fabric' }).fill(along);
    await dialog.getByRole('textbox', { name: 'How many' }).fill(count);
    if (!mayTurn) await dialog.getByRole('checkbox', { name: 'OK to turn these sideways' }).uncheck();
    await dialog.getByRole('button', { name: 'Save' }).click();
    await expect(dialog).toBeHidden();
  };
  await add('4 3/8', '5 7/8', '23', true);
  await expect(plan.getByText(/148 patches/).first()).toBeVisible();
  await button('Search 10 more seconds').click();
  // The search may take ten seconds; a change in the meantime is planned at once.
  await add('50', '20', '1', false);
  const cannot = plan.getByRole('note').filter({ hasText: 'Can’t be cut' });
  await expect(cannot).toContainText(
    'wider than any of its fabric. Let it be turned sideways, piece it from two or choose fabric',
  );
  await button('Search 10 more seconds').click();
  await button('Table and leftovers').click();
  await button('Move up: Make few cuts').click();
  await page.getByRole('textbox', { name: 'Ruler' }).fill('12');
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await expect(plan.getByText(/the longest cut takes \d+ lengths of the ruler/).first()).toBeVisible();
  await button('Search 10 more seconds').click();
  await button('Stop').click();
  await expect(plan.getByText(/^Searched for/)).toBeVisible();
  await close();
});

test('from an empty workshop: patches, a plan, recorded cuts, leftovers in the stash, and all of it after a restart', async () => {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'ringbound-test-'));
  const first = await launchProgram({ workshop: folder });
  const { page } = first;
  const { projectId, fabricId } = await fillCuttingNotebook(page);
  await openPlan(page, projectId);
  const what = page.getByRole('region', { name: 'What to cut' });
  await what.getByRole('button', { name: 'Choose the fabric for Dark' }).click();
  await page.getByRole('radio', { name: /Kettle blue/ }).check();
  await page.getByRole('button', { name: 'Cut from this fabric' }).click();
  const plan = page.getByRole('region', { name: 'The plan' });
  await expect(plan.getByText(/Kettle blue, yardage/)).toBeVisible();
  await expect(plan.getByText(/Searched for|Everything worth trying/)).toBeVisible();
  await page.getByRole('button', { name: 'Save this plan' }).click();
  await expect(title(page, 'Cut by the plan')).toBeVisible();
  const firstCut = page.getByRole('checkbox', { name: 'Kettle blue, step 1', exact: true });
  await firstCut.focus();
  await page.keyboard.press('Space');
  await expect(firstCut).toBeChecked();
  await page.getByRole('button', { name: 'Check off step 2 of Kettle blue' }).click();
  await expect(page.getByText(/^2 of/)).toBeVisible();
  expect(await axeFaults(page)).toEqual([]);
  await first.close();
  const again = await launchProgram({ workshop: folder });
  await openPlan(again.page, projectId, 'Cut by the plan');
  await expect(again.page.getByText(/^2 of/)).toBeVisible();
  const pieces = async () => {
    const { pieces: all } = await askStore(again.page, 'fabric:open', { fabricId });
    return all.map(({ kind, width, there }) => [kind, width, there]);
  };
  expect(await pieces()).toEqual([['yardage', inches(42), inches(54 - 7.5)]]);
  for (let step = 3; step <= 11; step += 1) {
    await again.page.getByRole('button', { name: `Check off step ${String(step)} of Kettle blue` }).click();
    await expect(again.page.getByText(new RegExp(`^${String(step)} of`))).toBeVisible();
  }
  await goTo(again.page, 'Stash');
  await again.page.getByRole('link', { name: 'Kettle blue' }).first().click();
  await expect(again.page.getByRole('img', { name: 'Leftover, 24½ × 3½ in, to scale' })).toBeVisible();
  expect(await pieces()).toEqual([
    ['yardage', inches(42), inches(54 - 39)],
    ['leftover', inches(24.5), inches(3.5)],
  ]);
  await openPlan(again.page, projectId, 'Cut by the plan');
  await again.page.getByRole('checkbox', { name: 'Kettle blue, step 11' }).click();
  await expect(again.page.getByText(/^10 of/)).toBeVisible();
  expect(await pieces()).toEqual([['yardage', inches(42), inches(54 - 35.5)]]);
  await again.page.getByRole('button', { name: 'Undo' }).click();
  await expect(again.page.getByText(/^11 of/)).toBeVisible();
  const file = path.join(folder, 'plan.pdf');
  await again.electron.evaluate(({ dialog }, filePath) => {
    dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath });
  }, file);
  await again.page.getByRole('button', { name: 'Print the plan' }).click();
  await expect.poll(async () => (await readPdf(file).catch(() => [])).length).toBeGreaterThan(0);
  await again.close();
  await rm(folder, { recursive: true, force: true });
});
