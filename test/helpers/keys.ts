import { expect, type Locator, type Page } from '@playwright/test';

const MOST_STEPS = 80;

/** Goes on with Tab until the focus is where it was meant to go, as someone without a mouse does. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible();
  for (let steps = 0; steps < MOST_STEPS; steps += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  await expect(target).toBeFocused();
}

export async function press(page: Page, target: Locator, key = 'Enter'): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press(key);
}

export async function type(page: Page, field: string, text: string): Promise<void> {
  await tabTo(page, page.getByRole('textbox', { name: field }));
  await page.keyboard.type(text);
}
