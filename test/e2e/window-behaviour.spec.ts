import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';

/** What axe finds against WCAG 2.2 AA and its own good practice, as one line a fault. */
async function faults(page: Page): Promise<readonly string[]> {
  // What is still fading in has the contrast of neither its beginning nor its end.
  await page.evaluate(() => Promise.all(document.getAnimations().map((animation) => animation.finished)));
  const tags = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).withTags(tags).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

const title = (page: Page, name: string) => page.getByRole('heading', { level: 1, name });

/** Writes down a round piece with a hole and a slit, touching nothing but keys once its page is open. */
async function writeDownRing(page: Page, name: string): Promise<void> {
  await page.getByRole('link', { name: 'Projects' }).click();
  await page.getByRole('link', { name: 'Begin a piece' }).click();
  await expect(title(page, 'A new piece')).toBeFocused();
  await page.getByRole('textbox', { name: 'Name' }).fill(name);
  await page.getByRole('textbox', { name: 'Across' }).fill('48 1/2');
  await page.getByRole('checkbox', { name: 'It has a hole in the middle' }).check();
  await page.getByRole('textbox', { name: 'Hole across' }).fill('6 3/4');
  await page.getByRole('checkbox', { name: /A slit runs/ }).check();
  await page.keyboard.press('Control+Enter');
  await expect(title(page, name)).toBeFocused();
}

test('an empty notebook offers its two ways to begin, and none of its pages shuts anyone out', async () => {
  const { page, close } = await launchProgram();
  await expect(page.getByRole('button', { name: 'Look round the demo workshop' })).toBeVisible();
  expect(await faults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Begin my notebook' }).click();
  expect(await faults(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Begin my notebook' })).toBeFocused();
  await writeDownRing(page, 'Harvest round');
  expect(await faults(page)).toEqual([]);
  for (const place of ['Bench', 'Projects', 'Stash', 'Workshop']) {
    await page.getByRole('navigation').getByRole('link', { name: place }).click();
    await expect(title(page, place)).toBeFocused();
    expect(await faults(page), place).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await faults(page), `${place}, dark`).toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
  }
  await close();
});

test('a length that cannot be read stays as typed, keeps the piece from being begun, and is asked for in words', async () => {
  const { page, close } = await launchProgram();
  await page.getByRole('link', { name: 'Projects' }).click();
  await page.getByRole('link', { name: 'Begin a piece' }).click();
  await page.getByRole('textbox', { name: 'Name' }).fill('Unmeasured');
  const across = page.getByRole('textbox', { name: 'Across' });
  await across.fill('about a yard');
  await page.getByRole('button', { name: 'Begin this piece' }).click();
  await expect(across).toBeFocused();
  await expect(across).toHaveValue('about a yard');
  await expect(across).toHaveAccessibleDescription(/“about a yard”.*Write it like/);
  await page.getByRole('navigation').getByRole('link', { name: 'Bench' }).click();
  await page.getByRole('link', { name: 'Projects' }).click();
  await page.getByRole('link', { name: 'Begin a piece' }).click();
  await expect(page.getByRole('textbox', { name: 'Name' })).toHaveValue('Unmeasured');
  await close();
});

test('what was done last can be undone and redone by keys, but in a text field the keys are the field’s own', async () => {
  const { page, close } = await launchProgram();
  await writeDownRing(page, 'Harvest round');
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(title(page, 'Projects')).toBeFocused();
  const row = page.getByRole('link', { name: 'Harvest round' });
  await expect(row).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(row).toHaveCount(1);
  await page.keyboard.press('Control+Shift+z');
  await expect(row).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(row).toHaveCount(1);
  const find = page.getByRole('textbox', { name: 'Find' });
  await find.pressSequentially('harv');
  await expect(find).toBeFocused();
  await expect(find).toHaveValue('harv');
  await page.keyboard.press('Control+z');
  await expect(row).toHaveCount(1);
  await close();
});

test('the stages of a piece are walked and put in order by keys alone', async () => {
  const { page, close } = await launchProgram();
  await writeDownRing(page, 'Harvest round');
  const stages = page.getByRole('region', { name: 'What is next' }).getByRole('listitem').getByRole('link');
  const first = await stages.nth(0).textContent();
  const second = await stages.nth(1).textContent();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('button', { name: 'The top is done' })).toBeVisible();
  await stages.nth(0).focus();
  await page.keyboard.press('Alt+ArrowDown');
  await expect(stages.nth(1)).toHaveText(first ?? '');
  await expect(stages.nth(1)).toBeFocused();
  await page.keyboard.press('Alt+ArrowUp');
  await expect(stages.nth(1)).toHaveText(second ?? '');
  await expect(page.getByRole('img', { name: /Now: .*, in hand\./ })).toBeVisible();
  await close();
});
