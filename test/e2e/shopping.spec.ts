import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { lengthFromInches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { goTo, mainAction, openProject, title } from '#test/helpers/notebook-steps';
import { axeFaults } from './axe-faults';

const DAY = '2027-02-28';

/** A ring with a saved backing. */
async function ringWithBacking(page: Page): Promise<void> {
  const plans = await askStore(page, 'stage-plan:list', {});
  const stagePlanId = plans.find(({ name }) => name === 'Tree skirt, closed ring')?.id;
  if (stagePlanId === undefined) throw new Error('No plan for a ring');
  const inches = lengthFromInches;
  const { projectId } = await askStore(page, 'project:create', {
    stagePlanId,
    details: {
      name: 'Harvest round',
      purpose: 'own',
      forWhom: '',
      dueOn: null,
      settingChanges: {},
      notes: '',
      outline: { shape: 'circle', diameter: inches(50) },
      hole: { diameter: inches(6) },
      hasSlit: false,
    },
  });
  const { stages } = await askStore(page, 'project:open', { projectId });
  const stageId = stages.find(({ kind }) => kind === 'longarm')?.id;
  if (stageId === undefined) throw new Error('No quilting stage');
  await askStore(page, 'calculation:save', { stageId, calculator: 'backing', ownInput: {} });
}

test('an item bought goes into the stash and the ledger, and can be undone after a restart', async () => {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'ringbound-shopping-'));
  const workshop = path.join(folder, 'workshop');
  const first = await launchProgram({ workshop });
  await expect(first.page.getByRole('button', { name: 'Start my notebook' })).toBeVisible();
  await ringWithBacking(first.page);
  await goTo(first.page, 'Shopping');
  await expect(first.page.getByText('3 1/2 yd', { exact: true })).toBeVisible();
  await mainAction(first.page, 'Add an item').click();
  await first.page.getByRole('textbox', { name: 'What' }).fill('Walking foot needles');
  await first.page.getByRole('textbox', { name: 'What' }).press('Enter');
  await expect(first.page.getByText('Walking foot needles', { exact: true })).toBeVisible();
  for (const colorScheme of ['light', 'dark'] as const) {
    await first.page.emulateMedia({ colorScheme });
    expect(await axeFaults(first.page), colorScheme).toEqual([]);
  }
  await first.page.getByRole('button', { name: 'Bought: Backing' }).click();
  await first.page.getByRole('textbox', { name: 'Name' }).fill('Plain ecru');
  await first.page.getByRole('textbox', { name: 'What it cost' }).fill('31.50');
  expect(await axeFaults(first.page), 'the dialog').toEqual([]);
  await first.page.getByRole('button', { name: 'Save' }).click();
  await expect(first.page.getByRole('dialog')).toBeHidden();
  await expect(first.page.getByText('3 1/2 yd', { exact: true })).toBeHidden();
  await expect(first.page.getByText('Walking foot needles', { exact: true })).toBeVisible();
  await first.close();

  const second = await launchProgram({ workshop });
  await goTo(second.page, 'Stash');
  await second.page.getByRole('link', { name: 'Plain ecru' }).click();
  await expect(
    second.page
      .getByRole('region', { name: 'Pieces of this fabric' })
      .getByRole('link', { name: 'Harvest round' }),
  ).toBeVisible();
  await expect(second.page.getByText('$31.50').first()).toBeVisible();
  await second.page.keyboard.press('Control+z');
  await goTo(second.page, 'Shopping');
  await expect(second.page.getByText('3 1/2 yd', { exact: true })).toBeVisible();
  await goTo(second.page, 'Stash');
  await expect(second.page.getByText('No fabrics yet')).toBeVisible();
  await second.close();
  await rm(folder, { recursive: true, force: true });
});

test('from a project the maker looks for fabric that fits, and sets the best aside with Enter', async () => {
  const { page, close } = await launchProgram();
  await expect(page.getByRole('button', { name: 'Start my notebook' })).toBeVisible();
  await ringWithBacking(page);
  for (const [name, length] of [
    ['Long bolt', 300],
    ['Just right', 120],
    ['Scrap', 60],
  ] as const) {
    const inches = lengthFromInches;
    const { fabricId } = await askStore(page, 'fabric:create', {
      details: {
        name,
        print: '',
        colorWords: '',
        fiber: '',
        direction: 'any',
        width: inches(42),
        isWashed: false,
        supplier: '',
        place: 'Shelf 3',
        swatch: '#88aa99',
        notes: '',
      },
    });
    const size = { width: inches(42), length: inches(length) };
    await askStore(page, 'ledger:buy', {
      fabricId,
      kind: 'yardage',
      size,
      costMinor: 0,
      note: '',
      on: DAY as never,
    });
  }
  await openProject(page, 'Harvest round');
  await page.getByRole('link', { name: 'What to buy for it' }).click();
  await expect(title(page, 'Shopping')).toBeVisible();
  await page.getByRole('button', { name: 'Which fabric fits: Backing for Harvest round' }).click();
  const dialog = page.getByRole('dialog', { name: 'Which fabric fits Backing' });
  await expect(dialog.getByRole('radio').first()).toBeChecked();
  await expect(dialog.getByText('Just right')).toBeVisible();
  await expect(dialog.getByText('Short by', { exact: false })).toHaveCount(1);
  expect(await axeFaults(page)).toEqual([]);
  await dialog.getByRole('textbox', { name: 'Find the fabric' }).press('Enter');
  await expect(dialog).toBeHidden();
  await expect(page.getByText('Nothing to buy')).toBeVisible();
  await openProject(page, 'Harvest round');
  await expect(page.getByRole('listitem').filter({ hasText: 'Just right' })).toContainText('set aside');
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('listitem').filter({ hasText: 'Just right' })).toHaveCount(0);
  await close();
});
