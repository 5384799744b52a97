import { expect, type Page, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { axeFaults } from './axe-faults';
import { goTo, title } from '#test/helpers/notebook-steps';

async function enterDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Look around the demo workshop' }).click();
  await expect(title(page, 'Bench')).toBeVisible({ timeout: 30_000 });
}

test('the demo shows at least six projects, two of them at a quilter and one of those late', async () => {
  const { page, close } = await launchProgram();
  await enterDemo(page);
  const others = page.getByRole('main').getByRole('heading', { level: 3 });
  await expect(page.getByRole('region', { name: 'Now' }).getByRole('heading', { level: 2 })).toHaveCount(1);
  expect(1 + (await others.count())).toBeGreaterThanOrEqual(6);
  await expect(page.getByText(/^With .+, promised .+ late$/)).toHaveCount(1);
  await expect(page.getByText(/^With .+, back .+/)).toHaveCount(1);
  await close();
});

test('changes in the demo leave the maker’s own notebook untouched', async () => {
  const { page, close } = await launchProgram();
  await enterDemo(page);
  await page.getByRole('region', { name: 'Now' }).getByRole('link').click();
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(title(page, 'Projects')).toBeFocused();
  await page.getByRole('button', { name: 'Back to my notebook' }).click();
  await expect(title(page, 'An empty notebook')).toBeVisible();
  await goTo(page, 'Projects');
  await expect(page.getByRole('heading', { name: 'No open projects' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('status').filter({ hasText: 'Nothing to undo' })).toBeVisible();
  await close();
});

test('a page never shows data of another notebook, not even for a moment', async () => {
  const { page, close } = await launchProgram();
  await goTo(page, 'Stash');
  await expect(page.getByRole('heading', { name: 'No fabrics yet' })).toBeVisible();
  await page.getByRole('navigation').getByRole('link', { name: 'Bench' }).click();
  await enterDemo(page);
  await page.evaluate(() => {
    const note = () => {
      if (document.body.textContent.includes('No fabrics yet')) document.body.dataset['showedOther'] = '';
    };
    new MutationObserver(note).observe(document.body, {
      childList: true,
      subtree: true,
      characterData: true,
    });
  });
  await goTo(page, 'Stash');
  await expect(page.getByText('30 fabrics')).toBeVisible();
  await expect(page.locator('body')).not.toHaveAttribute('data-showed-other');
  await close();
});

test('bench, project and stage of a full workshop have no accessibility faults in light or dark', async () => {
  // Checking six whole pages rule by rule is slow on a busy machine.
  test.slow();
  const { page, close } = await launchProgram();
  await enterDemo(page);
  const inBothThemes = async (where: string): Promise<void> => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await axeFaults(page), `${where}, ${colorScheme}`).toEqual([]);
    }
  };
  await inBothThemes('bench');
  await page.getByRole('region', { name: 'Now' }).getByRole('link').click();
  const stages = page.getByRole('region', { name: 'What is next' });
  await expect(stages).toBeVisible();
  await inBothThemes('project');
  await stages.getByRole('listitem').getByRole('link').first().click();
  await expect(page.getByRole('region', { name: 'Numbers', exact: true })).toBeVisible();
  await inBothThemes('stage');
  await close();
});
