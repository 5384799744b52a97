import { expect, type Page, test } from '@playwright/test';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { goTo } from '#test/helpers/notebook-steps';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import { axeFaults } from './axe-faults';

async function addFabric(page: Page, name: string, colorWords: string, inches: number): Promise<void> {
  const width = lengthFromInches(42);
  const none = { print: '', fiber: '', supplier: '', place: '', notes: '' };
  const details = { ...none, name, colorWords, direction: 'any', width, isWashed: true, swatch: '#4b6a88' };
  const { fabricId } = await askStore(page, 'fabric:create', { details: details as never });
  await askStore(page, 'ledger:buy', {
    fabricId,
    kind: 'yardage',
    size: { width, length: lengthFromInches(inches) },
    costMinor: 1_200,
    on: calendarDate('2026-02-01'),
    note: '',
  });
}

async function expectNoFaults(page: Page, where: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await axeFaults(page), `${where}, ${colorScheme}`).toEqual([]);
  }
}

test('a search with filters and groups is saved by name, and opened by its shortcut after a restart', async () => {
  test.slow();
  await withTemporaryFolder(async (workshop) => {
    const first = await launchProgram({ workshop });
    const { page } = first;
    await addFabric(page, 'Kettle blue', 'deep blue', 36);
    await addFabric(page, 'Kettle red', 'brick red', 9);
    await goTo(page, 'Stash');
    await page.getByRole('textbox', { name: 'Find' }).fill('kettle');
    await expect(page.getByText('2 fabrics found')).toBeVisible();
    await page.getByRole('button', { name: 'Filters' }).click();
    await page.getByRole('textbox', { name: 'Free in one piece' }).fill('18 in');
    await page.getByRole('textbox', { name: 'Free in one piece' }).press('Enter');
    await expect(page.getByText('1 fabric found')).toBeVisible();
    await page.getByRole('combobox', { name: 'Groups' }).selectOption('By color');
    const heading = page.getByRole('button', { name: /^Blue 1 fabric$/ });
    await expect(heading).toBeVisible();
    await heading.focus();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('link', { name: 'Kettle blue' })).toHaveCount(0);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('link', { name: 'Kettle blue' })).toBeVisible();
    await page.getByRole('button', { name: 'Save this search' }).click();
    await page.getByRole('dialog').getByRole('textbox', { name: 'Name' }).fill('Kettles by the half yard');
    await page.keyboard.press('Enter');
    const saved = page.getByRole('button', { name: 'Kettles by the half yard', exact: true });
    await expect(saved).toHaveAttribute('aria-pressed', 'true');
    await expectNoFaults(page, 'stash');
    await page.getByRole('link', { name: 'Stash in numbers' }).click();
    await expect(page.getByRole('figure', { name: 'Bought and used' })).toBeVisible();
    await expectNoFaults(page, 'stash in numbers');
    await first.close();

    const second = await launchProgram({ workshop });
    await goTo(second.page, 'Stash');
    await expect(second.page.getByText('2 fabrics', { exact: true })).toBeVisible();
    await expect(second.page.getByRole('button', { name: 'Kettles by the half yard' })).toBeVisible();
    await second.page.keyboard.press('Alt+1');
    await expect(second.page.getByRole('textbox', { name: 'Find' })).toHaveValue('kettle');
    await expect(second.page.getByRole('button', { name: /^Blue 1 fabric$/ })).toBeVisible();
    await expect(second.page.getByText('1 fabric found')).toBeVisible();
    await second.close();
  });
});
