import { expect, type Page } from '@playwright/test';

/** The heading of the page that is open; a new page takes the focus to it. */
export const title = (page: Page, name: string | RegExp) => page.getByRole('heading', { level: 1, name });

/** What the main action of the page says stands in the same place on every page. */
export const mainAction = (page: Page, name: string) =>
  page.getByRole('contentinfo').getByRole('button', { name, exact: true });

/** A stage's row on the page of its piece. */
export const stageRow = (page: Page, name: string) =>
  page
    .getByRole('region', { name: 'What is next' })
    .getByRole('listitem')
    .filter({ has: page.getByRole('link', { name, exact: true }) });

/** Goes to one of the places by the links on the spine. */
export async function goTo(
  page: Page,
  place: 'Bench' | 'Projects' | 'Days' | 'Out' | 'Stash' | 'Shopping' | 'Workshop',
): Promise<void> {
  await page.getByRole('navigation').getByRole('link', { name: place, exact: true }).click();
  await expect(title(page, place)).toBeVisible();
}

export async function openPiece(page: Page, name: string): Promise<void> {
  await goTo(page, 'Projects');
  await page.getByRole('link', { name }).click();
  await expect(title(page, name)).toBeVisible();
}

export async function openStage(page: Page, piece: string, stage: string): Promise<void> {
  await openPiece(page, piece);
  await stageRow(page, stage).getByRole('link').click();
  await expect(title(page, stage)).toBeVisible();
}

/** The day where the test runs, so many days from now, as a date field takes it. */
export function dayFromNow(days: number): string {
  const day = new Date();
  day.setDate(day.getDate() + days);
  const digits = (value: number) => String(value).padStart(2, '0');
  return `${String(day.getFullYear())}-${digits(day.getMonth() + 1)}-${digits(day.getDate())}`;
}

/** Writes down a round piece with a hole and a slit, touching nothing but keys once its page is open. */
export async function writeDownRing(page: Page, name: string): Promise<void> {
  await goTo(page, 'Projects');
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
