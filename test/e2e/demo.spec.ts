import { expect, type Page, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { axeFaults } from './axe-faults';
import { goTo, title } from '#test/helpers/notebook-steps';

async function enterDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Look round the demo workshop' }).click();
  await expect(title(page, 'Bench')).toBeVisible({ timeout: 30_000 });
}

test('the demo shows at least six pieces, two of them away and one of these late', async () => {
  const { page, close } = await launchProgram();
  await enterDemo(page);
  const others = page.getByRole('main').getByRole('heading', { level: 3 });
  await expect(page.getByRole('region', { name: 'Now' }).getByRole('heading', { level: 2 })).toHaveCount(1);
  expect(1 + (await others.count())).toBeGreaterThanOrEqual(6);
  await expect(page.getByText(/^With .+, promised .+ late$/)).toHaveCount(1);
  await expect(page.getByText(/^With .+, back .+/)).toHaveCount(1);
  await close();
});

test('what is done in the demo leaves the maker’s own notebook untouched', async () => {
  const { page, close } = await launchProgram();
  await enterDemo(page);
  await page.getByRole('region', { name: 'Now' }).getByRole('link').click();
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(title(page, 'Projects')).toBeFocused();
  await page.getByRole('button', { name: 'Back to my notebook' }).click();
  await expect(title(page, 'An empty notebook')).toBeVisible();
  await goTo(page, 'Projects');
  await expect(page.getByRole('heading', { name: 'No open pieces' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('status').filter({ hasText: 'Nothing to undo' })).toBeVisible();
  await close();
});

test('bench, piece and stage of a full workshop shut nobody out, by day or by night', async () => {
  // Six whole pages are looked through rule by rule: on a busy machine that takes its time.
  test.slow();
  const { page, close } = await launchProgram();
  await enterDemo(page);
  const inBothLooks = async (where: string): Promise<void> => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await axeFaults(page), `${where}, ${colorScheme}`).toEqual([]);
    }
  };
  await inBothLooks('bench');
  await page.getByRole('region', { name: 'Now' }).getByRole('link').click();
  const stages = page.getByRole('region', { name: 'What is next' });
  await expect(stages).toBeVisible();
  await inBothLooks('piece');
  await stages.getByRole('listitem').getByRole('link').first().click();
  await expect(page.getByRole('region', { name: 'Numbers', exact: true })).toBeVisible();
  await inBothLooks('stage');
  await close();
});
